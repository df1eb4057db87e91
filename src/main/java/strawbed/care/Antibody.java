package strawbed.care;

import java.math.BigDecimal;

/**
 * The antibody (immunoglobulin G) in colostrum.
 *
 * @param gramsPerLitre g/L, exact; the same number in mg/mL
 * @param spread how far off a single estimate may be, in g/L; zero for a measured one
 */
public record Antibody(BigDecimal gramsPerLitre, BigDecimal spread) {
    private static final BigDecimal BRIX_SLOPE = new BigDecimal("5.6143");
    private static final BigDecimal BRIX_OFFSET = new BigDecimal("60.22");
    private static final BigDecimal BRIX_SPREAD = new BigDecimal("34");
    private static final BigDecimal BRIX_FROM = new BigDecimal("15");
    private static final BigDecimal BRIX_TO = new BigDecimal("32");

    /**
     * Estimated from Brix: -60.22 + 5.6143 Brix, give or take 34 g/L for one sample. The line of least squares that the
     * summary figures of Quigley 2013 (doi 10.3168/jds.2012-5823) imply, worked out by us; its residual standard
     * deviation is 17.3 g/L. Good from 15 to 32 %, common practice, no published source; elsewhere not judged.
     */
    public static Judged<Antibody> ofBrix(BigDecimal brix) {
        if (brix.compareTo(BRIX_FROM) < 0 || brix.compareTo(BRIX_TO) > 0) {
            return Judged.not(WhyNot.OUTSIDE_RANGE);
        }
        return Judged.of(new Antibody(BRIX_SLOPE.multiply(brix).subtract(BRIX_OFFSET), BRIX_SPREAD));
    }

    static Antibody measured(BigDecimal gramsPerLitre) {
        return new Antibody(gramsPerLitre, BigDecimal.ZERO);
    }

    /** Whether it is an estimate. */
    public boolean isEstimate() {
        return spread.signum() > 0;
    }

    /** The least that it may be, in g/L; never below zero. */
    public BigDecimal least() {
        return gramsPerLitre.subtract(spread).max(BigDecimal.ZERO);
    }

    /** The most that it may be, in g/L. */
    public BigDecimal most() {
        return gramsPerLitre.add(spread);
    }
}
