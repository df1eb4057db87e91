package strawbed.measure;

import java.math.BigDecimal;

/** Units of mass, with the exact kilograms of one. Source: NIST Handbook 44, Appendix C (avoirdupois pound). */
public enum MassUnit {
    POUND("pound", "0.45359237"),
    KILOGRAM("kilogram", "1");

    private final String word;
    private final BigDecimal kilograms;

    MassUnit(String word, String kilograms) {
        this.word = word;
        this.kilograms = new BigDecimal(kilograms);
    }

    /** The word that stands in the record. */
    public String word() {
        return word;
    }

    BigDecimal kilograms() {
        return kilograms;
    }
}
