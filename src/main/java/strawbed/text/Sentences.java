package strawbed.text;

import java.util.Locale;

/** The beginning and the end of sentences. */
public final class Sentences {
    private Sentences() {}

    /** With a capital at its beginning. */
    public static String capitalised(String words, Locale locale) {
        if (words.isEmpty()) {
            return words;
        }
        int second = words.offsetByCodePoints(0, 1);
        return words.substring(0, second).toUpperCase(locale) + words.substring(second);
    }

    /** With a full stop, where it does not end in some mark already. */
    static String ended(String words) {
        String stripped = words.strip();
        return stripped.isEmpty() || ".!?".indexOf(stripped.charAt(stripped.length() - 1)) >= 0
                ? stripped
                : stripped + ".";
    }
}
