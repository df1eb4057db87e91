package strawbed.statement;

import java.time.Instant;
import strawbed.event.Event;

/**
 * One fact of a statement.
 *
 * @param event what happened
 * @param occurredAt when
 * @param timeWasSaid whether the time was said; else it is the start of speech
 */
public record SaidFact(Event event, Instant occurredAt, boolean timeWasSaid) {}
