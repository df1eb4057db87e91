package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * How a calf's first dose of colostrum stands: when it came, how much it was, and how much of birth weight.
 *
 * <p>The dose is the first feed and all others before the time of a second one begins (by the farm's protocol; usually 6
 * hours later, Michigan State University Extension); adding split feeds is common practice, no published source. What a
 * calf sucked from its dam is not known: a calf that only sucked has no dose, one that was fed too had at least the
 * measured one; common practice, no published source. One liter of colostrum is taken as one kilogram, the habit of the
 * trade.
 *
 * @param feeds the feeds of the dose of which it took anything, as they happened; empty before the first
 * @param suckled whether it also sucked its dam before the dose was over
 */
public record FirstDose(CalfRecord calf, Protocol protocol, List<Feed> feeds, boolean suckled) {
    public FirstDose {
        feeds = List.copyOf(feeds);
    }

    public static FirstDose of(CalfRecord calf, Protocol protocol) {
        List<Feed> taken =
                calf.feeds().stream().filter(feed -> feed.litres().signum() > 0).toList();
        Duration length = protocol.time(Setting.SECOND_FEED_FROM_HOURS);
        List<Feed> dose = taken.stream()
                .filter(feed -> feed.at().isBefore(taken.get(0).at().plus(length)))
                .toList();
        boolean suckled = calf.nursings().stream()
                .anyMatch(nursed ->
                        dose.isEmpty() || nursed.at().isBefore(dose.get(0).at().plus(length)));
        return new FirstDose(calf, protocol, dose, suckled);
    }

    /** The age at the first measured feed. */
    public Judged<Duration> ageAtFirstFeed() {
        return feeds.isEmpty()
                ? Judged.not(notFed())
                : AgeStart.ageOf(calf, feeds.get(0).at());
    }

    /** The band of the first measured feed. */
    public Judged<ColostrumTiming> timing() {
        return ageAtFirstFeed().then(age -> Judged.of(ColostrumTiming.of(age, protocol)));
    }

    /** All that was measured, in litres, exact. */
    public Judged<BigDecimal> litres() {
        return feeds.isEmpty()
                ? Judged.not(notFed())
                : Judged.of(feeds.stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** What should be taken, in litres, exact. */
    public Judged<BigDecimal> targetLitres() {
        return BirthWeight.of(calf)
                .then(weight -> Judged.of(weight.kilograms()
                        .multiply(protocol.number(Setting.DOSE_BIRTH_WEIGHT_PERCENT))
                        .movePointLeft(2)));
    }

    /** What was measured in percent of birth weight, to one decimal, half up. */
    public Judged<BigDecimal> shareOfBirthWeight() {
        return litres().then(litres -> BirthWeight.of(calf)
                .then(weight ->
                        Judged.of(litres.movePointRight(2).divide(weight.kilograms(), 1, RoundingMode.HALF_UP))));
    }

    /** Whether what was measured makes up the target; compared without rounding. */
    public Judged<Boolean> meetsTarget() {
        return litres().then(litres -> targetLitres().then(target -> Judged.of(litres.compareTo(target) >= 0)));
    }

    /** The age at the feed that made up the target; not judged while it is not reached. */
    public Judged<Duration> ageAtTarget() {
        return targetLitres().then(this::ageAtTarget);
    }

    private Judged<Duration> ageAtTarget(BigDecimal target) {
        BigDecimal taken = BigDecimal.ZERO;
        for (Feed feed : feeds) {
            taken = taken.add(feed.litres());
            if (taken.compareTo(target) >= 0) {
                return AgeStart.ageOf(calf, feed.at());
            }
        }
        return Judged.not(feeds.isEmpty() ? notFed() : WhyNot.TARGET_NOT_REACHED);
    }

    /** What the share of birth weight and the target rest on. */
    public Set<Assumption> assumptions() {
        Set<Assumption> assumptions = EnumSet.of(Assumption.LITER_IS_KILOGRAM);
        if (BirthWeight.of(calf).value().filter(BirthWeight::isAssumed).isPresent()) {
            assumptions.add(Assumption.WEIGHT_OF_BREED);
        }
        return assumptions;
    }

    private WhyNot notFed() {
        return suckled ? WhyNot.SUCKLED : WhyNot.NOT_FED;
    }
}
