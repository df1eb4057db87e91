package strawbed.care;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.CalfWeighed;

/**
 * What a calf weighed at birth.
 *
 * @param kilograms exact where it was measured; whole kilograms where it is assumed
 * @param measured the first weighing within 24 hours; null where the weight is the mean of its breed
 */
public record BirthWeight(BigDecimal kilograms, @Nullable CalfWeighed measured) {
    /** A weighing up to this age counts as birth weight. Common practice, no published source. */
    private static final Duration WITHIN = Duration.ofHours(24);

    /**
     * Mean birth weights in kg, rounded from 57, 64, 72 and 91 lb. Source: Fitch 1924, doi
     * 10.3168/jds.S0022-0302(24)94016-1; no newer figure than of 1924 was found for all four breeds.
     */
    private static final Map<String, BigDecimal> OF_BREED = Map.of(
            "jersey", new BigDecimal("26"),
            "guernsey", new BigDecimal("29"),
            "ayrshire", new BigDecimal("33"),
            "holstein", new BigDecimal("41"));

    /** Measured, else the mean of the breed; not judged without either. */
    public static Judged<BirthWeight> of(CalfRecord calf) {
        Optional<AgeStart> start = AgeStart.of(calf);
        Optional<BirthWeight> measured = calf.weights().stream()
                .filter(weighed ->
                        start.isEmpty() || start.get().ageAt(weighed.at()).compareTo(WITHIN) <= 0)
                .map(Timed::event)
                .filter(weighed -> weighed.weight().inKilograms().signum() > 0)
                .findFirst()
                .map(weighed -> new BirthWeight(weighed.weight().inKilograms(), weighed));
        return measured.or(() -> calf.breed().flatMap(BirthWeight::ofBreed))
                .map(Judged::of)
                .orElseGet(() -> Judged.not(WhyNot.NO_WEIGHT));
    }

    /** Whether it is the mean of the breed and not the calf's own. */
    public boolean isAssumed() {
        return measured == null;
    }

    private static Optional<BirthWeight> ofBreed(String breed) {
        return Optional.ofNullable(OF_BREED.get(breed)).map(kilograms -> new BirthWeight(kilograms, null));
    }
}
