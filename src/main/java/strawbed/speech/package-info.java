/**
 * From sound to words: what a recogniser is given and what it gives back, without naming one.
 *
 * <p>Entry types: {@link strawbed.speech.SpeechModel} makes a {@link strawbed.speech.SpeechRecognizer} for a {@link
 * strawbed.speech.Vocabulary}; the answer is {@link strawbed.speech.Hypothesis}es. What may go wrong: {@link
 * strawbed.speech.LexiconException} for a faulty list of stand-ins. The records are immutable; a recogniser belongs to
 * one thread, a model may be shared.
 */
@NullMarked
package strawbed.speech;

import org.jspecify.annotations.NullMarked;
