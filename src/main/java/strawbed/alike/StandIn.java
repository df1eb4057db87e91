package strawbed.alike;

import java.util.List;

/**
 * Known words that sound like one that is not known.
 *
 * @param words in order, at least one
 * @param closeness from 0, nothing in common, to 1, the same sounds
 */
public record StandIn(List<String> words, double closeness) {
    public StandIn {
        words = List.copyOf(words);
        if (words.isEmpty()) {
            throw new IllegalArgumentException("A stand-in has words");
        }
    }

    /** The words as a line of {@code lexicon.txt} has them. */
    public String text() {
        return String.join(" ", words);
    }
}
