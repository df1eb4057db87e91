package strawbed.measure;

import java.math.BigDecimal;

/** The one form in which spoken amounts are kept: a decimal of at least zero without trailing zeros. */
final class Amount {
    private Amount() {}

    /**
     * Normalises an amount, so that 2 and 2.0 are equal.
     *
     * @throws IllegalArgumentException if it is below zero
     */
    static BigDecimal normalised(BigDecimal amount, String what) {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException(what + " must not be below zero: " + amount.toPlainString());
        }
        return signed(amount);
    }

    /** Normalises an amount that may be below zero, such as a temperature. */
    static BigDecimal signed(BigDecimal amount) {
        BigDecimal stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
