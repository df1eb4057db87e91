package strawbed.care;

import java.math.BigDecimal;
import java.math.MathContext;
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
    /** 0, 20 and 40 C in Fahrenheit, in which both scales compare without rounding. */
    private static final BigDecimal COLDEST = new BigDecimal("32");

    /** At this temperature a specific gravity has an equation of its own. */
    private static final BigDecimal TWENTY = new BigDecimal("68");

    private static final BigDecimal WARMEST = new BigDecimal("104");

    /** No colostrum is thinner or denser than these; a reading between them is a specific gravity. From memory. */
    private static final BigDecimal GRAVITY_FROM = BigDecimal.ONE;

    private static final BigDecimal GRAVITY_TO = new BigDecimal("1.150");

    private Hydrometer() {}

    /** The antibody that a reading tells, measured: the reading is in mg/mL, or a specific gravity from 1 to 1.15. */
    public static Judged<Antibody> antibody(BigDecimal reading, @Nullable Temperature milk) {
        if (milk == null) {
            return Judged.not(WhyNot.NO_MILK_TEMPERATURE);
        }
        BigDecimal warmth = milk.inFahrenheit();
        if (warmth.compareTo(COLDEST) < 0 || warmth.compareTo(WARMEST) > 0) {
            return Judged.not(WhyNot.OUTSIDE_RANGE);
        }
        boolean isGravity = reading.compareTo(GRAVITY_FROM) >= 0 && reading.compareTo(GRAVITY_TO) <= 0;
        BigDecimal gramsPerLitre = isGravity ? ofGravity(reading, warmth) : ofScale(reading, warmth);
        return gramsPerLitre.signum() < 0
                ? Judged.not(WhyNot.OUTSIDE_RANGE)
                : Judged.of(Antibody.measured(gramsPerLitre));
    }

    private static BigDecimal ofScale(BigDecimal reading, BigDecimal warmth) {
        return reading.subtract(new BigDecimal("13.2")).add(perDegree("0.8", warmth));
    }

    /** At 20 degrees 958 SG - 969, the equation that Mechor 1992 gives for it. */
    private static BigDecimal ofGravity(BigDecimal gravity, BigDecimal warmth) {
        if (warmth.compareTo(TWENTY) == 0) {
            return new BigDecimal("958").multiply(gravity).subtract(new BigDecimal("969"));
        }
        return new BigDecimal("853")
                .multiply(gravity)
                .add(perDegree("0.4", warmth))
                .subtract(new BigDecimal("866"));
    }

    /** So much for each degree Celsius. Exact where it is a decimal, else to 34 digits: C = (F - 32) / 1.8. */
    private static BigDecimal perDegree(String factor, BigDecimal warmth) {
        return new BigDecimal(factor)
                .multiply(warmth.subtract(new BigDecimal("32")))
                .divide(new BigDecimal("1.8"), MathContext.DECIMAL128);
    }
}
