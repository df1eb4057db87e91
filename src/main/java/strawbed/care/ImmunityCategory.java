package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import strawbed.event.Term.SerumMeasure;

/**
 * How much passive immunity a calf has, by one measure of its serum. The published bands leave gaps between their
 * printed ends; classified is the reading as it was said by the lower ends only, so that 5.75 g/dL of protein is
 * {@link #FAIR}.
 *
 * <p>Source: Lombard and others 2020, Journal of Dairy Science 103:7611, doi 10.3168/jds.2019-17955; the middle bands
 * of protein and Brix as quoted by extension pages. Less than 10 g/L of antibody is the older two-way line of failed
 * transfer.
 */
public enum ImmunityCategory {
    EXCELLENT("25.0", "6.2", "9.4"),
    GOOD("18.0", "5.8", "8.9"),
    FAIR("10.0", "5.1", "8.1"),
    POOR;

    @SuppressWarnings("Immutable") // Map.of
    private final Map<SerumMeasure, BigDecimal> from;

    ImmunityCategory() {
        this.from = Map.of();
    }

    ImmunityCategory(String antibody, String protein, String brix) {
        this.from = Map.of(
                SerumMeasure.IGG, new BigDecimal(antibody),
                SerumMeasure.PROTEIN, new BigDecimal(protein),
                SerumMeasure.BRIX, new BigDecimal(brix));
    }

    /** The category of a reading: g/L of antibody, g/dL of protein, percent of Brix. */
    public static ImmunityCategory of(SerumMeasure measure, BigDecimal value) {
        return Arrays.stream(values())
                .filter(category -> category.from(measure)
                        .filter(least -> value.compareTo(least) >= 0)
                        .isPresent())
                .findFirst()
                .orElse(POOR);
    }

    /** The least reading of this category, in the measure's unit; empty for the lowest one. */
    public Optional<BigDecimal> from(SerumMeasure measure) {
        return Optional.ofNullable(from.get(measure));
    }

    /**
     * A reading as it is shown: to one decimal, half up, or with as many as it takes to stay in its category. 9.96 g/L
     * of antibody is poor, and is not shown as 10.0.
     */
    public static BigDecimal shown(SerumMeasure measure, BigDecimal value) {
        ImmunityCategory category = of(measure, value);
        int decimals = 1;
        BigDecimal shown = value.setScale(decimals, RoundingMode.HALF_UP);
        while (of(measure, shown) != category) {
            decimals++;
            shown = value.setScale(decimals, RoundingMode.HALF_UP);
        }
        return shown;
    }
}
