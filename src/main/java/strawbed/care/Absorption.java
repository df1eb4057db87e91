package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.event.Event.SerumTested;
import strawbed.event.Term;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * How much of the antibody fed is found in the calf's serum: apparent efficiency of absorption = 100 x serum IgG (g/L) x
 * birth weight (kg) x plasma (L/kg) / antibody fed (g), in the form of a summary of Halleran 2017. The plasma share is
 * an assumption of the protocol; published trials imply 8 to 10 %. All of it is an estimate.
 */
public final class Absorption {
    private static final MathContext DIGITS = MathContext.DECIMAL64;
    private static final BigDecimal HUNDRED = new BigDecimal(100);

    /** The ages at which a sample tells of the uptake. Common practice, no published source. */
    private static final Duration SAMPLE_FROM = Duration.ofDays(1);

    private static final Duration SAMPLE_UNTIL = Duration.ofDays(2);

    private Absorption() {}

    /**
     * The shares that published trials found in calves first fed at an age, in percent. They share no one curve, so
     * there is a range for a band of ages and no figure for a minute. J Dairy Sci 65:1765 (1982) is left out: it
     * measured another share, with more uptake at 6 hours than any of these at once.
     */
    enum Trials {
        /** Osaka 2014, J Dairy Sci 97:6608; Fischer 2018, J Dairy Sci 101:3099. */
        FIRST_HOUR(Duration.ofHours(1), "30.5", "52"),
        /** Osaka 2014; Desjardins-Morrissette 2018, J Dairy Sci. */
        TO_SIX_HOURS(Duration.ofHours(6), "27.4", "52.9"),
        /** Osaka 2014; Fischer 2018. */
        TO_EIGHTEEN_HOURS(Duration.ofHours(18), "15.8", "36");

        private final Duration end;
        private final BigDecimal least;
        private final BigDecimal most;

        Trials(Duration end, String least, String most) {
            this.end = end;
            this.least = new BigDecimal(least);
            this.most = new BigDecimal(most);
        }

        static Judged<Trials> at(Duration age) {
            for (Trials trials : values()) {
                if (age.compareTo(trials.end) <= 0) {
                    return Judged.of(trials);
                }
            }
            return Judged.not(WhyNot.NO_PUBLISHED_FIGURE);
        }
    }

    /**
     * A range of an estimate.
     *
     * @param least in g/L of serum, or in g of antibody fed
     * @param most in the same unit
     */
    public record Range(BigDecimal least, BigDecimal most, Set<Assumption> assumptions) {
        public Range {
            assumptions = Set.copyOf(assumptions);
        }
    }

    /**
     * The serum IgG to expect after the first dose, in g/L: the sum of its feeds, each with the shares for its own age. Of
     * a calf that also sucked its dam it is not judged.
     */
    public static Judged<Range> expectedSerum(FirstDose dose, Farm farm) {
        if (dose.suckled()) {
            return Judged.not(WhyNot.SUCKLED);
        }
        return dose.plausibleLitres()
                .then(litres -> FedAntibody.ofAll(
                        FedColostrum.of(dose.calf(), dose.feeds(), dose.end(), dose.protocol(), farm)))
                .then(fed -> BirthWeight.of(dose.calf()).then(weight -> {
                    Set<Assumption> assumptions = assumptions(dose, weight);
                    assumptions.addAll(AntibodyMass.of(fed, false).assumptions());
                    Judged<Range> sum = Judged.of(new Range(BigDecimal.ZERO, BigDecimal.ZERO, assumptions));
                    for (FedAntibody each : fed) {
                        sum = sum.then(before -> plus(before, each, weight, dose));
                    }
                    return sum;
                }));
    }

    private static Judged<Range> plus(Range before, FedAntibody fed, BirthWeight weight, FirstDose dose) {
        return dose.ageAt(fed.feed().at())
                .then(Trials::at)
                .then(trials -> Judged.of(new Range(
                        before.least().add(serum(fed.least(), trials.least, weight.kilograms(), dose.protocol())),
                        before.most().add(serum(fed.most(), trials.most, weight.kilograms(), dose.protocol())),
                        before.assumptions())));
    }

    /** The antibody that a first feed at the same age should have had for this much serum IgG in g/L, in grams. */
    public static Judged<Range> massFor(BigDecimal serum, FirstDose dose) {
        return trials(dose)
                .then(trials -> BirthWeight.of(dose.calf())
                        .then(weight -> Judged.of(new Range(
                                needed(serum, trials.most, weight.kilograms(), dose.protocol()),
                                needed(serum, trials.least, weight.kilograms(), dose.protocol()),
                                assumptions(dose, weight)))));
    }

    /**
     * The efficiency that a calf's own serum tells, in percent, a range where the antibody fed is an estimate: of IgG drawn
     * 24 to 48 hours after a known birth, with a measured weight and every feed before the draw measured and tested;
     * common practice, no published source. Feeds after the first dose count too, for their antibody is in that serum.
     */
    public static Judged<Range> observed(FirstDose dose, Farm farm) {
        if (dose.feeds().isEmpty()) {
            return Judged.not(dose.suckled() ? WhyNot.SUCKLED : WhyNot.NOT_FED);
        }
        return serumOfSecondDay(dose)
                .then(sample -> fedBefore(sample.drawn(), dose, farm)
                        .then(mass -> measuredWeight(dose)
                                .then(kilograms -> efficiency(sample.value(), kilograms, mass, dose))));
    }

    private static Judged<Range> efficiency(BigDecimal serum, BigDecimal kilograms, AntibodyMass mass, FirstDose dose) {
        // An estimate that may be of nothing at all tells nothing of a share of it.
        if (mass.least().signum() == 0) {
            return Judged.not(WhyNot.OUTSIDE_RANGE);
        }
        if (efficiency(serum, kilograms, mass.grams(), dose.protocol()).compareTo(HUNDRED) > 0) {
            return Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        Set<Assumption> assumptions = EnumSet.of(Assumption.PLASMA_SHARE);
        assumptions.addAll(mass.assumptions());
        return Judged.of(new Range(
                efficiency(serum, kilograms, mass.most(), dose.protocol()),
                efficiency(serum, kilograms, mass.least(), dose.protocol()).min(HUNDRED),
                assumptions));
    }

    private static Judged<BigDecimal> measuredWeight(FirstDose dose) {
        return BirthWeight.of(dose.calf())
                .then(weight ->
                        weight.assumptions().isEmpty() ? Judged.of(weight.kilograms()) : Judged.not(WhyNot.NO_WEIGHT));
    }

    private static Judged<AntibodyMass> fedBefore(Instant drawn, FirstDose dose, Farm farm) {
        if (dose.calf().nursings().stream().anyMatch(nursed -> nursed.at().isBefore(drawn))) {
            return Judged.not(WhyNot.SUCKLED);
        }
        List<Feed> feeds = dose.calf().feeds().stream()
                .filter(feed -> feed.litres().signum() > 0 && feed.at().isBefore(drawn))
                .toList();
        if (feeds.isEmpty()) {
            return Judged.not(WhyNot.NOT_FED);
        }
        if (!feeds.stream().allMatch(FirstDose::isPlausible)) {
            return Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        return FedAntibody.ofAll(FedColostrum.of(dose.calf(), feeds, drawn, dose.protocol(), farm))
                .then(fed -> Judged.of(AntibodyMass.of(fed, false)));
    }

    /** 100 x serum x weight x plasma / fed. */
    static BigDecimal efficiency(BigDecimal serum, BigDecimal kilograms, BigDecimal grams, Protocol protocol) {
        return HUNDRED.multiply(serum)
                .multiply(kilograms)
                .multiply(plasma(protocol))
                .divide(grams, DIGITS);
    }

    /** Fed x efficiency / (weight x plasma). */
    static BigDecimal serum(BigDecimal grams, BigDecimal efficiency, BigDecimal kilograms, Protocol protocol) {
        return grams.multiply(efficiency).divide(HUNDRED.multiply(kilograms).multiply(plasma(protocol)), DIGITS);
    }

    /** Serum x weight x plasma / efficiency. */
    static BigDecimal needed(BigDecimal serum, BigDecimal efficiency, BigDecimal kilograms, Protocol protocol) {
        return HUNDRED.multiply(serum)
                .multiply(kilograms)
                .multiply(plasma(protocol))
                .divide(efficiency, DIGITS);
    }

    private static BigDecimal plasma(Protocol protocol) {
        return protocol.number(Setting.PLASMA_LITERS_PER_KILOGRAM);
    }

    private static Judged<Trials> trials(FirstDose dose) {
        return dose.ageAtFirstFeed().then(Trials::at);
    }

    private static Set<Assumption> assumptions(FirstDose dose, BirthWeight weight) {
        Set<Assumption> assumptions = EnumSet.of(Assumption.PLASMA_SHARE, Assumption.UPTAKE_OF_TRIALS);
        assumptions.addAll(weight.assumptions());
        if (AgeStart.of(dose.calf()).filter(AgeStart::isEstimated).isPresent()) {
            assumptions.add(Assumption.BIRTH_NOT_TIMED);
        }
        return assumptions;
    }

    private record Sample(Instant drawn, BigDecimal value) {}

    /** The last sample of those ages; where there is none of them, why the last of all is no use. */
    private static Judged<Sample> serumOfSecondDay(FirstDose dose) {
        if (AgeStart.of(dose.calf()).filter(start -> !start.isEstimated()).isEmpty()) {
            return Judged.not(WhyNot.NO_TIME_OF_BIRTH);
        }
        Judged<Sample> best = Judged.not(WhyNot.NO_SAMPLE);
        for (Timed<SerumTested> tested : dose.calf().all(SerumTested.class)) {
            if (tested.event().kind() == Term.SerumMeasure.IGG) {
                Judged<Sample> next = sample(tested, dose);
                best = next.value().isPresent() || best.value().isEmpty() ? next : best;
            }
        }
        return best;
    }

    private static Judged<Sample> sample(Timed<SerumTested> tested, FirstDose dose) {
        SerumTested event = tested.event();
        Instant drawn = Optional.ofNullable(event.drawnAt()).orElse(tested.at());
        return dose.ageAt(drawn).then(age -> {
            if (age.compareTo(SAMPLE_FROM) < 0) {
                return Judged.not(WhyNot.DRAWN_TOO_EARLY);
            }
            if (age.compareTo(SAMPLE_UNTIL) > 0) {
                return Judged.not(WhyNot.DRAWN_TOO_LATE);
            }
            return Plausibility.of(event).isEmpty()
                    ? Judged.of(new Sample(drawn, event.value()))
                    : Judged.not(WhyNot.NOT_PLAUSIBLE);
        });
    }
}
