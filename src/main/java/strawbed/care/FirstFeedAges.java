package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * How old the calves of a herd were at their first feed.
 *
 * @param known the known ages, the least first
 * @param flagged how many of them are the middle of a window
 * @param unknown how many living-born calves have no known one
 */
public record FirstFeedAges(List<Duration> known, int flagged, int unknown) {
    private static final BigDecimal SECONDS_OF_HOUR = new BigDecimal(3600);

    public FirstFeedAges {
        known = known.stream().sorted().toList();
    }

    /** The one in the middle, of two the mean of both; empty where none is known. */
    public Optional<Duration> median() {
        if (known.isEmpty()) {
            return Optional.empty();
        }
        Duration below = known.get((known.size() - 1) / 2);
        Duration above = known.get(known.size() / 2);
        return Optional.of(below.plus(above).dividedBy(2));
    }

    /** The sum over the number; empty where none is known. */
    public Optional<Duration> mean() {
        return known.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        known.stream().reduce(Duration.ZERO, Duration::plus).dividedBy(known.size()));
    }

    /** An age in hours, to two decimals, half up. */
    public static BigDecimal hours(Duration age) {
        return BigDecimal.valueOf(age.toSeconds()).divide(SECONDS_OF_HOUR, 2, RoundingMode.HALF_UP);
    }
}
