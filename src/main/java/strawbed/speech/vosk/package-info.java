/**
 * Speech recognition with Vosk: the only room that knows its types, its native library and its JSON.
 *
 * <p>Entry types: {@link strawbed.speech.vosk.ModelStore} finds or unpacks the model's folder, {@link
 * strawbed.speech.vosk.VoskModel} loads it. What may go wrong: {@link strawbed.speech.vosk.ModelException} with the
 * remedy. A model may be shared among threads; a recogniser belongs to the thread that made it, because the native one
 * crashes when two threads use it.
 */
@NullMarked
package strawbed.speech.vosk;

import org.jspecify.annotations.NullMarked;
