package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;

/**
 * The air temperature below which a dry calf must make heat to stay warm. It falls as the calf grows older; the
 * published points are joined by straight lines, which is our own reading. Source: extension questions and answers,
 * Farm Forum 2013.
 */
public final class CriticalTemperature {
    private static final int[] DAYS = {1, 10, 20, 30};
    private static final BigDecimal[] FAHRENHEIT = {
        new BigDecimal("56.2"), new BigDecimal("51.4"), new BigDecimal("47.1"), new BigDecimal("43.5")
    };

    private CriticalTemperature() {}

    /** In degrees Fahrenheit, to one decimal, half up; day 1 is the first day of life. After day 30 it stays. */
    public static BigDecimal fahrenheitAt(Duration age) {
        BigDecimal day = BigDecimal.valueOf(Math.max(0, age.toMinutes()))
                .divide(BigDecimal.valueOf(24 * 60L), 6, RoundingMode.HALF_UP)
                .add(BigDecimal.ONE);
        for (int i = 1; i < DAYS.length; i++) {
            if (day.compareTo(BigDecimal.valueOf(DAYS[i])) < 0) {
                return between(i, day).setScale(1, RoundingMode.HALF_UP);
            }
        }
        return FAHRENHEIT[FAHRENHEIT.length - 1];
    }

    private static BigDecimal between(int i, BigDecimal day) {
        BigDecimal share = day.subtract(BigDecimal.valueOf(DAYS[i - 1]))
                .divide(BigDecimal.valueOf(DAYS[i] - DAYS[i - 1]), 6, RoundingMode.HALF_UP);
        return FAHRENHEIT[i - 1].add(share.multiply(FAHRENHEIT[i].subtract(FAHRENHEIT[i - 1])));
    }
}
