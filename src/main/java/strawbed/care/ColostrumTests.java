package strawbed.care;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.ColostrumTestedByHydrometer;
import strawbed.protocol.Protocol;

/** The tests of colostrum that were noted for a calf before an end, and those of the batches in stock. */
final class ColostrumTests {
    private final List<Timed<Event>> tests;
    private final Protocol protocol;
    private final Farm farm;

    ColostrumTests(CalfRecord calf, Instant end, Protocol protocol, Farm farm) {
        this.tests = calf.all(Event.class).stream()
                .filter(each -> each.event() instanceof ColostrumTestedByBrix
                        || each.event() instanceof ColostrumTestedByHydrometer)
                .filter(each -> each.at().isBefore(end))
                .toList();
        this.protocol = protocol;
        this.farm = farm;
    }

    Optional<ColostrumQuality> last() {
        return lastBetween(Instant.MIN, Instant.MAX);
    }

    /** The last one from a time on and before another. */
    Optional<ColostrumQuality> lastBetween(Instant from, Instant until) {
        return tests.stream()
                .filter(each -> !each.at().isBefore(from) && each.at().isBefore(until))
                .reduce((earlier, later) -> later)
                .map(each -> new ColostrumQuality(test(each.event()), false, protocol));
    }

    /** The Brix of the batch that was in stock under this number at a time. */
    Optional<ColostrumQuality> ofBatch(ColostrumSourceNoted noted, Instant time) {
        return Optional.ofNullable(noted.batch())
                .flatMap(batch -> farm.storedAs(batch, time))
                .map(stored -> stored.event().brix())
                .map(brix -> new ColostrumQuality(new ColostrumQuality.Test.Brix(brix), true, protocol));
    }

    /** Whether it says more than what was done to the colostrum. */
    static boolean namesSource(ColostrumSourceNoted noted) {
        return noted.source() != null || noted.cow() != null || noted.batch() != null;
    }

    private static ColostrumQuality.Test test(Event tested) {
        return tested instanceof ColostrumTestedByHydrometer read
                ? new ColostrumQuality.Test.ByHydrometer(read)
                : new ColostrumQuality.Test.Brix(((ColostrumTestedByBrix) tested).brix());
    }
}
