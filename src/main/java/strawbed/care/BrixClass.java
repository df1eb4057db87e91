package strawbed.care;

import java.math.BigDecimal;

/**
 * What a Brix reading says of colostrum. Classified by the lower bounds only, on the reading as it was said: 21.95 is
 * {@link #MIDDLE}.
 *
 * <p>Sources: at least 22 % for at least 50 g/L of antibody, Michigan State University Extension, first proposed by
 * Bielmann 2010; below 18 % not for a first feed, Buczinski and Vandeweerd 2016.
 */
public enum BrixClass {
    /** For a first feed. */
    GOOD,
    /** With antibody added, or for a later feed. */
    MIDDLE,
    /** Not for a first feed. */
    LOW;

    private static final BigDecimal GOOD_FROM = new BigDecimal("22");
    private static final BigDecimal MIDDLE_FROM = new BigDecimal("18");

    /** The class of a reading in percent. */
    public static BrixClass of(BigDecimal brix) {
        if (brix.compareTo(GOOD_FROM) >= 0) {
            return GOOD;
        }
        return brix.compareTo(MIDDLE_FROM) >= 0 ? MIDDLE : LOW;
    }
}
