package strawbed.calf;

import java.time.Instant;
import strawbed.event.Event;
import strawbed.event.EventId;

/**
 * An event that counts, with the time it happened.
 *
 * @param at when it happened, which may differ from when it was told
 */
public record Timed<E extends Event>(Instant at, EventId id, E event) {}
