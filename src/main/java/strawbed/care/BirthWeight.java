package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Timed;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Term;

/**
 * What a calf weighed at birth.
 *
 * @param kilograms exact
 * @param measured the first weighing within 24 hours; null where the weight is the mean of its breed
 */
public record BirthWeight(BigDecimal kilograms, @Nullable CalfWeighed measured) {
    /** A weighing up to this age counts as birth weight. Common practice, no published source. */
    private static final Duration WITHIN = Duration.ofHours(24);

    /**
     * Mean birth weights in kg, of 57, 64, 72 and 91 lb. Source: Fitch 1924, doi
     * 10.3168/jds.S0022-0302(24)94016-1; no newer figure than of 1924 was found for all four breeds.
     */
    private static final Map<String, BigDecimal> OF_BREED = Map.of(
            "jersey", new BigDecimal("25.9"),
            "guernsey", new BigDecimal("29.0"),
            "ayrshire", new BigDecimal("32.7"),
            "holstein", new BigDecimal("41.3"));

    /** Measured, else the mean of the breed; not judged without either, or when the weighing is out of the ordinary. */
    public static Judged<BirthWeight> of(CalfRecord calf) {
        Optional<AgeStart> start = AgeStart.of(calf);
        Optional<BirthWeight> measured = calf.weights().stream()
                .filter(weighed ->
                        start.isEmpty() || start.get().ageAt(weighed.at()).compareTo(WITHIN) <= 0)
                .map(Timed::event)
                .filter(weighed -> weighed.weight().inKilograms().signum() > 0)
                .findFirst()
                .map(weighed -> new BirthWeight(weighed.weight().inKilograms(), weighed));
        if (measured.map(BirthWeight::measured).filter(BirthWeight::isOdd).isPresent()) {
            return Judged.not(WhyNot.NOT_PLAUSIBLE);
        }
        return measured.or(() -> calf.breed().flatMap(BirthWeight::ofBreed))
                .map(Judged::of)
                .orElseGet(() -> Judged.not(WhyNot.NO_WEIGHT));
    }

    /** Whether it is the mean of the breed and not the calf's own. */
    public boolean isAssumed() {
        return measured == null;
    }

    /** Whether somebody guessed it by eye. */
    public boolean isGuessed() {
        return measured != null && measured.method() == Term.WeighingMethod.GUESS;
    }

    /** Kilograms to the half, half up, for reading. */
    public BigDecimal shownKilograms() {
        BigDecimal half = new BigDecimal("0.5");
        return kilograms.divide(half, 0, RoundingMode.HALF_UP).multiply(half);
    }

    /** What it rests on without being measured; empty for a scale, a tape, or a weighing of no told method. */
    public Set<Assumption> assumptions() {
        if (isAssumed()) {
            return EnumSet.of(Assumption.WEIGHT_OF_BREED);
        }
        return isGuessed() ? EnumSet.of(Assumption.WEIGHT_GUESSED) : EnumSet.noneOf(Assumption.class);
    }

    private static boolean isOdd(CalfWeighed weighed) {
        return !Plausibility.of(weighed).isEmpty();
    }

    private static Optional<BirthWeight> ofBreed(String breed) {
        return Optional.ofNullable(OF_BREED.get(breed.strip().toLowerCase(Locale.ROOT)))
                .map(kilograms -> new BirthWeight(kilograms, null));
    }
}
