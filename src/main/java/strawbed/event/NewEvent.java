package strawbed.event;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A fact that is ready for the record, before the record gave it a place.
 *
 * @param calf whose fact it is; null for the barn's
 * @param occurredAt when it happened
 */
public record NewEvent(@Nullable CalfId calf, Event event, Instant occurredAt, Provenance provenance) {}
