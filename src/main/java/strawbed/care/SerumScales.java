package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The link between a serum's total protein and its Brix: protein = 6.0 + (0.8 / 0.9) (Brix - 9.2). It shows typing
 * errors, and is no way to turn one scale into the other.
 *
 * <p>Source: worked out from the means (6.0 g/dL, 9.2 %), the standard deviations (0.8, 0.9) and the correlation of
 * 1.00 in Deelen 2014, doi 10.3168/jds.2014-7939; that more than 0.5 g/dL apart is a sign of a typing error is our own
 * reading of it.
 */
public final class SerumScales {
    private static final BigDecimal MEAN_PROTEIN = new BigDecimal("6.0");
    private static final BigDecimal MEAN_BRIX = new BigDecimal("9.2");
    private static final BigDecimal SPREAD_PROTEIN = new BigDecimal("0.8");
    private static final BigDecimal SPREAD_BRIX = new BigDecimal("0.9");
    private static final BigDecimal APART = new BigDecimal("0.5");

    private SerumScales() {}

    /** The protein in g/dL that goes with a Brix reading in percent, to two decimals, half up. */
    public static BigDecimal proteinFor(BigDecimal brix) {
        return brix.subtract(MEAN_BRIX)
                .multiply(SPREAD_PROTEIN)
                .add(MEAN_PROTEIN.multiply(SPREAD_BRIX))
                .divide(SPREAD_BRIX, 2, RoundingMode.HALF_UP);
    }

    /** Whether protein in g/dL and Brix in percent of the same blood lie further apart than they should; exact. */
    public static boolean disagree(BigDecimal protein, BigDecimal brix) {
        // Both sides times 0.9: a division would not come out even.
        BigDecimal apart = protein.subtract(MEAN_PROTEIN)
                .multiply(SPREAD_BRIX)
                .subtract(brix.subtract(MEAN_BRIX).multiply(SPREAD_PROTEIN));
        return apart.abs().compareTo(APART.multiply(SPREAD_BRIX)) > 0;
    }
}
