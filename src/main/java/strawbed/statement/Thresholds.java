package strawbed.statement;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/**
 * How sure hearing must be. What each number means stands in {@code thresholds.properties}; the accuracy bench sets them.
 */
public record Thresholds(
        int readings,
        double missing,
        double lag,
        double askLag,
        double votes,
        double margin,
        double otherCalf,
        double plausible,
        double free,
        double rejectFree,
        double leftOutMillis) {
    private static final String FILE = "thresholds.properties";

    private static final Thresholds SET = read();

    /** Those that the bench has set. */
    public static Thresholds set() {
        return SET;
    }

    private static Thresholds read() {
        try (Reader file = new InputStreamReader(
                Thresholds.class.getResource("/strawbed/statement/" + FILE).openStream(), StandardCharsets.UTF_8)) {
            Properties numbers = new Properties();
            numbers.load(file);
            return of(numbers);
        } catch (IOException e) {
            throw new UncheckedIOException("The program's own " + FILE + " cannot be read; install it again.", e);
        }
    }

    /**
     * From the lines of such a file.
     *
     * @throws IllegalArgumentException that names the number which is missing or is none
     */
    static Thresholds of(Properties numbers) {
        return new Thresholds(
                (int) number(numbers, "readings"),
                number(numbers, "missing"),
                number(numbers, "lag"),
                number(numbers, "ask-lag"),
                number(numbers, "votes"),
                number(numbers, "margin"),
                number(numbers, "other-calf"),
                number(numbers, "plausible"),
                number(numbers, "free"),
                number(numbers, "reject-free"),
                number(numbers, "left-out-millis"));
    }

    private static double number(Properties numbers, String name) {
        String text = numbers.getProperty(name);
        if (text == null) {
            throw new IllegalArgumentException(FILE + " has no \"" + name + "\"");
        }
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(FILE + ": \"" + name + "\" is to be a number, not \"" + text + "\"", e);
        }
    }
}
