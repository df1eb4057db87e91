package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Wilson's score interval of a share, at 95 %: where the true share of all calves may well lie, as told by those that
 * were counted. It is a statistic and decides nothing; it is worked out to twenty digits.
 *
 * <p>Source: Wilson 1927, Journal of the American Statistical Association 22:209, with z = 1.959964; the formula is
 * quoted from memory, and its values agree with a reference library.
 *
 * @param low the lower end, as a share of one
 * @param high the upper end, as a share of one
 */
public record Wilson(BigDecimal low, BigDecimal high) {
    private static final BigDecimal Z = new BigDecimal("1.959964");
    private static final BigDecimal Z_SQUARED = Z.multiply(Z);
    private static final MathContext DIGITS = new MathContext(20);

    /**
     * The interval of so many out of so many.
     *
     * @throws IllegalArgumentException if there are none to count, or more than there are
     */
    public static Wilson of(int count, int of) {
        Share share = new Share(count, of);
        BigDecimal hits = BigDecimal.valueOf(share.count());
        BigDecimal all = BigDecimal.valueOf(share.of());
        BigDecimal spread = hits.multiply(all.subtract(hits))
                .divide(all, DIGITS)
                .add(Z_SQUARED.divide(BigDecimal.valueOf(4)))
                .sqrt(DIGITS)
                .multiply(Z);
        BigDecimal middle = hits.add(Z_SQUARED.divide(BigDecimal.valueOf(2)));
        BigDecimal whole = all.add(Z_SQUARED);
        return new Wilson(
                middle.subtract(spread).divide(whole, DIGITS).max(BigDecimal.ZERO),
                middle.add(spread).divide(whole, DIGITS).min(BigDecimal.ONE));
    }

    /** The lower end in percent, to one decimal, half up. */
    public BigDecimal lowPercent() {
        return percent(low);
    }

    /** The upper end in percent, to one decimal, half up. */
    public BigDecimal highPercent() {
        return percent(high);
    }

    private static BigDecimal percent(BigDecimal share) {
        return share.movePointRight(2).setScale(1, RoundingMode.HALF_UP);
    }
}
