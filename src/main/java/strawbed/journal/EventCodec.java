package strawbed.journal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import strawbed.event.Event;
import strawbed.journal.JournalException.Reason;

/**
 * Turns facts into the form in which they are kept, and back.
 *
 * <p>The form is fixed by hand and not by the names in the program, so that a renamed component leaves old records
 * readable. A part that is not known has no field. Quantities are JSON numbers in plain notation without trailing
 * zeros, numbers of animals and tags are JSON strings, instants are ISO 8601 in UTC. Safe for any thread.
 */
public final class EventCodec {
    /** The version in which every kind of fact is written now. */
    public static final int VERSION = 1;

    static final JSON TEXT = JSON.builder(JsonFactory.builder()
                    .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                    .build())
            .enable(JSON.Feature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(JSON.Feature.FAIL_ON_DUPLICATE_MAP_KEYS)
            .build();

    private final FieldsOfEvent writer = new FieldsOfEvent();

    /** The fields of a fact in their fixed order, without its type: texts, numbers, booleans, never null. */
    public Map<String, Object> fields(Event event) {
        return event.match(writer).toMap();
    }

    /** The fields of a fact as one line of JSON. */
    public String json(Event event) {
        try {
            return TEXT.asString(fields(event));
        } catch (IOException e) {
            throw new UncheckedIOException("an event of type " + event.type() + " has no JSON", e);
        }
    }

    /**
     * The fact that these fields tell.
     *
     * @param type as {@link Event#type} says
     * @param version the version in which it was written, from 1
     * @throws JournalException for {@link Reason#NEWER} if the type, the version or a word from a list is not known
     *     yet, and for {@link Reason#CORRUPT} if a field is missing, malformed or too many
     */
    public Event event(String type, int version, Map<String, ?> fields) {
        return new EventOfFields(new StoredFields(type, version, fields)).read();
    }

    /**
     * The fact that this JSON tells.
     *
     * @throws JournalException as {@link #event(String, int, Map)}, and for text that is no JSON object
     */
    public Event event(String type, int version, String json) {
        Map<String, Object> fields;
        try {
            fields = TEXT.mapFrom(json);
        } catch (IOException e) {
            throw new JournalException(
                    Reason.CORRUPT,
                    "An event of type " + type + ", version " + version + " is not JSON: " + json + ".",
                    StoredFields.DAMAGED,
                    e);
        }
        return event(type, version, fields);
    }

    /** Words as a JSON array of texts. */
    public String json(List<String> words) {
        try {
            return TEXT.asString(words);
        } catch (IOException e) {
            throw new UncheckedIOException("these words have no JSON: " + words, e);
        }
    }

    /**
     * The words of a JSON array of texts.
     *
     * @throws JournalException for {@link Reason#CORRUPT} if it is none
     */
    public List<String> words(String json) {
        try {
            return TEXT.listOfFrom(String.class, json);
        } catch (IOException e) {
            throw new JournalException(
                    Reason.CORRUPT, "What was heard is no list of words: " + json + ".", StoredFields.DAMAGED, e);
        }
    }
}
