package strawbed.speech;

import java.util.List;

/**
 * The sentences that a recogniser is given to learn word order from, and the stand-ins for words that it lacks. Any
 * sentence of these words can be heard, those of the list best. Immutable.
 */
public final class Vocabulary {
    private final List<List<String>> sentences;
    private final Lexicon lexicon;

    /**
     * A vocabulary of sentences as they are written.
     *
     * @param sentences at least one, each of at least one word
     */
    public Vocabulary(List<List<String>> sentences, Lexicon lexicon) {
        if (sentences.isEmpty() || sentences.stream().anyMatch(List::isEmpty)) {
            throw new IllegalArgumentException("A vocabulary has sentences, and each of them has words");
        }
        this.sentences = sentences.stream().map(List::copyOf).toList();
        this.lexicon = lexicon;
    }

    /** The sentences as the recogniser is given them, with stand-ins. */
    public List<List<String>> spokenSentences() {
        return sentences.stream().map(lexicon::toSpoken).toList();
    }

    /** The stand-ins, to map what was heard back. */
    public Lexicon lexicon() {
        return lexicon;
    }

    /**
     * The words, parts of stand-ins among them, that the model does not know and would never hear; sorted. Mend each by
     * a stand-in or another word.
     */
    public List<String> unknownWords(SpeechModel model) {
        return spokenSentences().stream()
                .flatMap(List::stream)
                .distinct()
                .filter(word -> !word.equals(RecognizedWord.UNKNOWN) && !model.knows(word))
                .sorted()
                .toList();
    }
}
