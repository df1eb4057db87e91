package strawbed.handover;

import java.time.Duration;
import java.time.Instant;
import strawbed.event.Provenance.Source;
import strawbed.event.RecordedEvent;

/**
 * The shift that hands over.
 *
 * @param from when it began, that instant counted
 * @param now when it hands over, that instant counted
 */
public record Shift(Instant from, Instant now) {
    /** How long the next one is taken to be. Common practice, no published source. */
    public static final Duration USUAL = Duration.ofHours(12);

    public Shift {
        if (!from.isBefore(now)) {
            throw new IllegalArgumentException("a shift cannot begin at " + from + " and end at " + now);
        }
    }

    /** When the next one ends. */
    public Instant nextEnds() {
        return now.plus(USUAL);
    }

    boolean contains(Instant at) {
        return !at.isBefore(from) && !at.isAfter(now);
    }

    /** Whether a person recorded it in this shift: a list that a program brought in is nobody's work at a calf. */
    boolean recorded(RecordedEvent fact) {
        Source source = fact.provenance().source();
        return contains(fact.recordedAt()) && (source == Source.VOICE || source == Source.BUTTON);
    }
}
