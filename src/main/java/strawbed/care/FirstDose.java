package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.event.Event.CalfWeighed;

/**
 * How a calf's first dose of colostrum stands, from measured feeds only; what it sucked from its dam is unknown and
 * counts as nothing here.
 *
 * <p>The first dose is the first feed and all others before the time of a second one begins, 6 hours later (Michigan
 * State University Extension); adding split feeds is common practice, no published source. The target is 10 % of birth
 * weight with 1 L of colostrum taken as 1 kg, the habit of the trade: Michigan State University Extension; Dairy Calf
 * and Heifer Association, Gold Standards III.
 *
 * @param start what ages are counted from; null when nothing is known
 * @param feeds the feeds of the first dose, as they happened; empty before the first
 * @param weight the first weighing within 24 hours of the start; null when there is none
 */
public record FirstDose(
        @Nullable AgeStart start,
        List<Feed> feeds,
        @Nullable CalfWeighed weight) {
    /** The second feed comes 6 to 12 hours after the first. Source: Michigan State University Extension. */
    static final Duration SECOND_FROM = Duration.ofHours(6);

    static final Duration SECOND_BY = Duration.ofHours(12);

    private static final Duration BIRTH_WEIGHT_WITHIN = Duration.ofHours(24);

    public FirstDose {
        feeds = List.copyOf(feeds);
    }

    public static FirstDose of(CalfRecord calf) {
        AgeStart start = AgeStart.of(calf).orElse(null);
        List<Feed> taken =
                calf.feeds().stream().filter(feed -> feed.litres().signum() > 0).toList();
        List<Feed> dose = taken.stream()
                .filter(feed -> feed.at().isBefore(taken.get(0).at().plus(SECOND_FROM)))
                .toList();
        CalfWeighed weight = calf.weights().stream()
                .filter(weighed -> start == null || start.ageAt(weighed.at()).compareTo(BIRTH_WEIGHT_WITHIN) <= 0)
                .map(Timed::event)
                .findFirst()
                .orElse(null);
        return new FirstDose(start, dose, weight);
    }

    /** From the start of the calf's age to its first feed; never below zero. */
    public Optional<Duration> timeToFirstFeed() {
        return feeds.stream().findFirst().map(Feed::at).flatMap(this::age);
    }

    /** The band of the first feed. */
    public Optional<ColostrumTiming> timing() {
        return timeToFirstFeed().map(ColostrumTiming::of);
    }

    /** All that was taken, in litres, exact. */
    public BigDecimal litres() {
        return feeds.stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What should be taken, in litres, exact; empty without a birth weight. */
    public Optional<BigDecimal> targetLitres() {
        return birthWeight().map(kilograms -> kilograms.movePointLeft(1));
    }

    /** What was taken in percent of birth weight, to one decimal, half up; empty without a feed or a birth weight. */
    public Optional<BigDecimal> shareOfBirthWeight() {
        return birthWeight()
                .filter(kilograms -> !feeds.isEmpty())
                .map(kilograms -> litres().movePointRight(2).divide(kilograms, 1, RoundingMode.HALF_UP));
    }

    /** From the start of the calf's age to the feed that made up the target; empty while it is not reached or known. */
    public Optional<Duration> timeToTarget() {
        BigDecimal target = targetLitres().orElse(null);
        if (target == null) {
            return Optional.empty();
        }
        BigDecimal taken = BigDecimal.ZERO;
        for (Feed feed : feeds) {
            taken = taken.add(feed.litres());
            if (taken.compareTo(target) >= 0) {
                return age(feed.at());
            }
        }
        return Optional.empty();
    }

    private Optional<BigDecimal> birthWeight() {
        return Optional.ofNullable(weight)
                .map(weighed -> weighed.weight().inKilograms())
                .filter(kilograms -> kilograms.signum() > 0);
    }

    private Optional<Duration> age(Instant at) {
        return Optional.ofNullable(start)
                .map(known -> known.ageAt(at))
                .map(age -> age.isNegative() ? Duration.ZERO : age);
    }
}
