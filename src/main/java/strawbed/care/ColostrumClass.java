package strawbed.care;

import java.math.BigDecimal;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * What a test says of colostrum, by the farm's lines. Classified by the lower bounds only, on the reading as it was
 * said: with the usual lines 21.95 % Brix is {@link #MIDDLE}.
 *
 * <p>Sources of the usual lines: at least 22 % Brix for at least 50 g/L of antibody, Michigan State University
 * Extension, first proposed by Bielmann 2010; below 18 % Brix not for a first feed, Buczinski and Vandeweerd 2016.
 */
public enum ColostrumClass {
    /** For a first feed. */
    GOOD,
    /** With antibody added, or for a later feed. Only Brix has this line. */
    MIDDLE,
    /** Not for a first feed. Only Brix has this line. */
    LOW,
    /** Less antibody than good colostrum has. */
    BELOW_GOOD;

    /** The class of a Brix reading in percent. */
    public static ColostrumClass ofBrix(BigDecimal brix, Protocol protocol) {
        if (brix.compareTo(protocol.number(Setting.GOOD_FROM_BRIX_PERCENT)) >= 0) {
            return GOOD;
        }
        return brix.compareTo(protocol.number(Setting.LOW_BELOW_BRIX_PERCENT)) >= 0 ? MIDDLE : LOW;
    }

    /** The class of this much antibody in g/L. */
    public static ColostrumClass ofAntibody(BigDecimal gramsPerLitre, Protocol protocol) {
        return gramsPerLitre.compareTo(protocol.number(Setting.GOOD_FROM_GRAMS_PER_LITER)) >= 0 ? GOOD : BELOW_GOOD;
    }
}
