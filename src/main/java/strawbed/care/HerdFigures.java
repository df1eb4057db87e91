package strawbed.care;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
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
    /** The figures as they stand at this time. */
    public static HerdFigures of(Herd herd, Farm farm, BirthPeriod period, Instant now) {
        List<CalfRecord> born = period.bornIn(herd);
        return new HerdFigures(
                period,
                born.size(),
                HerdMeasure.FED_WITHIN_4_HOURS.of(born, farm, now),
                firstFeeds(born),
                HerdMeasure.STILLBORN.of(born, farm, now),
                count(born, calf -> isStillYoung(calf, farm, now)),
                HerdMeasure.ASSISTED.of(born, farm, now),
                HerdMeasure.DIFFICULT.of(born, farm, now),
                count(
                        born,
                        calf -> calf.isBirthOnlyFound()
                                && EaseClass.of(calf).value().isEmpty()),
                HerdMeasure.GOOD_BRIX.of(born, farm, now));
    }

    /** Of those born alive. */
    static FirstFeedAges firstFeeds(List<CalfRecord> born) {
        List<CalfRecord> bornAlive =
                born.stream().filter(calf -> !BirthOutcome.isBornDead(calf)).toList();
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

    private static boolean isStillYoung(CalfRecord calf, Farm farm, Instant now) {
        Duration limit = farm.protocolFor(calf).time(Setting.STILLBIRTH_WITHIN_HOURS);
        return calf.isAlive()
                && AgeStart.of(calf)
                        .filter(start -> start.ageAt(now).compareTo(limit) <= 0)
                        .isPresent();
    }
}
