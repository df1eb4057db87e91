package strawbed.grammar;

import java.util.Objects;

/**
 * Two words that may stand next to each other.
 *
 * @param left the first, or {@link #EDGE} where the second begins a sentence
 * @param right the second, or {@link #EDGE} where the first ends a sentence
 */
public record WordPair(String left, String right) {

    /** Stands for the beginning or the end of a sentence. */
    public static final String EDGE = "";

    /** Refuses missing words. */
    public WordPair {
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(right, "right");
    }
}
