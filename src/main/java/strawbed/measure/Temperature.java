package strawbed.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A temperature as it was said. The two scales are not a factor apart, so it is a type of its own.
 *
 * @param amount degrees, without trailing zeros
 * @param unit the scale that was said, or that the range tells
 */
public record Temperature(BigDecimal amount, TemperatureUnit unit) {
    public Temperature {
        amount = Amount.signed(amount);
    }

    /** Degrees Fahrenheit, exact: F = 1.8 C + 32; source: NIST SP 811. */
    public BigDecimal inFahrenheit() {
        return switch (unit) {
            case FAHRENHEIT -> amount;
            case CELSIUS -> Amount.signed(amount.multiply(new BigDecimal("1.8")).add(new BigDecimal(32)));
        };
    }

    /** Degrees Celsius to two decimals, half up. C = (F - 32) / 1.8, exact; source: NIST SP 811. */
    public BigDecimal inCelsius() {
        return switch (unit) {
            case CELSIUS -> amount.setScale(2, RoundingMode.HALF_UP);
            case FAHRENHEIT ->
                amount.subtract(new BigDecimal(32)).divide(new BigDecimal("1.8"), 2, RoundingMode.HALF_UP);
        };
    }
}
