package strawbed.care;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.calf.Timed;

/** Whether an item needs nothing more, by what, and why. */
public sealed interface Settled {
    /** Nothing on record settles it. */
    record Not() implements Settled {}

    /** It was done. */
    record Done(Timed<?> by) implements Settled {}

    /**
     * Something else made it needless.
     *
     * @param by the event that did; null where there is none, such as for a death told without a time
     */
    record Needless(Why why, @Nullable Timed<?> by) implements Settled {}

    /** Why an item is needless. */
    enum Why {
        /** A calf that stands has breathed and lain on its breastbone. */
        STANDS,
        /** A calf that was fed breathes. */
        FED,
        /** The dam licked it. */
        LICKED,
        /** The navel was dipped later. */
        DIPPED_LATER,
        /** It breathes well again. */
        BREATHES_WELL,
        /** It is warm enough again. */
        WARMER,
        /** The calf is dead. */
        DEAD
    }

    /** Done by the first of these, if there is one. */
    static Settled doneBy(Stream<? extends Timed<?>> events) {
        return events.findFirst().<Settled>map(Done::new).orElseGet(Not::new);
    }

    /** Done by this, if it is there. */
    static Settled doneBy(Optional<? extends Timed<?>> event) {
        return event.<Settled>map(Done::new).orElseGet(Not::new);
    }

    /** Needless because of this event, if it is there and nothing settled it before. */
    default Settled orNeedless(Why why, Optional<? extends Timed<?>> event) {
        return this instanceof Not && event.isPresent() ? new Needless(why, event.get()) : this;
    }
}
