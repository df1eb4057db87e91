package strawbed.measure;

import java.math.BigDecimal;

/** Units of volume, with the exact millilitres of one. Source: NIST Handbook 44, Appendix C (US liquid measure). */
public enum VolumeUnit {
    QUART("quart", "946.352946"),
    PINT("pint", "473.176473"),
    LITRE("litre", "1000");

    private final String word;
    private final BigDecimal millilitres;

    VolumeUnit(String word, String millilitres) {
        this.word = word;
        this.millilitres = new BigDecimal(millilitres);
    }

    /** The word that stands in the record. */
    public String word() {
        return word;
    }

    BigDecimal millilitres() {
        return millilitres;
    }
}
