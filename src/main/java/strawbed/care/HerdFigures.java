package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Term.DeathTime;
import strawbed.protocol.Setting;

/**
 * The figures of the calves born in a period. Their definitions are ours; common practice, no published source.
 *
 * @param born all calves born, the dead ones too
 * @param fedWithinFourHours first fed no older than 4 hours, of the calves born alive with a timed birth and a measured
 *     first feed
 * @param firstFeeds the ages of the same calves at their first feed
 * @param stillborn dead at birth or up to the age that the protocol sets, of all calves born
 * @param stillYoung how many of those counted as born alive are not older than that yet, so that the figure may rise
 * @param assisted helped or difficult, of the births whose ease was told; each calf is a birth, a twin too
 * @param difficult difficult only, of the same
 * @param unobserved how many of the births whose ease is unknown nobody saw
 * @param goodBrix colostrum tested last at or above the protocol's line, of the calves whose colostrum was tested with
 *     a plausible reading
 */
public record HerdFigures(
        BirthPeriod period,
        int born,
        Figure fedWithinFourHours,
        FirstFeedAges firstFeeds,
        Figure stillborn,
        int stillYoung,
        Figure assisted,
        Figure difficult,
        int unobserved,
        Figure goodBrix) {
    /** A figure to compare herds by, so it is no setting of one farm. */
    private static final Duration FED_WITHIN = Duration.ofHours(4);

    /** The figures as they stand at this time. */
    public static HerdFigures of(Herd herd, Farm farm, BirthPeriod period, Instant now) {
        List<CalfRecord> born = period.bornIn(herd);
        List<CalfRecord> bornAlive =
                born.stream().filter(calf -> !isBornDead(calf)).toList();
        return new HerdFigures(
                period,
                born.size(),
                figure(
                        bornAlive,
                        FirstFeedAge::of,
                        age -> age.middle().compareTo(FED_WITHIN) <= 0,
                        FirstFeedAge::isEstimated),
                firstFeeds(bornAlive),
                figure(born, calf -> BirthOutcome.of(calf, farm), BirthOutcome::isStillborn, BirthOutcome::isAssumed),
                count(born, calf -> isStillYoung(calf, farm, now)),
                figure(born, EaseClass::of, EaseClass::isAssisted, ease -> false),
                figure(born, EaseClass::of, ease -> ease == EaseClass.DIFFICULT, ease -> false),
                count(
                        born,
                        calf -> calf.isBirthOnlyFound()
                                && EaseClass.of(calf).value().isEmpty()),
                figure(born, calf -> isGoodBrix(calf, farm), good -> good, good -> false));
    }

    private static <T> Figure figure(
            List<CalfRecord> calves,
            Function<CalfRecord, Judged<T>> judge,
            Function<T, Boolean> isSo,
            Function<T, Boolean> isFlagged) {
        Figure figure = Figure.NONE;
        for (CalfRecord calf : calves) {
            Optional<T> judged = judge.apply(calf).value();
            Figure before = figure;
            figure = judged.map(known -> before.plus(isSo.apply(known), isFlagged.apply(known)))
                    .orElseGet(before::plusUnknown);
        }
        return figure;
    }

    private static FirstFeedAges firstFeeds(List<CalfRecord> bornAlive) {
        List<Duration> known = new ArrayList<>();
        int flagged = 0;
        for (CalfRecord calf : bornAlive) {
            FirstFeedAge age = FirstFeedAge.of(calf).value().orElse(null);
            if (age != null) {
                known.add(age.middle());
                flagged += age.isEstimated() ? 1 : 0;
            }
        }
        return new FirstFeedAges(known, flagged, bornAlive.size() - known.size());
    }

    private static int count(List<CalfRecord> calves, Function<CalfRecord, Boolean> isSo) {
        return (int) calves.stream().filter(isSo::apply).count();
    }

    private static boolean isBornDead(CalfRecord calf) {
        return calf.death()
                .map(CalfDied::when)
                .filter(DeathTime.AT_BIRTH::equals)
                .isPresent();
    }

    private static boolean isStillYoung(CalfRecord calf, Farm farm, Instant now) {
        Duration limit = farm.protocolFor(calf).time(Setting.STILLBIRTH_WITHIN_HOURS);
        return calf.isAlive()
                && AgeStart.of(calf)
                        .filter(start -> start.ageAt(now).compareTo(limit) <= 0)
                        .isPresent();
    }

    private static Judged<Boolean> isGoodBrix(CalfRecord calf, Farm farm) {
        ColostrumTestedByBrix tested = calf.brix().map(last -> last.event()).orElse(null);
        if (tested == null) {
            return Judged.not(WhyNot.NOT_TESTED);
        }
        if (!Plausibility.of(tested).isEmpty()) {
            return Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        BigDecimal line = farm.protocolFor(calf).number(Setting.GOOD_FROM_BRIX_PERCENT);
        return Judged.of(tested.brix().compareTo(line) >= 0);
    }
}
