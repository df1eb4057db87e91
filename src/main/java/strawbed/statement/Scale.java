package strawbed.statement;

import java.math.BigDecimal;
import strawbed.measure.TemperatureUnit;

/** Which scale a temperature is in when nobody said it, told by the range. */
public enum Scale {
    /** A calf's body: 32 to 43 Celsius is 90 to 109 Fahrenheit, so the two never meet. */
    OF_BODY(55, 55),
    /** Warmed milk: nobody feeds it below 60 Fahrenheit or above 60 Celsius. */
    OF_FEED(60, 60),
    /** Milk in a hydrometer, 0 to 40 Celsius or 32 to 104 Fahrenheit: between 32 and 40 it can be either. */
    OF_MILK(32, 40),
    /** Air: the farm's habit decides, which in the United States is Fahrenheit. */
    OF_AIR(-100, -100);

    private final BigDecimal celsiusBelow;
    private final BigDecimal fahrenheitAbove;

    Scale(int celsiusBelow, int fahrenheitAbove) {
        this.celsiusBelow = new BigDecimal(celsiusBelow);
        this.fahrenheitAbove = new BigDecimal(fahrenheitAbove);
    }

    /** The scale that is meant by a number alone. */
    public TemperatureUnit unitOf(BigDecimal degrees) {
        return degrees.compareTo(fahrenheitAbove) > 0 ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.CELSIUS;
    }

    /** Whether the range alone does not tell. */
    public boolean isUnclear(BigDecimal degrees) {
        return degrees.compareTo(celsiusBelow) >= 0 && degrees.compareTo(fahrenheitAbove) <= 0;
    }
}
