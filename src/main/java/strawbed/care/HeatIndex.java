package strawbed.care;

import java.math.BigDecimal;
import strawbed.measure.Temperature;

/**
 * The temperature-humidity index: 0.8 T + RH (T - 14.4) + 46.4, with T in degrees Celsius and RH as a share of one.
 * Studies use different formulas of this name, so whoever shows an index names this one. Source: Veterinary Handbook
 * for the Australian livestock export industry, 14.2.
 */
public final class HeatIndex {
    private HeatIndex() {}

    /** The index, exact for a temperature in Celsius to two decimals; humidity in percent. */
    public static BigDecimal of(Temperature air, BigDecimal humidity) {
        BigDecimal celsius = air.inCelsius();
        BigDecimal share = humidity.movePointLeft(2);
        return new BigDecimal("0.8")
                .multiply(celsius)
                .add(share.multiply(celsius.subtract(new BigDecimal("14.4"))))
                .add(new BigDecimal("46.4"));
    }
}
