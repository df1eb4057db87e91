package strawbed.exchange.ade;

import strawbed.event.Term;
import strawbed.measure.MassUnit;

/**
 * Our terms in the words of the standard's lists. Calving ease needs none: its words in the record are the standard's.
 *
 * <p>Source: the lists of animal gender, weight method, mass units (UN/CEFACT recommendation 20) and birth status of
 * the ICAR Animal Data Exchange standard.
 */
final class AdeWords {
    /** The standard requires species and gender of an animal, and has a word for a gender that is not known. */
    static final String CATTLE = "Cattle";

    static final String UNKNOWN_GENDER = "Unknown";
    static final String DEAD = "Dead";

    /** What people say for a calf that died at birth is stillborn, born dead or dead at birth. */
    static final String STILLBORN = "Stillborn";

    private AdeWords() {}

    static String gender(Term.Sex sex) {
        return switch (sex) {
            case FEMALE -> "Female";
            case MALE -> "Male";
        };
    }

    /** The list has one scale to stand on: the load cell, which it also means where no method is told. */
    static String method(Term.WeighingMethod method) {
        return switch (method) {
            case SCALE -> "LoadCell";
            case TAPE -> "Girth";
            case GUESS -> "Assessed";
        };
    }

    static String unit(MassUnit unit) {
        return switch (unit) {
            case KILOGRAM -> "KGM";
            case POUND -> "LBR";
        };
    }
}
