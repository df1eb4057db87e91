package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How far a test of colostrum can be believed: of the samples that it calls positive or negative, how many truly are.
 * Studies do not agree on what positive means, so it is part of the figures.
 *
 * @param positive what the test looks for
 * @param sensitivity percent of the truly positive samples that it finds
 * @param specificity percent of the truly negative samples that it passes
 * @param share percent of all samples of the study that are truly positive
 */
public record TestAccuracy(Positive positive, BigDecimal sensitivity, BigDecimal specificity, BigDecimal share) {
    /** What a positive sample is. */
    public enum Positive {
        /** One with less than 50 g/L of antibody. */
        POOR,
        /** One with 50 g/L or more. */
        GOOD
    }

    private static final BigDecimal HUNDRED = new BigDecimal(100);

    /** Brix at 22 %: Norwegian Red cows, Acta Veterinaria Scandinavica 2019, doi 10.1186/s13028-019-0494-9. */
    public static final TestAccuracy BRIX_AT_22 = of(Positive.GOOD, "69.4", "83.1", "27.5");

    static TestAccuracy of(Positive positive, String sensitivity, String specificity, String share) {
        return new TestAccuracy(
                positive, new BigDecimal(sensitivity), new BigDecimal(specificity), new BigDecimal(share));
    }

    /** Of the samples that the test calls positive, the percentage that truly is; to one decimal, half up. */
    public BigDecimal trulyPositive() {
        BigDecimal found = sensitivity.multiply(share);
        return percent(found, HUNDRED.subtract(specificity).multiply(HUNDRED.subtract(share)));
    }

    /** Of the samples that the test calls negative, the percentage that truly is; to one decimal, half up. */
    public BigDecimal trulyNegative() {
        BigDecimal passed = specificity.multiply(HUNDRED.subtract(share));
        return percent(passed, HUNDRED.subtract(sensitivity).multiply(share));
    }

    private static BigDecimal percent(BigDecimal right, BigDecimal wrong) {
        return HUNDRED.multiply(right)
                .divide(right.add(wrong), MathContext.DECIMAL64)
                .setScale(1, RoundingMode.HALF_UP);
    }
}
