package strawbed.measure;

import java.math.BigDecimal;

/**
 * A body weight as it was said.
 *
 * @param amount at least zero, without trailing zeros
 * @param unit the unit that was said
 */
public record Mass(BigDecimal amount, MassUnit unit) {
    public Mass {
        amount = Amount.normalised(amount, "a weight");
    }

    /** The weight in kilograms, exact. */
    public BigDecimal inKilograms() {
        return Amount.signed(amount.multiply(unit.kilograms()));
    }
}
