package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * What is either so or not so of each calf, and makes a figure of a herd. The definitions are ours; common practice, no
 * published source, unless one is named.
 */
public enum HerdMeasure {
    /** Dead at birth or up to the age that the protocol sets, of all calves born. */
    STILLBORN(
            true,
            asked -> BirthOutcome.of(asked.calf(), asked.farm())
                    .then(outcome -> answer(outcome.isStillborn(), outcome.isAssumed()))),
    /** Helped or difficult, of the births whose ease was told; each calf is a birth, a twin too. */
    ASSISTED(true, asked -> EaseClass.of(asked.calf()).then(ease -> answer(ease.isAssisted()))),
    /** Difficult only, of the same. */
    DIFFICULT(true, asked -> EaseClass.of(asked.calf()).then(ease -> answer(ease == EaseClass.DIFFICULT))),
    /** Born one of two or more, as was said. */
    TWIN(true, asked -> answer(asked.calf().twin().isPresent())),
    /** Born at a moment that somebody timed, of all calves born: what the other figures rest on. */
    BIRTH_TIMED(
            true,
            asked -> answer(AgeStart.of(asked.calf())
                    .filter(start -> !start.isEstimated())
                    .isPresent())),
    /** First fed no older than an hour, of the calves born alive with a timed birth and a measured first feed. */
    FED_WITHIN_1_HOUR(false, asked -> fedWithin(asked, 1)),
    /** The same, two hours. */
    FED_WITHIN_2_HOURS(false, asked -> fedWithin(asked, 2)),
    /** The same, four hours. */
    FED_WITHIN_4_HOURS(false, asked -> fedWithin(asked, 4)),
    /** The same, six hours. */
    FED_WITHIN_6_HOURS(false, asked -> fedWithin(asked, 6)),
    /** A first dose of as much of birth weight as the protocol sets, of the calves whose dose and weight are known. */
    DOSE_ENOUGH(false, asked -> dose(asked).meetsTarget().then(HerdMeasure::answer)),
    /** A first dose with the antibody that the protocol advises, of the calves of which it can be worked out. */
    ANTIBODY_ENOUGH(
            false,
            asked -> AntibodyMass.of(dose(asked), asked.farm())
                    .then(mass -> mass.grade(asked.farm().protocolFor(asked.calf())))
                    .then(grade -> answer(grade == AntibodyMass.MassGrade.ADVISED))),
    /** Colostrum tested last at or above the protocol's line, of those tested with a plausible reading. */
    GOOD_BRIX(true, HerdMeasure::goodBrix),
    /**
     * The navel dipped within the time that the protocol sets, of the calves born alive whose birth was timed; until that
     * time is over, a calf without a dip does not count.
     */
    DIPPED_IN_TIME(false, HerdMeasure::dippedInTime),
    /** The navel dipped twice or more on the first day, of the same that are a day old. */
    DIPPED_TWICE(false, HerdMeasure::dippedTwice),
    /**
     * The navel dipped near each measured feed that the protocol asks it for, of the calves born alive with a timed birth
     * that were fed and are older than those feeds' dips.
     */
    DIPPED_AROUND_FEEDS(false, HerdMeasure::dippedAroundFeeds);

    private static final Duration DAY = Duration.ofDays(1);

    private final boolean isOfTheDead;

    @SuppressWarnings("ImmutableEnumChecker") // none of these functions holds anything
    private final Function<Asked, Judged<Answer>> judge;

    /** @param isOfTheDead whether calves that were dead at birth count too */
    HerdMeasure(boolean isOfTheDead, Function<Asked, Judged<Answer>> judge) {
        this.isOfTheDead = isOfTheDead;
        this.judge = judge;
    }

    /**
     * The share of calves that others found, in percent; empty where no such figure is known. Sources: stillborn or dead
     * within 48 hours in 2007, Utah State University Extension 2010; twins, worked out for calves from 96,069 of 2,304,278
     * calvings, Silva del Rio 2007, Journal of Dairy Science 90:1255.
     */
    public Optional<BigDecimal> benchmark() {
        return switch (this) {
            case STILLBORN -> Optional.of(new BigDecimal("6.5"));
            case TWIN -> Optional.of(new BigDecimal("8.0"));
            default -> Optional.empty();
        };
    }

    /** What a measure is asked of. */
    record Asked(CalfRecord calf, Farm farm, Instant now) {
        /** When its age starts, if somebody timed that. */
        Judged<Instant> agedStart() {
            Optional<AgeStart> start = AgeStart.of(calf).filter(age -> !age.isEstimated());
            return start.map(age -> Judged.of(age.at())).orElseGet(() -> Judged.not(WhyNot.NO_TIME_OF_BIRTH));
        }
    }

    /**
     * What is said of one calf.
     *
     * @param isEstimated whether it rests on an estimated birth
     */
    record Answer(boolean isSo, boolean isEstimated) {}

    /** The figure of these calves as it stands at this time; calves dead at birth are left out where they must be. */
    public Figure of(List<CalfRecord> born, Farm farm, Instant now) {
        Figure figure = Figure.NONE;
        for (CalfRecord calf : born) {
            if (!isOfTheDead && BirthOutcome.isBornDead(calf)) {
                continue;
            }
            Figure before = figure;
            figure = judge.apply(new Asked(calf, farm, now))
                    .value()
                    .map(answer -> before.plus(answer.isSo(), answer.isEstimated()))
                    .orElseGet(before::plusUnknown);
        }
        return figure;
    }

    private static Judged<Answer> goodBrix(Asked asked) {
        ColostrumTestedByBrix tested =
                asked.calf().brix().map(last -> last.event()).orElse(null);
        if (tested == null) {
            return Judged.not(WhyNot.NOT_TESTED);
        }
        if (!Plausibility.of(tested).isEmpty()) {
            return Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        BigDecimal line = asked.farm().protocolFor(asked.calf()).number(Setting.GOOD_FROM_BRIX_PERCENT);
        return answer(tested.brix().compareTo(line) >= 0);
    }

    private static Judged<Answer> dippedInTime(Asked asked) {
        Duration limit = asked.farm().protocolFor(asked.calf()).time(Setting.FIRST_DIP_MINUTES);
        return asked.agedStart().then(start -> {
            Instant last = start.plus(limit);
            boolean isInTime =
                    asked.calf().dips().stream().anyMatch(dip -> !dip.at().isAfter(last));
            return !isInTime && last.isAfter(asked.now()) ? Judged.not(WhyNot.TOO_YOUNG) : answer(isInTime);
        });
    }

    private static Judged<Answer> dippedTwice(Asked asked) {
        return asked.agedStart().then(start -> {
            if (start.plus(DAY).isAfter(asked.now())) {
                return Judged.not(WhyNot.TOO_YOUNG);
            }
            long dips = asked.calf().dips().stream()
                    .filter(dip -> !dip.at().isAfter(start.plus(DAY)))
                    .count();
            return answer(dips >= 2);
        });
    }

    private static Judged<Answer> dippedAroundFeeds(Asked asked) {
        Protocol protocol = asked.farm().protocolFor(asked.calf());
        Duration before = protocol.time(Setting.DIP_BEFORE_FEED_MINUTES);
        Duration after = protocol.time(Setting.DIP_AFTER_FEED_MINUTES);
        return asked.agedStart().then(start -> {
            Instant end = start.plus(protocol.time(Setting.DIP_AROUND_FEEDS_UNTIL_HOURS));
            List<Instant> feeds = asked.calf().feeds().stream()
                    .map(Feed::at)
                    .filter(at -> !at.isAfter(end))
                    .toList();
            if (feeds.isEmpty()) {
                return Judged.not(WhyNot.NOT_FED);
            }
            if (end.plus(after).isAfter(asked.now())) {
                return Judged.not(WhyNot.TOO_YOUNG);
            }
            return answer(feeds.stream()
                    .allMatch(fed -> asked.calf().dips().stream()
                            .map(Timed::at)
                            .anyMatch(dip -> !dip.isBefore(fed.minus(before)) && !dip.isAfter(fed.plus(after)))));
        });
    }

    private static Judged<Answer> fedWithin(Asked asked, int hours) {
        return FirstFeedAge.of(asked.calf())
                .then(age -> answer(age.middle().compareTo(Duration.ofHours(hours)) <= 0, age.isEstimated()));
    }

    private static Judged<Answer> answer(boolean isSo) {
        return answer(isSo, false);
    }

    private static Judged<Answer> answer(boolean isSo, boolean isEstimated) {
        return Judged.of(new Answer(isSo, isEstimated));
    }

    private static FirstDose dose(Asked asked) {
        return FirstDose.of(asked.calf(), asked.farm().protocolFor(asked.calf()), asked.now());
    }
}
