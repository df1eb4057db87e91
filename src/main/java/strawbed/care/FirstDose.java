package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.event.Event.ColostrumFed;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
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
 * <p>A single feed that {@link Plausibility} finds odd stays on record, and nothing is judged by its volume.
 *
 * @param now when it is judged
 * @param feeds the feeds of the dose of which it took anything, as they happened; empty before the first
 * @param suckled whether it also sucked its dam before the dose was over
 */
public record FirstDose(CalfRecord calf, Protocol protocol, Instant now, List<Feed> feeds, boolean suckled) {
    public FirstDose {
        feeds = List.copyOf(feeds);
    }

    /** The dose as the record tells it now, by the protocol of the calf's birth. */
    public static FirstDose of(CalfRecord calf, Protocol protocol, Instant now) {
        List<Feed> taken =
                calf.feeds().stream().filter(feed -> feed.litres().signum() > 0).toList();
        Duration length = protocol.time(Setting.SECOND_FEED_FROM_HOURS);
        List<Feed> dose = taken.stream()
                .filter(feed -> feed.at().isBefore(taken.get(0).at().plus(length)))
                .toList();
        boolean suckled = calf.nursings().stream()
                .anyMatch(nursed ->
                        dose.isEmpty() || nursed.at().isBefore(dose.get(0).at().plus(length)));
        return new FirstDose(calf, protocol, now, dose, suckled);
    }

    /** The age at the first measured feed. */
    public Judged<Duration> ageAtFirstFeed() {
        return feeds.isEmpty() ? Judged.not(notFed()) : ageAt(feeds.get(0).at());
    }

    /** The band of the first measured feed. */
    public Judged<ColostrumTiming> timing() {
        return ageAtFirstFeed().then(age -> Judged.of(ColostrumTiming.of(age, protocol)));
    }

    /** When the time of a second feed begins, and the dose ends; far ahead before the first. */
    Instant end() {
        return feeds.isEmpty() ? Instant.MAX : feeds.get(0).at().plus(protocol.time(Setting.SECOND_FEED_FROM_HOURS));
    }

    /** All that was measured, in litres, exact; also what is out of the ordinary. */
    public Judged<BigDecimal> litres() {
        return feeds.isEmpty()
                ? Judged.not(notFed())
                : Judged.of(feeds.stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** All that was measured, in litres, exact; not judged when a feed is more than a calf can take at once. */
    Judged<BigDecimal> plausibleLitres() {
        return feeds.stream().allMatch(FirstDose::isPlausible) ? litres() : Judged.not(WhyNot.NOT_PLAUSIBLE);
    }

    /** Its size by the rule of thumb; too small is not judged of a calf that also sucked its dam. */
    public Judged<DoseSize> size() {
        return plausibleLitres().then(litres -> {
            DoseSize size = DoseSize.of(litres);
            return size == DoseSize.BELOW_LEAST && suckled ? Judged.not(WhyNot.SUCKLED) : Judged.of(size);
        });
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
        return plausibleLitres()
                .then(litres -> BirthWeight.of(calf)
                        .then(weight -> Judged.of(
                                litres.movePointRight(2).divide(weight.kilograms(), 1, RoundingMode.HALF_UP))));
    }

    /** Whether what was measured makes up the target, compared without rounding; "no" is not judged where it sucked too. */
    public Judged<Boolean> meetsTarget() {
        return plausibleLitres()
                .then(litres -> targetLitres().then(target -> {
                    boolean meets = litres.compareTo(target) >= 0;
                    return !meets && suckled ? Judged.not(WhyNot.SUCKLED) : Judged.of(meets);
                }));
    }

    /** The age at the feed that made up the target; not judged while it is not reached. */
    public Judged<Duration> ageAtTarget() {
        return meetsTarget()
                .then(meets -> meets ? targetLitres().then(this::ageAtTarget) : Judged.not(WhyNot.TARGET_NOT_REACHED));
    }

    private Judged<Duration> ageAtTarget(BigDecimal target) {
        BigDecimal taken = BigDecimal.ZERO;
        for (Feed feed : feeds) {
            taken = taken.add(feed.litres());
            if (taken.compareTo(target) >= 0) {
                return ageAt(feed.at());
            }
        }
        return Judged.not(WhyNot.TARGET_NOT_REACHED);
    }

    /** What the share of birth weight and the target rest on. */
    public Set<Assumption> assumptions() {
        Set<Assumption> assumptions = EnumSet.of(Assumption.LITER_IS_KILOGRAM);
        BirthWeight.of(calf).value().map(BirthWeight::assumptions).ifPresent(assumptions::addAll);
        return assumptions;
    }

    /** The age of the calf at a time; not judged when its birth lies ahead of now. */
    Judged<Duration> ageAt(Instant time) {
        return AgeStart.of(calf).filter(start -> start.at().isAfter(now)).isPresent()
                ? Judged.not(WhyNot.BORN_LATER_THAN_NOW)
                : AgeStart.ageOf(calf, time);
    }

    /** Whether a calf can have taken this much at once. */
    static boolean isPlausible(Feed feed) {
        return Plausibility.of(new ColostrumFed(new Volume(feed.litres(), VolumeUnit.LITRE), null, null))
                .isEmpty();
    }

    private WhyNot notFed() {
        return suckled ? WhyNot.SUCKLED : WhyNot.NOT_FED;
    }
}
