package strawbed.audio;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** Time as a test sets it: a clock on the wall that can be put back, and nanoseconds that only go on. */
final class SetTime extends Clock {
    static final Instant ORIGIN = Instant.parse("2026-01-15T03:00:00Z");

    private Instant now = ORIGIN;
    private long nanoseconds = Long.MAX_VALUE - 1_000;

    void pass(Duration time) {
        now = now.plus(time);
        nanoseconds += time.toNanos();
    }

    void setWallClock(Duration by) {
        now = now.plus(by);
    }

    long nanoseconds() {
        return nanoseconds;
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("No test asks for it");
    }
}
