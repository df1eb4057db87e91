package strawbed.statement;

import org.jspecify.annotations.Nullable;

/** Whose facts they are, as it was said. */
public sealed interface CalfReference {
    /** "Calf twelve." */
    record Numbered(String number) implements CalfReference {}

    /** "Same calf": the one named last. */
    record Same() implements CalfReference {}

    /**
     * "Calf of cow four one seven", "second calf of cow four one seven".
     *
     * @param order 1 for the first of twins; null when none was said
     */
    record OfCow(String dam, @Nullable Integer order) implements CalfReference {}

    /**
     * "New calf five one two", "new calf of cow four one seven".
     *
     * @param number its number; null when it has none yet
     * @param dam its dam's number; null when it was not said
     */
    record New(@Nullable String number, @Nullable String dam) implements CalfReference {}

    /** "Calf of cow four one seven is calf five one two." */
    record Renumbered(OfCow calf, String number) implements CalfReference {}

    /** The barn: facts of no single calf. */
    record Barn() implements CalfReference {}
}
