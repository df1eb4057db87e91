package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.CalfDied;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/** The items of one calf at one time, while they are gathered. For one thread. */
final class DueItems {
    private final CalfRecord calf;
    private final AgeStart start;
    private final Instant now;
    private final Protocol protocol;
    private final Ground ofBirth;
    private final List<DueItem> items = new ArrayList<>();

    DueItems(CalfRecord calf, AgeStart start, Instant now, Protocol protocol) {
        this.calf = calf;
        this.start = start;
        this.now = now;
        this.protocol = protocol;
        this.ofBirth = new Ground(start.basis(), null, protocol);
    }

    CalfRecord calf() {
        return calf;
    }

    Instant now() {
        return now;
    }

    Protocol protocol() {
        return protocol;
    }

    Instant birth() {
        return start.at();
    }

    /** The instant at this age. */
    Instant at(Duration age) {
        return start.at().plus(age);
    }

    /** The instant at the age that a setting has. */
    Instant at(Setting age) {
        return at(protocol.time(age));
    }

    /** An item that the birth asks for. */
    void add(DueKind kind, DueTimes times, Settled settled) {
        add(kind, times, settled, ofBirth, times.stateAt(now));
    }

    /** An item that the birth asks for, which stands like this unless it is settled. */
    void add(DueKind kind, DueTimes times, Settled settled, DueState open) {
        add(kind, times, settled, ofBirth, open);
    }

    /** An item that an event asks for. */
    void add(DueKind kind, DueTimes times, Settled settled, Timed<?> because) {
        add(kind, times, settled, new Ground(start.basis(), because, protocol), times.stateAt(now));
    }

    List<DueItem> all() {
        return items;
    }

    private void add(DueKind kind, DueTimes times, Settled settled, Ground ground, DueState open) {
        Settled last = settled instanceof Settled.Not && !calf.isAlive()
                ? new Settled.Needless(Settled.Why.DEAD, died())
                : settled;
        items.add(new DueItem(calf.id(), kind, times, state(last, open), last, ground));
    }

    private @Nullable Timed<CalfDied> died() {
        return calf.last(CalfDied.class).orElse(null);
    }

    private static DueState state(Settled settled, DueState open) {
        if (settled instanceof Settled.Done) {
            return DueState.DONE;
        }
        return settled instanceof Settled.Needless ? DueState.NOT_NEEDED : open;
    }
}
