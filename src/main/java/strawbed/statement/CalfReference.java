package strawbed.statement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;

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

    /** Pressed on a list: a calf that has neither a number nor a dam to call it by. */
    record Listed(CalfId calf) implements CalfReference {}

    /** The barn: facts of no single calf. */
    record Barn() implements CalfReference {}

    /** What naming a calf in this way says by itself. */
    default List<Event> facts() {
        if (this instanceof New opened) {
            return List.of(new Event.CalfOpened(opened.number(), opened.dam()));
        }
        if (this instanceof Renumbered renumbered) {
            return List.of(new Event.CalfNumbered(renumbered.number()));
        }
        return List.of();
    }
}
