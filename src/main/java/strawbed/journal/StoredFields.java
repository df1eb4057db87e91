package strawbed.journal;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import strawbed.event.Term;
import strawbed.journal.JournalException.Reason;

/** The fields of one stored fact: each is taken once, and what is wrong is told with type, version and field. */
final class StoredFields {
    /** What to do about damage. */
    static final String DAMAGED = "The record is damaged; restore it from a copy.";

    /** More digits than any barn needs; a damaged exponent must not fill the memory with zeros. */
    private static final int DIGITS = 30;

    private final String type;
    private final int version;
    private final Map<String, Object> left;

    StoredFields(String type, int version, Map<String, ?> fields) {
        this.type = type;
        this.version = version;
        this.left = new LinkedHashMap<>(fields);
    }

    String type() {
        return type;
    }

    int version() {
        return version;
    }

    /** Whether any of these fields is still to be taken. */
    boolean has(String name) {
        return left.get(name) != null;
    }

    @Nullable
    String text(String name) {
        return take(name, String.class, text -> text);
    }

    <T extends Enum<T> & Term> @Nullable T term(String name, Class<T> list) {
        String word = text(name);
        if (word == null) {
            return null;
        }
        return Term.find(list, word).orElseThrow(() -> newer("the word \"" + word + "\" in the field " + name));
    }

    /** The constant whose word this is, of a list that is no {@link Term}. */
    <T> @Nullable T word(String name, T[] list, Function<T, String> wordOf) {
        String word = text(name);
        if (word == null) {
            return null;
        }
        return Arrays.stream(list)
                .filter(each -> wordOf.apply(each).equals(word))
                .findFirst()
                .orElseThrow(() -> newer("the word \"" + word + "\" in the field " + name));
    }

    @Nullable
    BigDecimal number(String name) {
        return take(name, Number.class, StoredFields::decimal);
    }

    @Nullable
    Integer whole(String name) {
        return take(name, Number.class, number -> decimal(number).intValueExact());
    }

    @Nullable
    Long count(String name) {
        return take(name, Number.class, number -> decimal(number).longValueExact());
    }

    @Nullable
    Boolean truth(String name) {
        return take(name, Boolean.class, truth -> truth);
    }

    @Nullable
    Instant instant(String name) {
        return take(name, String.class, Instant::parse);
    }

    @Nullable
    UUID id(String name) {
        return take(name, String.class, UUID::fromString);
    }

    /** The id in its one written form; the library also reads shortened ones, which would come out changed. */
    @Nullable
    UUID exactId(String name) {
        return take(name, String.class, text -> {
            UUID id = UUID.fromString(text);
            if (!id.toString().equals(text)) {
                throw new IllegalArgumentException("not as ids are written: " + text);
            }
            return id;
        });
    }

    @Nullable
    ZoneId zone(String name) {
        return take(name, String.class, ZoneId::of);
    }

    /** Texts in their order. */
    @Nullable
    List<String> listOfTexts(String name) {
        return take(name, List.class, list -> {
            List<String> texts = new ArrayList<>();
            for (Object each : (List<?>) list) {
                if (!(each instanceof String text)) {
                    throw new IllegalArgumentException("no text: " + each);
                }
                texts.add(text);
            }
            return texts;
        });
    }

    /** The fields of an object inside. */
    @Nullable
    Map<String, Object> object(String name) {
        return take(name, Map.class, map -> {
            Map<String, Object> fields = new LinkedHashMap<>();
            ((Map<?, ?>) map).forEach((key, value) -> fields.put(String.valueOf(key), value));
            return fields;
        });
    }

    /** Texts by their names. */
    @Nullable
    SortedMap<String, String> texts(String name) {
        return take(name, Map.class, map -> {
            SortedMap<String, String> texts = new TreeMap<>();
            for (Map.Entry<?, ?> entry : ((Map<?, ?>) map).entrySet()) {
                if (!(entry.getKey() instanceof String key) || !(entry.getValue() instanceof String value)) {
                    throw new IllegalArgumentException("no text: " + entry);
                }
                texts.put(key, value);
            }
            return texts;
        });
    }

    /** Says that a field which must be there is missing, unless it is there. */
    <T> T must(String name, @Nullable T value) {
        if (value == null) {
            throw corrupt("the field " + name + " is missing", null);
        }
        return value;
    }

    /** Says that a field is left which this type does not have, if one is. */
    void end() {
        if (!left.isEmpty()) {
            throw corrupt("it has no field " + left.keySet().iterator().next(), null);
        }
    }

    JournalException corrupt(String what, @Nullable Throwable cause) {
        return new JournalException(
                Reason.CORRUPT,
                "The event of type " + type + ", version " + version + " cannot be read: " + what + ".",
                DAMAGED,
                cause);
    }

    JournalException newer(String what) {
        return new JournalException(
                Reason.NEWER,
                "The event of type " + type + ", version " + version + " cannot be read: this program does not know "
                        + what + ".",
                "A newer Strawbed seems to have written it; use that one.",
                null);
    }

    private <S, T> @Nullable T take(String name, Class<S> kind, Function<S, T> reader) {
        Object value = left.remove(name);
        if (value == null) {
            return null;
        }
        if (!kind.isInstance(value)) {
            throw corrupt("the field " + name + " cannot be " + value, null);
        }
        try {
            return reader.apply(kind.cast(value));
        } catch (IllegalArgumentException | ArithmeticException | DateTimeException e) {
            throw corrupt("the field " + name + " cannot be " + value, e);
        }
    }

    private static BigDecimal decimal(Number number) {
        BigDecimal decimal = new BigDecimal(number.toString()).stripTrailingZeros();
        if (Math.abs(decimal.scale()) > DIGITS || decimal.precision() > DIGITS) {
            throw new ArithmeticException("more than " + DIGITS + " digits");
        }
        return decimal.scale() < 0 ? decimal.setScale(0) : decimal;
    }
}
