package strawbed.speech;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The sentences that a recogniser is given to learn word order from, and the stand-ins for words that it lacks. Any
 * sentence of these words can be heard, those of the list best. Immutable.
 */
public final class Vocabulary {
    private final List<List<String>> spoken;
    private final Set<String> words;
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
        this.spoken = sentences.stream().map(lexicon::toSpoken).toList();
        this.words = new TreeSet<>();
        this.spoken.forEach(words::addAll);
        this.lexicon = lexicon;
    }

    /** The sentences as the recogniser is given them, with stand-ins. */
    public List<List<String>> spokenSentences() {
        return spoken;
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
        return words.stream()
                .filter(word -> !word.equals(RecognizedWord.UNKNOWN) && !model.knows(word))
                .toList();
    }
}
