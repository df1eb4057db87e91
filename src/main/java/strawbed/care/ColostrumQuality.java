package strawbed.care;

import java.math.BigDecimal;
import java.util.Optional;
import strawbed.calf.Timed;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.ColostrumTestedByHydrometer;
import strawbed.event.Term;
import strawbed.protocol.Protocol;

/**
 * How good colostrum was, by the one test that counts: the last one noted for the calf before the time of its second
 * feed, else the Brix that was noted when the batch it was fed from was put in stock; where the source changes between
 * feeds, each has its own. Which one counts is our own rule; common practice, no published source.
 *
 * @param test the test that counts
 * @param ofBatch whether it is the test of a batch in stock
 */
public record ColostrumQuality(Test test, boolean ofBatch, Protocol protocol) {
    /** What was read. */
    public sealed interface Test {
        /** Percent Brix. */
        record Brix(BigDecimal percent) implements Test {}

        /** A hydrometer, with the milk's temperature. */
        record ByHydrometer(ColostrumTestedByHydrometer reading) implements Test {}
    }

    /**
     * That of the first feed, or before it of what was noted last. Not judged of replacer, and where nothing was tested.
     */
    public static Judged<ColostrumQuality> of(FirstDose dose, Farm farm) {
        return dose.feeds().isEmpty()
                ? beforeTheFirst(dose, farm)
                : FedColostrum.of(dose.calf(), dose.feeds(), dose.end(), dose.protocol(), farm)
                        .get(0)
                        .quality();
    }

    private static Judged<ColostrumQuality> beforeTheFirst(FirstDose dose, Farm farm) {
        Optional<Timed<ColostrumSourceNoted>> source = dose.calf().all(ColostrumSourceNoted.class).stream()
                .filter(noted -> ColostrumTests.namesSource(noted.event()))
                .reduce((earlier, later) -> later);
        if (source.filter(noted -> noted.event().source() == Term.ColostrumSource.REPLACER)
                .isPresent()) {
            return Judged.not(WhyNot.REPLACER);
        }
        ColostrumTests tests = new ColostrumTests(dose.calf(), dose.end(), dose.protocol(), farm);
        return tests.last()
                .or(() -> source.flatMap(noted -> tests.ofBatch(noted.event(), noted.at())))
                .map(Judged::of)
                .orElseGet(() -> Judged.not(WhyNot.NOT_TESTED));
    }

    /** Its class. A Brix outside of all that was ever seen is not judged: one below may be a slip of the tongue too. */
    public Judged<ColostrumClass> grade() {
        if (test instanceof Test.Brix brix) {
            return isPlausible(brix)
                    ? Judged.of(ColostrumClass.ofBrix(brix.percent(), protocol))
                    : Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        return antibody().then(known -> Judged.of(ColostrumClass.ofAntibody(known.gramsPerLitre(), protocol)));
    }

    /** The antibody in it: measured by hydrometer, estimated from Brix. */
    public Judged<Antibody> antibody() {
        if (test instanceof Test.Brix brix) {
            return isPlausible(brix) ? Antibody.ofBrix(brix.percent()) : Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        ColostrumTestedByHydrometer tested = ((Test.ByHydrometer) test).reading();
        return Plausibility.of(tested).isEmpty()
                ? Hydrometer.antibody(tested.reading(), tested.milk())
                : Judged.not(WhyNot.NOT_PLAUSIBLE);
    }

    private static boolean isPlausible(Test.Brix brix) {
        return Plausibility.of(new ColostrumTestedByBrix(brix.percent())).isEmpty();
    }
}
