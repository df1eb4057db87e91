package strawbed.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** A clock that goes on when it is told to. Owned by one thread. */
final class SteppedClock extends Clock {
    private final ZoneId zone;
    private Instant now;

    SteppedClock(Instant begin, ZoneId zone) {
        this.now = begin;
        this.zone = zone;
    }

    void goOn(Duration time) {
        now = now.plus(time);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        throw new UnsupportedOperationException("nobody asks for it");
    }
}
