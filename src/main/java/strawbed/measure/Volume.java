package strawbed.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A volume as it was said.
 *
 * @param amount at least zero, without trailing zeros
 * @param unit the unit that was said; a quart is always the US liquid quart
 */
public record Volume(BigDecimal amount, VolumeUnit unit) {
    public Volume {
        amount = Amount.normalised(amount, "a volume");
    }

    /** The volume in litres, exact. */
    public BigDecimal inLitres() {
        return Amount.signed(amount.multiply(unit.millilitres()).movePointLeft(3));
    }

    /** The volume in litres to one decimal, half up, for reading. */
    public BigDecimal inLitresRounded() {
        return inLitres().setScale(1, RoundingMode.HALF_UP);
    }
}
