package strawbed.bench;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import strawbed.testkit.SpokenSentence;

/**
 * One line of {@code strawbed hear --json}.
 *
 * @param calf the number, or "-" for none
 * @param control the control phrase's word, or "-" for none
 * @param events in the form of the table of spoken sentences, times to the minute
 */
public record HeardLine(String file, String words, String verdict, String calf, String control, List<String> events) {
    private static final JSON READER = JSON.std.with(JSON.Feature.USE_BIG_DECIMAL_FOR_FLOATS);

    /** Reads a line. */
    static HeardLine of(String json) {
        Map<String, Object> line;
        try {
            line = READER.mapFrom(json);
        } catch (IOException e) {
            throw new UncheckedIOException("not a line of JSON: " + json, e);
        }
        return new HeardLine(
                text(line, "file"),
                text(line, "words"),
                text(line, "verdict"),
                text(line, "calf"),
                text(line, "control"),
                ((List<?>) Objects.requireNonNull(line.get("events")))
                        .stream().map(event -> event((Map<?, ?>) event)).toList());
    }

    private static String text(Map<String, Object> line, String field) {
        Object value = line.get(field);
        return value == null ? "-" : value.toString();
    }

    private static String event(Map<?, ?> event) {
        Map<String, Object> fields = new LinkedHashMap<>();
        event.forEach((name, value) -> fields.put(name.toString(), value));
        Object type = Objects.requireNonNull(fields.remove("type"));
        return toTheMinute(SpokenSentence.written(type.toString(), fields));
    }

    /** A sentence starts a moment after its file does, so seconds of times are dropped. */
    static String toTheMinute(String event) {
        return event.replaceAll("(\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d):\\d\\d(?:\\.\\d+)?Z", "$1Z");
    }

    boolean isUnderstood() {
        return verdict.equals("understood");
    }

    boolean isUnsure() {
        return verdict.equals("unsure");
    }

    /** Whether it says what the table's sentence says. */
    boolean says(SpokenSentence sentence) {
        return control.equals("-")
                && calf.equals(sentence.calf())
                && events.equals(
                        sentence.events().stream().map(HeardLine::toTheMinute).toList());
    }
}
