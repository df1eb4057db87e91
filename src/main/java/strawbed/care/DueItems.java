package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;

/** The items of one calf at one time, while they are gathered. For one thread. */
final class DueItems {
    private final CalfRecord calf;
    private final AgeStart start;
    private final Instant now;
    private final List<DueItem> items = new ArrayList<>();

    DueItems(CalfRecord calf, AgeStart start, Instant now) {
        this.calf = calf;
        this.start = start;
        this.now = now;
    }

    CalfRecord calf() {
        return calf;
    }

    Instant now() {
        return now;
    }

    /** The instant at this age. */
    Instant at(Duration age) {
        return start.at().plus(age);
    }

    /** An item that is late after {@code dueAt} and missed after {@code hardLimit}, unless it is settled. */
    void add(DueKind kind, Instant from, Instant dueAt, @Nullable Instant hardLimit, Settled settled) {
        add(kind, from, dueAt, hardLimit, settled, open(from, dueAt, hardLimit));
    }

    /** An item that stands like this unless it is settled. */
    void add(DueKind kind, Instant from, Instant dueAt, @Nullable Instant hardLimit, Settled settled, DueState open) {
        DueState state = switch (settled) {
            case DONE -> DueState.DONE;
            case NEEDLESS -> DueState.NOT_NEEDED;
            case NO -> calf.isAlive() ? open : DueState.NOT_NEEDED;
        };
        items.add(new DueItem(calf.id(), kind, from, dueAt, hardLimit, state, kind.rule() + counted()));
    }

    List<DueItem> all() {
        return List.copyOf(items);
    }

    private DueState open(Instant from, Instant dueAt, @Nullable Instant hardLimit) {
        if (now.isBefore(from)) {
            return DueState.AHEAD;
        }
        if (hardLimit != null && now.isAfter(hardLimit)) {
            return DueState.MISSED;
        }
        return now.isAfter(dueAt) ? DueState.LATE : DueState.DUE;
    }

    private String counted() {
        return switch (start.basis()) {
            case BORN -> "";
            case BORN_IN_WINDOW -> "; counted from the middle of the birth window";
            case FOUND -> "; counted from when the calf was found";
            case OPENED -> "; counted from when the record was opened";
        };
    }

    /** Whether an item needs nothing more, and why. */
    enum Settled {
        NO,
        DONE,
        NEEDLESS;

        static Settled done(boolean done) {
            return done ? DONE : NO;
        }

        Settled orNeedless(boolean needless) {
            return this == NO && needless ? NEEDLESS : this;
        }
    }
}
