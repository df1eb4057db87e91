package strawbed.calf;

import java.math.BigDecimal;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
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

    /** What the calf took, in litres, exact; never below zero, also when more was left than was offered. */
    public BigDecimal litres() {
        BigDecimal offered = volume.inLitres();
        return left == null ? offered : offered.subtract(left.inLitres()).max(BigDecimal.ZERO);
    }
}
