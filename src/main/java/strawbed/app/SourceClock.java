package strawbed.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/**
 * A clock that goes with the sound: its time is that of the block read last. So a replayed night gives the times of
 * the night. Owned by one thread.
 */
final class SourceClock extends Clock {
    private final Instant origin;
    private final ZoneId zone;
    private Duration position = Duration.ZERO;

    SourceClock(Instant origin, ZoneId zone) {
        this.origin = origin;
        this.zone = zone;
    }

    void moveTo(Duration newPosition) {
        position = newPosition;
    }

    @Override
    public Instant instant() {
        return origin.plus(position);
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        SourceClock clock = new SourceClock(origin, other);
        clock.moveTo(position);
        return clock;
    }
}
