package strawbed.event;

import java.time.Instant;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/**
 * A fact with its envelope, as the record keeps it.
 *
 * @param id ours, of UUID version 7
 * @param sequence its place in the record, from 1; the order of the record is this, not the clock's
 * @param recordedAt when it was saved
 * @param occurredAt when it happened
 * @param zone the farm's zone at that time
 * @param calf whose fact it is; null for the barn's
 */
public record RecordedEvent(
        EventId id,
        long sequence,
        Instant recordedAt,
        Instant occurredAt,
        ZoneId zone,
        @Nullable CalfId calf,
        Event event,
        Provenance provenance) {}
