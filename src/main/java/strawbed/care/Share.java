package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * So many out of so many.
 *
 * @param count how many are so; 0 to {@code of}
 * @param of of how many; at least 1
 */
public record Share(int count, int of) {
    public Share {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException("there is no share of " + count + " out of " + of);
        }
    }

    /** In percent, to so many decimals, half up. */
    public BigDecimal percent(int decimals) {
        return BigDecimal.valueOf(count)
                .movePointRight(2)
                .divide(BigDecimal.valueOf(of), decimals, RoundingMode.HALF_UP);
    }

    /** How it compares with this percentage, exactly: below zero, zero or above. */
    int compareToPercent(int percent) {
        return Long.compare(100L * count, (long) percent * of);
    }

    /** Where the true share may well lie. */
    public Wilson interval() {
        return Wilson.of(count, of);
    }
}
