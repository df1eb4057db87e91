package strawbed.care;

import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.protocol.CountedSign;

/**
 * How many of a newborn calf's signs are normal: N of M, with the list, and no score made of them. M are the signs that
 * the farm counts and that were recorded in such a way that they can be judged; those that were not are told apart and
 * are neither normal nor not. What is normal stands with {@link NewbornSigns}.
 *
 * @param signs the signs that the farm counts, in their order
 */
public record Vigour(List<Seen> signs) {
    /** How a sign stands. */
    public enum State {
        NORMAL,
        NOT_NORMAL,
        /** Nothing of it is on record. */
        NOT_RECORDED,
        /** It was seen, but nobody timed the birth, and its age decides. */
        AGE_UNKNOWN
    }

    /**
     * How one sign stands.
     *
     * @param by the event it rests on; null where nothing is on record
     */
    public record Seen(
            CountedSign sign, State state, @Nullable Timed<?> by) {}

    public Vigour {
        signs = List.copyOf(signs);
    }

    /** By the protocol in force at the calf's birth, from what was seen in its first 24 hours. */
    public static Vigour of(CalfRecord calf, Farm farm) {
        NewbornSigns signs = new NewbornSigns(calf, farm.protocolFor(calf));
        return new Vigour(
                farm.protocolFor(calf).signs().stream().map(signs::look).toList());
    }

    /** N: how many are normal. */
    public int normal() {
        return with(State.NORMAL).size();
    }

    /** M: how many were judged, normal or not. */
    public int judged() {
        return normal() + with(State.NOT_NORMAL).size();
    }

    /** The signs that stand so, in their order. */
    public List<Seen> with(State state) {
        return signs.stream().filter(seen -> seen.state() == state).toList();
    }
}
