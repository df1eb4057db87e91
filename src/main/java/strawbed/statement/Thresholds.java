package strawbed.statement;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
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
        double otherValue,
        double plausible,
        double free,
        double clear,
        double freeInNoise,
        double rejectFree,
        double leftOutMillis) {
    private static final String FILE = "thresholds.properties";

    private static final Thresholds SET = read();

    /** Those that the bench has set. */
    public static Thresholds set() {
        return SET;
    }

    private static Thresholds read() {
        try (InputStream file = Thresholds.class.getResourceAsStream("/strawbed/statement/" + FILE)) {
            if (file == null) {
                throw new IllegalStateException("The program's own " + FILE + " is missing; install it again.");
            }
            Properties numbers = new Properties();
            numbers.load(new InputStreamReader(file, StandardCharsets.UTF_8));
            return of(numbers);
        } catch (IOException e) {
            throw new UncheckedIOException("The program's own " + FILE + " cannot be read; install it again.", e);
        }
    }

    /**
     * From the names and numbers of such a file.
     *
     * @throws IllegalArgumentException that names the number which is missing or is none
     */
    static Thresholds of(Map<?, ?> numbers) {
        return new Thresholds(
                (int) number(numbers, "readings"),
                number(numbers, "missing"),
                number(numbers, "lag"),
                number(numbers, "ask-lag"),
                number(numbers, "votes"),
                number(numbers, "margin"),
                number(numbers, "other-calf"),
                number(numbers, "other-value"),
                number(numbers, "plausible"),
                number(numbers, "free"),
                number(numbers, "clear"),
                number(numbers, "free-in-noise"),
                number(numbers, "reject-free"),
                number(numbers, "left-out-millis"));
    }

    /** Each by its name in the file. */
    public Map<String, Double> numbers() {
        Map<String, Double> numbers = new LinkedHashMap<>();
        numbers.put("readings", (double) readings);
        numbers.put("missing", missing);
        numbers.put("lag", lag);
        numbers.put("ask-lag", askLag);
        numbers.put("votes", votes);
        numbers.put("margin", margin);
        numbers.put("other-calf", otherCalf);
        numbers.put("other-value", otherValue);
        numbers.put("plausible", plausible);
        numbers.put("free", free);
        numbers.put("clear", clear);
        numbers.put("free-in-noise", freeInNoise);
        numbers.put("reject-free", rejectFree);
        numbers.put("left-out-millis", leftOutMillis);
        return numbers;
    }

    /** The same with another number, by its name in the file. */
    public Thresholds with(String name, double number) {
        Map<String, Double> numbers = numbers();
        if (numbers.put(name, number) == null) {
            throw new IllegalArgumentException(FILE + " has no \"" + name + "\"");
        }
        return of(numbers);
    }

    private static double number(Map<?, ?> numbers, String name) {
        Object number = numbers.get(name);
        if (number == null) {
            throw new IllegalArgumentException(FILE + " has no \"" + name + "\"");
        }
        try {
            return Double.parseDouble(number.toString().strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    FILE + ": \"" + name + "\" is to be a number, not \"" + number + "\"", e);
        }
    }
}
