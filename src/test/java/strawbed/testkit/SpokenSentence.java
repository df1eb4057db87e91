package strawbed.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import strawbed.journal.EventCodec;
import strawbed.statement.CalfReference;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;

/**
 * One row of the table of spoken sentences.
 *
 * @param calf the number, or "-" for none
 * @param events for each event its type, and its fields in the order of the table
 */
public record SpokenSentence(String words, String calf, List<String> events) {
    /** When all sentences of the table were spoken. */
    public static final Instant SPOKEN_AT = Instant.parse("2026-03-03T12:00:00Z");

    /** Where. */
    public static final ZoneId ZONE = ZoneId.of("America/Chicago");

    /** The open calves of the table's farm. */
    public static final Set<String> OPEN_CALVES = Set.of(
            "3", "7", "12", "13", "15", "18", "23", "30", "41", "50", "66", "77", "88", "90", "101", "115", "118",
            "150", "207", "214", "230", "305", "350", "402", "417", "418", "450", "512", "519", "600", "634", "719",
            "777", "811", "940", "1207", "1315", "2044", "3050", "4127");

    /** All rows. */
    public static List<SpokenSentence> all() {
        try (var in = SpokenSentence.class.getResourceAsStream("/spoken-sentences.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(SpokenSentence::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SpokenSentence of(String line) {
        String[] columns = line.split("; ");
        return new SpokenSentence(
                columns[0],
                columns[1],
                Stream.of(columns).skip(2).map(SpokenSentence::sorted).toList());
    }

    /** The number that a statement names, in the form of the table. */
    public static String calfOf(Statement statement) {
        CalfReference calf = statement.calf();
        if (calf instanceof CalfReference.Numbered numbered) {
            return numbered.number();
        }
        if (calf instanceof CalfReference.New fresh && fresh.number() != null) {
            return fresh.number();
        }
        return calf instanceof CalfReference.Renumbered renumbered ? renumbered.number() : "-";
    }

    /** The events of a statement in the form of the table. */
    public static List<String> eventsOf(Statement statement) {
        List<String> events = new ArrayList<>();
        for (SaidFact fact : statement.facts()) {
            Map<String, Object> fields = new LinkedHashMap<>(new EventCodec().fields(fact.event()));
            if (fact.timeWasSaid() && !fields.containsKey("at") && !fields.containsKey("earliest")) {
                fields.put("at", fact.occurredAt());
            }
            events.add(written(fact.event().type(), fields));
        }
        return events;
    }

    /** An event in the form of the table. */
    public static String written(String type, Map<String, Object> fields) {
        List<String> parts = fields.entrySet().stream()
                .filter(field -> !field.getKey().equals("sound"))
                .map(field -> field.getKey() + "=" + plain(field.getValue()))
                .sorted()
                .toList();
        return parts.isEmpty() ? type : type + " " + String.join(", ", parts);
    }

    private static String plain(Object value) {
        return value instanceof BigDecimal decimal
                ? decimal.stripTrailingZeros().toPlainString()
                : String.valueOf(value);
    }

    private static String sorted(String event) {
        int space = event.indexOf(' ');
        if (space < 0) {
            return event;
        }
        return event.substring(0, space) + " "
                + String.join(
                        ", ",
                        Stream.of(event.substring(space + 1).split(", "))
                                .sorted()
                                .toList());
    }
}
