package strawbed.calf;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;

/**
 * Which events count no more. It needs the withdrawals only, and not what they withdraw. Immutable, safe for any thread.
 *
 * <p>A withdrawal that is itself withdrawn takes nothing away, and none reaches an event that follows it.
 */
public final class Withdrawals {
    /** For each event that is withdrawn by one that counts, the place of the last such. */
    private final Map<EventId, Long> last = new HashMap<>();

    private Withdrawals(List<RecordedEvent> fromTheLast) {
        for (RecordedEvent recorded : fromTheLast) {
            if (!reach(recorded) && recorded.event() instanceof EventWithdrawn withdrawal) {
                last.putIfAbsent(withdrawal.event(), recorded.sequence());
            }
        }
    }

    /** The withdrawals among these events, which come in any order. */
    public static Withdrawals of(Collection<RecordedEvent> events) {
        return new Withdrawals(events.stream()
                .filter(recorded -> recorded.event() instanceof EventWithdrawn)
                .sorted(Comparator.comparingLong(RecordedEvent::sequence).reversed())
                .toList());
    }

    /** Whether this event counts no more. */
    public boolean reach(RecordedEvent recorded) {
        Long by = last.get(recorded.id());
        return by != null && by > recorded.sequence();
    }
}
