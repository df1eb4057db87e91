package strawbed.text;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The languages in which people can be told things. */
public enum Language {
    ENGLISH("en", Locale.US),
    /** As on dairies of the United States: Spanish names of days and months, a decimal point, United States spelling of units. */
    SPANISH("es", new Locale("es", "US"));

    private final String code;
    private final Locale locale;

    Language(String code, Locale locale) {
        this.code = code;
        this.locale = locale;
    }

    /** As a farm writes it: the two letters of ISO 639-1. */
    public String code() {
        return code;
    }

    /** For {@link Messages}. */
    public Locale locale() {
        return locale;
    }

    /** The language with this code; empty for every other word. */
    public static Optional<Language> find(String code) {
        return Arrays.stream(values())
                .filter(language -> language.code.equals(code))
                .findFirst();
    }
}
