package strawbed.journal;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.EventId;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;

/**
 * A record as lines of JSON, one fact with its whole envelope a line after a line that tells what the file is.
 *
 * <p>What is not known has no field. Under {@code fields} stands the fact as the record keeps it, see {@link
 * EventCodec}. The same facts always give the same lines. Safe for any thread.
 */
public final class RecordLines {
    private static final String FORMAT = "strawbed record";

    /** The version of the lines; that of each kind of fact is apart. Version 1 had no operator. */
    private static final int VERSION = 2;

    private static final int OLDEST = 1;

    private final EventCodec codec = new EventCodec();

    /**
     * The first line.
     *
     * @param events how many follow, so that a file that was cut off is known
     * @param program which program wrote it, with its version
     */
    public String heading(long events, String program) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("format", FORMAT);
        fields.put("version", VERSION);
        fields.put("program", program);
        fields.put("events", events);
        return text(fields);
    }

    /**
     * How many events the first line announces.
     *
     * @throws JournalException for {@link Reason#NOT_A_RECORD} if it is no such line, and for {@link Reason#NEWER} if
     *     its version is not known yet
     */
    public long announced(String heading) {
        StoredFields in;
        try {
            in = new StoredFields("heading", VERSION, object(heading));
            if (!FORMAT.equals(in.text("format"))) {
                throw in.corrupt("its format is not \"" + FORMAT + "\"", null);
            }
        } catch (JournalException e) {
            throw new JournalException(Reason.NOT_A_RECORD, "the file does not begin as an exported record does", e);
        }
        int version = in.must("version", in.whole("version"));
        if (version < OLDEST || version > VERSION) {
            throw new JournalException(
                    Reason.NEWER,
                    "the version of the file's form is " + version + ", and this program knows " + OLDEST + " to "
                            + VERSION + " only",
                    null);
        }
        in.must("program", in.text("program"));
        long events = in.must("events", in.count("events"));
        in.end();
        if (events < 0) {
            throw in.corrupt("there cannot be " + events + " events", null);
        }
        return events;
    }

    /** A fact as its line, without an end of line. */
    public String line(RecordedEvent recorded) {
        Provenance how = recorded.provenance();
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("sequence", recorded.sequence());
        fields.put("id", recorded.id().toString());
        fields.put("recorded_at", recorded.recordedAt().toString());
        fields.put("occurred_at", recorded.occurredAt().toString());
        fields.put("zone", recorded.zone().getId());
        put(fields, "calf", recorded.calf() == null ? null : recorded.calf().toString());
        fields.put("type", recorded.event().type());
        fields.put("version", EventCodec.VERSION);
        fields.put("fields", codec.fields(recorded.event()));
        fields.put("source", how.source().word());
        put(fields, "words", how.words().isEmpty() ? null : how.words());
        put(fields, "verdict", how.verdict());
        put(fields, "grammar", how.grammar());
        put(fields, "model", how.model());
        put(fields, "sound", how.sound());
        put(fields, "operator", how.operator());
        return text(fields);
    }

    /**
     * The fact that a line tells.
     *
     * @throws JournalException for {@link Reason#CORRUPT} if it is no such line, and for {@link Reason#NEWER} if this
     *     program does not know its kind of fact yet
     */
    public RecordedEvent event(String line) {
        Map<String, Object> object = object(line);
        String type = object.get("type") instanceof String text ? text : "not told";
        StoredFields in = new StoredFields(type, EventCodec.VERSION, object);
        in.must("type", in.text("type"));
        int version = in.must("version", in.whole("version"));
        RecordedEvent recorded = new RecordedEvent(
                new EventId(in.must("id", in.exactId("id"))),
                in.must("sequence", in.count("sequence")),
                in.must("recorded_at", in.instant("recorded_at")),
                in.must("occurred_at", in.instant("occurred_at")),
                in.must("zone", in.zone("zone")),
                in.has("calf") ? new CalfId(in.must("calf", in.exactId("calf"))) : null,
                codec.event(type, version, in.must("fields", in.object("fields"))),
                provenance(in));
        in.end();
        return recorded;
    }

    private static Provenance provenance(StoredFields in) {
        return new Provenance(
                in.must("source", in.term("source", Provenance.Source.class)),
                in.has("words") ? in.must("words", in.listOfTexts("words")) : List.of(),
                in.text("verdict"),
                in.text("grammar"),
                in.text("model"),
                in.text("sound"),
                in.text("operator"));
    }

    private static void put(Map<String, Object> fields, String name, @Nullable Object value) {
        if (value != null) {
            fields.put(name, value);
        }
    }

    private static String text(Map<String, Object> fields) {
        try {
            return EventCodec.TEXT.asString(fields);
        } catch (IOException e) {
            throw new UncheckedIOException("these fields have no JSON: " + fields, e);
        }
    }

    /** One JSON object and nothing behind it. */
    private static Map<String, Object> object(String line) {
        try (JsonParser parser = EventCodec.TEXT.createParser(line)) {
            Map<String, Object> fields = EventCodec.TEXT.mapFrom(parser);
            if (fields == null) {
                throw damaged("it is no JSON object.", null);
            }
            if (parser.nextToken() != null) {
                throw damaged("something stands behind its JSON object.", null);
            }
            return fields;
        } catch (JsonProcessingException e) {
            throw damaged("it is no JSON object (" + e.getOriginalMessage() + ").", e);
        } catch (IOException e) {
            throw damaged("it is no JSON object (" + e.getMessage() + ").", e);
        }
    }

    private static JournalException damaged(String what, @Nullable Exception cause) {
        return new JournalException(Reason.CORRUPT, what, cause);
    }
}
