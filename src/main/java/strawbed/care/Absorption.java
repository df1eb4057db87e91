package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
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

    /** The serum IgG to expect after the first dose, in g/L. Of a calf that also sucked its dam it is not judged. */
    public static Judged<Range> expectedSerum(FirstDose dose, Farm farm) {
        if (dose.suckled()) {
            return Judged.not(WhyNot.SUCKLED);
        }
        return AntibodyMass.of(dose, farm)
                .then(mass -> trials(dose)
                        .then(trials -> BirthWeight.of(dose.calf()).then(weight -> {
                            Set<Assumption> assumptions = assumptions(dose, weight);
                            assumptions.addAll(mass.assumptions());
                            return Judged.of(new Range(
                                    serum(mass.least(), trials.least, weight.kilograms(), dose.protocol()),
                                    serum(mass.most(), trials.most, weight.kilograms(), dose.protocol()),
                                    assumptions));
                        })));
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
     * The efficiency that a calf's own serum tells, in percent: of IgG drawn 24 to 48 hours after a known birth, with a
     * measured weight and every feed measured; common practice, no published source.
     */
    public static Judged<BigDecimal> observed(FirstDose dose, Farm farm) {
        if (dose.suckled()) {
            return Judged.not(WhyNot.SUCKLED);
        }
        Judged<BirthWeight> weight = BirthWeight.of(dose.calf())
                .then(known -> known.isAssumed() ? Judged.not(WhyNot.NO_WEIGHT) : Judged.of(known));
        return AntibodyMass.of(dose, farm)
                .then(mass -> mass.grams().signum() == 0 ? Judged.not(WhyNot.NOT_FED) : Judged.of(mass))
                .then(mass -> weight.then(known -> serumOfSecondDay(dose)
                        .then(serum ->
                                Judged.of(efficiency(serum, known.kilograms(), mass.grams(), dose.protocol())))));
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
        if (weight.isAssumed()) {
            assumptions.add(Assumption.WEIGHT_OF_BREED);
        }
        if (AgeStart.of(dose.calf()).filter(AgeStart::isEstimated).isPresent()) {
            assumptions.add(Assumption.BIRTH_NOT_TIMED);
        }
        return assumptions;
    }

    private static Judged<BigDecimal> serumOfSecondDay(FirstDose dose) {
        Optional<Timed<SerumTested>> tested = dose.calf().all(SerumTested.class).stream()
                .filter(test -> test.event().kind() == Term.SerumMeasure.IGG)
                .reduce((earlier, later) -> later);
        if (tested.isEmpty()) {
            return Judged.not(WhyNot.NO_SAMPLE);
        }
        Optional<AgeStart> start = AgeStart.of(dose.calf()).filter(known -> !known.isEstimated());
        if (start.isEmpty()) {
            return Judged.not(WhyNot.NO_TIME_OF_BIRTH);
        }
        SerumTested event = tested.get().event();
        Instant drawn = Optional.ofNullable(event.drawnAt()).orElse(tested.get().at());
        Duration age = start.get().ageAt(drawn);
        if (age.compareTo(SAMPLE_FROM) < 0) {
            return Judged.not(WhyNot.DRAWN_TOO_EARLY);
        }
        return age.compareTo(SAMPLE_UNTIL) > 0 ? Judged.not(WhyNot.DRAWN_TOO_LATE) : Judged.of(event.value());
    }
}
