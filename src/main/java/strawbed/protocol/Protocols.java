package strawbed.protocol;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import strawbed.event.Event.ProtocolAdopted;
import strawbed.event.RecordedEvent;

/**
 * The protocols that a record has known, each from the time it was adopted.
 *
 * <p>A calf is cared for and judged by the protocol that was in force at its birth, so that a later change of the
 * protocol changes no earlier judgement. What was adopted later in the record wins, whatever the clock said.
 */
public final class Protocols {
    private record Adopted(Instant from, Protocol protocol) {}

    private final List<Adopted> adopted;

    private Protocols(List<Adopted> adopted) {
        this.adopted = List.copyOf(adopted);
    }

    /**
     * The protocols among these events, which are in the order of the record. One that this program cannot take, from a
     * later program, counts as the usual protocol with the values that can be.
     */
    public static Protocols of(List<RecordedEvent> events) {
        List<Adopted> adopted = new ArrayList<>();
        for (RecordedEvent recorded : events) {
            if (recorded.event() instanceof ProtocolAdopted event) {
                adopted.add(new Adopted(recorded.occurredAt(), Protocol.nearest(event.settings())));
            }
        }
        return new Protocols(adopted);
    }

    /** The protocol in force at this time: before the first one was adopted that first one, without any the usual. */
    public Protocol at(Instant time) {
        for (int i = adopted.size() - 1; i >= 0; i--) {
            if (!adopted.get(i).from().isAfter(time)) {
                return adopted.get(i).protocol();
            }
        }
        return adopted.isEmpty() ? Protocol.usual() : adopted.get(0).protocol();
    }

    /** The one adopted last, or the usual one. */
    public Protocol latest() {
        return adopted.isEmpty()
                ? Protocol.usual()
                : adopted.get(adopted.size() - 1).protocol();
    }

    /** Whether any was adopted. */
    public boolean isEmpty() {
        return adopted.isEmpty();
    }
}
