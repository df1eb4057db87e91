package strawbed.event;

import java.time.Clock;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;

/** Makes UUIDs of version 7: milliseconds first, so that they sort by time. Source: RFC 9562, section 5.7. */
public final class TimeOrderedIds implements Supplier<UUID> {
    private final Clock clock;
    private final RandomGenerator random;

    /** Safe for any thread if {@code random} is: a secure one in the program, a seeded one in tests. */
    public TimeOrderedIds(Clock clock, RandomGenerator random) {
        this.clock = clock;
        this.random = random;
    }

    @Override
    public UUID get() {
        long high = (clock.millis() << 16) | 0x7000L | (random.nextLong() & 0x0fffL);
        long low = (random.nextLong() & 0x3fff_ffff_ffff_ffffL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }
}
