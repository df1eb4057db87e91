package strawbed.care;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import strawbed.measure.Temperature;

/**
 * What a hydrometer in colostrum tells, corrected for the temperature of the milk.
 *
 * <p>Sources: on the mg/mL scale, reading - 13.2 + 0.8 T, Mechor 1991 (J Dairy Sci 74), whose rounding makes it neutral
 * at 16.5 and not at 20 degrees; on the scale of specific gravity, 853 SG + 0.4 T - 866, Mechor 1992 (doi
 * 10.3168/jds.S0022-0302(92)78076-X). T is in degrees Celsius; both were tested from 0 to 40. The second is often quoted
 * without its temperature, which makes it wrong.
 */
public final class Hydrometer {
    private static final BigDecimal COLDEST = BigDecimal.ZERO;
    private static final BigDecimal WARMEST = new BigDecimal("40");

    /** No colostrum is as thin or as dense as these; a reading between them is a specific gravity. */
    private static final BigDecimal GRAVITY_FROM = BigDecimal.ONE;

    private static final BigDecimal GRAVITY_TO = new BigDecimal("1.2");

    /** At this temperature a specific gravity has an equation of its own. */
    private static final BigDecimal TWENTY = new BigDecimal("20");

    private Hydrometer() {}

    /** The antibody that a reading tells, measured: the reading is in mg/mL, or a specific gravity from 1 to 1.2. */
    public static Judged<Antibody> antibody(BigDecimal reading, @Nullable Temperature milk) {
        if (milk == null) {
            return Judged.not(WhyNot.NO_MILK_TEMPERATURE);
        }
        BigDecimal celsius = milk.inCelsius();
        if (celsius.compareTo(COLDEST) < 0 || celsius.compareTo(WARMEST) > 0) {
            return Judged.not(WhyNot.OUTSIDE_RANGE);
        }
        boolean isGravity = reading.compareTo(GRAVITY_FROM) >= 0 && reading.compareTo(GRAVITY_TO) <= 0;
        BigDecimal gramsPerLitre = isGravity ? ofGravity(reading, celsius) : ofScale(reading, celsius);
        return gramsPerLitre.signum() < 0
                ? Judged.not(WhyNot.OUTSIDE_RANGE)
                : Judged.of(Antibody.measured(gramsPerLitre));
    }

    private static BigDecimal ofScale(BigDecimal reading, BigDecimal celsius) {
        return reading.subtract(new BigDecimal("13.2")).add(new BigDecimal("0.8").multiply(celsius));
    }

    /** At 20 degrees 958 SG - 969, the equation that Mechor 1992 gives for it. */
    private static BigDecimal ofGravity(BigDecimal gravity, BigDecimal celsius) {
        if (celsius.compareTo(TWENTY) == 0) {
            return new BigDecimal("958").multiply(gravity).subtract(new BigDecimal("969"));
        }
        return new BigDecimal("853")
                .multiply(gravity)
                .add(new BigDecimal("0.4").multiply(celsius))
                .subtract(new BigDecimal("866"));
    }
}
