package strawbed.grammar;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A point in a sentence: a state, and where to go on after its rule; there is one object per point.
 *
 * <p>Made by {@link Routes} only. Not safe for several threads.
 */
final class Place {

    /**
     * A word that may come next, and the place after it.
     *
     * @param target null where the word is the end of the sentence
     */
    record Arc(int word, @Nullable Place target) {}

    private final int state;
    private final @Nullable Place after;
    private final long rest;
    private final Map<Integer, Place> inside = new HashMap<>();
    private @Nullable List<Arc> arcs;

    Place(int state, @Nullable Place after, long rest) {
        this.state = state;
        this.after = after;
        this.rest = rest;
    }

    int state() {
        return state;
    }

    /** Where the sentence goes on after this place's rule; null only for its end. */
    @Nullable
    Place after() {
        return after;
    }

    /** The fewest words from here to the end of the sentence. */
    long rest() {
        return rest;
    }

    /** The places whose rule is followed by this place, by their state. */
    Map<Integer, Place> inside() {
        return inside;
    }

    @Nullable
    List<Arc> arcs() {
        return arcs;
    }

    List<Arc> arcs(List<Arc> found) {
        arcs = List.copyOf(found);
        return arcs;
    }
}
