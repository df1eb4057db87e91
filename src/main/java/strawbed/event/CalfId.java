package strawbed.event;

import java.util.UUID;

/** The identity of a calf: ours, never changed, in the journal and in the card's QR code. Numbers come and go. */
public record CalfId(UUID value) {
    public static CalfId of(String text) {
        return new CalfId(UUID.fromString(text));
    }

    @Override
    public String toString() {
        return value.toString();
    }
}
