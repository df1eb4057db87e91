package strawbed.event;

import java.util.UUID;

/** The identity of a recorded event. */
public record EventId(UUID value) {
    public static EventId of(String text) {
        return new EventId(UUID.fromString(text));
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
