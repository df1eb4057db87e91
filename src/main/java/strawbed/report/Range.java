package strawbed.report;

import java.util.OptionalDouble;

/**
 * A share in percent with the interval that it may well lie in.
 *
 * @param compared a published share to hold it against
 * @param before the share of the period before
 */
public record Range(double share, double low, double high, OptionalDouble compared, OptionalDouble before) {
    public Range {
        if (!(0 <= low && low <= share && share <= high && high <= 100)) {
            throw new IllegalArgumentException("no share of " + share + " % lies from " + low + " to " + high);
        }
    }
}
