package strawbed.calf;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumLeft;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.measure.Temperature;
import strawbed.measure.Volume;

/**
 * One feed of colostrum, with what the calf left of it.
 *
 * @param volume what was offered
 * @param left what the calf left; null when nothing was said of it
 */
public record Feed(
        EventId id,
        Instant at,
        Volume volume,
        Term.@Nullable FeedingMethod method,
        @Nullable Temperature warmedTo,
        @Nullable Volume left) {

    /**
     * Feeds with what was left of them: that belongs to the last feed at or before it, and the last word on it counts.
     *
     * @param fed as they happened
     * @param left as it happened, what was told later behind what was told before
     */
    static List<Feed> of(List<Timed<ColostrumFed>> fed, List<Timed<ColostrumLeft>> left) {
        Map<Integer, ColostrumLeft> leftOf = new HashMap<>();
        for (Timed<ColostrumLeft> leaving : left) {
            int feed = (int) fed.stream()
                            .filter(feeding -> !feeding.at().isAfter(leaving.at()))
                            .count()
                    - 1;
            if (feed >= 0) {
                leftOf.put(feed, leaving.event());
            }
        }
        List<Feed> feeds = new ArrayList<>();
        for (int i = 0; i < fed.size(); i++) {
            feeds.add(of(fed.get(i), leftOf.get(i)));
        }
        return List.copyOf(feeds);
    }

    private static Feed of(Timed<ColostrumFed> fed, @Nullable ColostrumLeft left) {
        ColostrumFed event = fed.event();
        return new Feed(
                fed.id(),
                fed.at(),
                event.volume(),
                event.method(),
                event.warmedTo(),
                left == null ? null : left.volume());
    }

    /** What the calf took, in litres, exact; never below zero, also when more was left than was offered. */
    public BigDecimal litres() {
        BigDecimal offered = volume.inLitres();
        return left == null ? offered : offered.subtract(left.inLitres()).max(BigDecimal.ZERO);
    }
}
