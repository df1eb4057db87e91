package strawbed.journal;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SortedMap;
import org.jspecify.annotations.Nullable;
import strawbed.event.Term;

/** Collects the fields of one fact in order; what is null gets no field. */
final class WrittenFields {
    private final Map<String, Object> fields = new LinkedHashMap<>();

    WrittenFields text(String name, @Nullable String value) {
        return put(name, value);
    }

    WrittenFields term(String name, @Nullable Term value) {
        return put(name, value == null ? null : value.word());
    }

    WrittenFields whole(String name, @Nullable Integer value) {
        return put(name, value);
    }

    WrittenFields count(String name, long value) {
        return put(name, value);
    }

    /** Plain and without trailing zeros: 130, 2.5. */
    WrittenFields number(String name, @Nullable BigDecimal value) {
        if (value == null) {
            return this;
        }
        BigDecimal stripped = value.stripTrailingZeros();
        return put(name, stripped.scale() < 0 ? stripped.setScale(0) : stripped);
    }

    WrittenFields instant(String name, @Nullable Instant value) {
        return put(name, value == null ? null : value.toString());
    }

    WrittenFields truth(String name, boolean value) {
        return put(name, value);
    }

    /** Texts by their names, in the order of these. */
    WrittenFields texts(String name, SortedMap<String, String> value) {
        return put(name, value);
    }

    Map<String, Object> toMap() {
        return Collections.unmodifiableMap(fields);
    }

    private WrittenFields put(String name, @Nullable Object value) {
        if (value != null) {
            fields.put(name, value);
        }
        return this;
    }
}
