package strawbed.care;

import java.math.BigDecimal;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;

/**
 * The lines for a calf's own temperature, compared exactly in Fahrenheit, the scale the sources use: 100.0 F is not
 * cold yet, 99.9 F is.
 *
 * <p>Sources: cold below 100 F, University of Nevada Reno, Cattle Producer's Library CL 788; warm again from 101 F,
 * common practice, no published source.
 */
final class Cold {
    private static final BigDecimal COLD_BELOW = new BigDecimal(100);
    private static final BigDecimal WARM_FROM = new BigDecimal(101);

    private Cold() {}

    static boolean isCold(Temperature temperature) {
        return fahrenheit(temperature).compareTo(COLD_BELOW) < 0;
    }

    static boolean isWarm(Temperature temperature) {
        return fahrenheit(temperature).compareTo(WARM_FROM) >= 0;
    }

    /** Exact: this way round there is nothing to divide. Source: NIST SP 811. */
    private static BigDecimal fahrenheit(Temperature temperature) {
        return temperature.unit() == TemperatureUnit.FAHRENHEIT
                ? temperature.amount()
                : temperature.amount().multiply(new BigDecimal("1.8")).add(new BigDecimal(32));
    }
}
