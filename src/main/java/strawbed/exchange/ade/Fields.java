package strawbed.exchange.ade;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The fields of one JSON object in their fixed order. What is not known gets no field. */
final class Fields {
    private final Map<String, Object> fields = new LinkedHashMap<>();

    Fields text(String name, String value) {
        fields.put(name, value);
        return this;
    }

    Fields text(String name, Optional<String> value) {
        value.ifPresent(known -> fields.put(name, known));
        return this;
    }

    /** As RFC 3339 in UTC. */
    Fields time(String name, Optional<Instant> value) {
        return text(name, value.map(Instant::toString));
    }

    Fields number(String name, BigDecimal value) {
        fields.put(name, value);
        return this;
    }

    Fields count(String name, Optional<Integer> value) {
        value.ifPresent(known -> fields.put(name, known));
        return this;
    }

    Fields object(String name, Fields value) {
        fields.put(name, value.toMap());
        return this;
    }

    Fields object(String name, Optional<Fields> value) {
        value.ifPresent(known -> object(name, known));
        return this;
    }

    /** No field for an empty list. */
    Fields list(String name, List<Fields> values) {
        if (!values.isEmpty()) {
            fields.put(name, values.stream().map(Fields::toMap).toList());
        }
        return this;
    }

    Map<String, Object> toMap() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }
}
