package strawbed.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import strawbed.event.Event;
import strawbed.event.RecordedEvent;

/**
 * Sees when the computer's clock does not go on as time does: somebody set it, or its battery is empty. The record's
 * order does not suffer, as it goes by places; but times before and after the jump do not fit together.
 *
 * <p>Owned by one thread.
 */
final class ClockWatch {
    /** Clocks that are set by radio or network are moved by less than this. Common practice, no published source. */
    static final Duration TOLERATED = Duration.ofSeconds(5);

    private final Clock clock;
    private final LongSupplier nanoseconds;
    private Instant seen;
    private long seenAt;

    /** @param nanoseconds time that nobody can set, from any start, such as {@link System#nanoTime} */
    ClockWatch(Clock clock, LongSupplier nanoseconds) {
        this.clock = clock;
        this.nanoseconds = nanoseconds;
        this.seen = clock.instant();
        this.seenAt = nanoseconds.getAsLong();
    }

    /** A jump since the last look. Some computers stop the other clock while they sleep: then this is one, too. */
    Optional<Event.ClockChanged> look() {
        Instant now = clock.instant();
        long at = nanoseconds.getAsLong();
        Instant expected = seen.plusNanos(at - seenAt);
        seen = now;
        seenAt = at;
        return Duration.between(expected, now).abs().compareTo(TOLERATED) > 0
                ? Optional.of(new Event.ClockChanged(expected, now))
                : Optional.empty();
    }

    /** What is odd about the time of a start, after the record's last fact. */
    static List<Event> since(RecordedEvent last, Instant now, ZoneId zone) {
        List<Event> odd = new ArrayList<>();
        if (now.plus(TOLERATED).isBefore(last.recordedAt())) {
            odd.add(new Event.ClockChanged(last.recordedAt(), now));
        }
        if (!zone.equals(last.zone())) {
            odd.add(new Event.ZoneChanged(last.zone(), zone));
        }
        return List.copyOf(odd);
    }
}
