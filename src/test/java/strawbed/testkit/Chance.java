package strawbed.testkit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Random;
import java.util.UUID;

/** What happens by chance, the same for the same seed. Owned by one thread. */
final class Chance {
    private final Random random;

    Chance(long seed) {
        this.random = new Random(seed);
    }

    /** From 0 up to 1. */
    double share() {
        return random.nextDouble();
    }

    boolean is(double probability) {
        return random.nextDouble() < probability;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    @SafeVarargs
    final <T> T of(T... some) {
        return some[random.nextInt(some.length)];
    }

    /** Around a mean, with a standard deviation. */
    double about(double mean, double deviation) {
        return mean + deviation * random.nextGaussian();
    }

    /** Around a mean, between two limits, with so many decimals. */
    BigDecimal decimal(double mean, double deviation, double least, double most, int decimals) {
        double value = Math.max(least, Math.min(most, about(mean, deviation)));
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** The wait for what comes at any time alike, at least a second. */
    long wait(double mean) {
        return Math.max(1, Math.round(-Math.log(1 - random.nextDouble()) * mean));
    }

    /** Of version 7, by RFC 9562, section 5.7. */
    UUID id(Instant time) {
        long high = (time.toEpochMilli() << 16) | 0x7000L | (random.nextLong() & 0x0fffL);
        long low = (random.nextLong() & 0x3fff_ffff_ffff_ffffL) | 0x8000_0000_0000_0000L;
        return new UUID(high, low);
    }
}
