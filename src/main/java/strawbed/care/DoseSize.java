package strawbed.care;

import java.math.BigDecimal;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/**
 * How much a first dose is by the rule of thumb: at least 2 US quarts, 3 to 4 is the aim. Common practice, no published
 * source. It says nothing of the antibody in it.
 */
public enum DoseSize {
    BELOW_LEAST,
    LEAST_MET,
    AIM_MET;

    private static final BigDecimal LEAST = quarts("2");
    private static final BigDecimal AIM = quarts("3");

    /** The size of this many litres. */
    public static DoseSize of(BigDecimal litres) {
        if (litres.compareTo(LEAST) < 0) {
            return BELOW_LEAST;
        }
        return litres.compareTo(AIM) < 0 ? LEAST_MET : AIM_MET;
    }

    private static BigDecimal quarts(String count) {
        return new Volume(new BigDecimal(count), VolumeUnit.QUART).inLitres();
    }
}
