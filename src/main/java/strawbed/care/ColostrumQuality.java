package strawbed.care;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Feed;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.ColostrumTestedByHydrometer;
import strawbed.event.Term;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * How good the colostrum of a calf's first dose was, by the one test that counts: the last one noted for the calf before
 * the time of its second feed, else the Brix that was noted when the batch it was fed from was put in stock. Which one
 * counts is our own rule; common practice, no published source.
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

    /** Not judged of replacer, and where nothing was tested. */
    public static Judged<ColostrumQuality> of(FirstDose dose, Farm farm) {
        CalfRecord calf = dose.calf();
        Optional<Instant> end = dose.feeds().stream()
                .findFirst()
                .map(Feed::at)
                .map(first -> first.plus(dose.protocol().time(Setting.SECOND_FEED_FROM_HOURS)));
        Optional<Timed<ColostrumSourceNoted>> source = last(calf.all(ColostrumSourceNoted.class), end);
        if (source.filter(noted -> noted.event().source() == Term.ColostrumSource.REPLACER)
                .isPresent()) {
            return Judged.not(WhyNot.REPLACER);
        }
        return own(calf, end)
                .map(test -> new ColostrumQuality(test, false, dose.protocol()))
                .or(() -> source.flatMap(noted -> batch(noted, farm))
                        .map(test -> new ColostrumQuality(test, true, dose.protocol())))
                .map(Judged::of)
                .orElseGet(() -> Judged.not(WhyNot.NOT_TESTED));
    }

    /** Its class. A Brix above all that was ever seen is not judged; one below is low whatever the truth is. */
    public Judged<ColostrumClass> grade() {
        if (test instanceof Test.Brix brix) {
            return isTooHigh(brix)
                    ? Judged.not(WhyNot.NOT_PLAUSIBLE)
                    : Judged.of(ColostrumClass.ofBrix(brix.percent(), protocol));
        }
        return antibody().then(known -> Judged.of(ColostrumClass.ofAntibody(known.gramsPerLitre(), protocol)));
    }

    /** The antibody in it: measured by hydrometer, estimated from Brix. */
    public Judged<Antibody> antibody() {
        if (test instanceof Test.Brix brix) {
            return isTooHigh(brix) ? Judged.not(WhyNot.NOT_PLAUSIBLE) : Antibody.ofBrix(brix.percent());
        }
        ColostrumTestedByHydrometer tested = ((Test.ByHydrometer) test).reading();
        return Plausibility.of(tested).isEmpty()
                ? Hydrometer.antibody(tested.reading(), tested.milk())
                : Judged.not(WhyNot.NOT_PLAUSIBLE);
    }

    private static boolean isTooHigh(Test.Brix brix) {
        return Plausibility.of(new ColostrumTestedByBrix(brix.percent())).stream()
                .anyMatch(odd -> odd.value().compareTo(odd.high()) > 0);
    }

    private static Optional<Test> own(CalfRecord calf, Optional<Instant> end) {
        List<? extends Timed<? extends Event>> tests = Stream.concat(
                        calf.all(ColostrumTestedByBrix.class).stream(),
                        calf.all(ColostrumTestedByHydrometer.class).stream())
                .sorted(Comparator.comparing(Timed::at))
                .toList();
        return last(tests, end)
                .map(tested -> tested.event() instanceof ColostrumTestedByHydrometer read
                        ? new Test.ByHydrometer(read)
                        : new Test.Brix(((ColostrumTestedByBrix) tested.event()).brix()));
    }

    private static Optional<Test> batch(Timed<ColostrumSourceNoted> noted, Farm farm) {
        return Optional.ofNullable(noted.event().batch())
                .flatMap(batch -> farm.storedAs(batch, noted.at()))
                .map(stored -> stored.event().brix())
                .map(Test.Brix::new);
    }

    private static <T extends Timed<?>> Optional<T> last(List<T> events, Optional<Instant> end) {
        return events.stream()
                .filter(event -> end.isEmpty() || event.at().isBefore(end.get()))
                .reduce((earlier, later) -> later);
    }
}
