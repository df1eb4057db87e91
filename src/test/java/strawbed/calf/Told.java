package strawbed.calf;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Event.CalfOpened;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.EventId;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.When;

/** Events in the order in which they were told. Times are hours and minutes of 1 March 2026 UTC; 30:00 is the next day. */
public final class Told {
    public static final Instant MIDNIGHT = Instant.parse("2026-03-01T00:00:00Z");
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");

    private final List<RecordedEvent> events = new ArrayList<>();

    /** A calf by a letter. */
    public static CalfId calf(String name) {
        return new CalfId(UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)));
    }

    /** {@code 07:10}, {@code 07:10:01}, {@code 30:00} or a full instant. */
    public static Instant time(String text) {
        return text.contains("T") ? Instant.parse(text) : MIDNIGHT.plus(duration(text));
    }

    public static Duration duration(String text) {
        String[] parts = text.split(":", -1);
        Duration duration = Duration.ofHours(Long.parseLong(parts[0])).plusMinutes(Long.parseLong(parts[1]));
        return parts.length == 3 ? duration.plusSeconds(Long.parseLong(parts[2])) : duration;
    }

    public static When at(String time) {
        return new When.At(time(time));
    }

    /** The null checker cannot see in the compiled record that its word may be missing. */
    @SuppressWarnings("NullAway")
    public static CalvingEaseNoted score(int score) {
        return new CalvingEaseNoted(null, score);
    }

    /** Adds an event and gives its id. */
    public EventId tell(@Nullable CalfId calf, Instant occurredAt, Event event) {
        long sequence = events.size() + 1L;
        EventId id = new EventId(new UUID(0x7000L, sequence));
        Instant recordedAt = MIDNIGHT.plusSeconds(sequence);
        events.add(new RecordedEvent(
                id, sequence, recordedAt, occurredAt, ZONE, calf, event, Provenance.of(Provenance.Source.COMMAND)));
        return id;
    }

    /** Adds events of calf A at a time. */
    public Told a(String time, Event... told) {
        return of("A", time, told);
    }

    public Told of(String calf, String time, Event... told) {
        for (Event event : told) {
            tell(calf(calf), time(time), event);
        }
        return this;
    }

    public Told open(String calf, String time, @Nullable String number, @Nullable String dam) {
        return of(calf, time, new CalfOpened(number, dam));
    }

    public EventId withdraw(EventId event) {
        return tell(calf("A"), MIDNIGHT, new EventWithdrawn(event));
    }

    /** The id of the event told last. */
    public EventId last() {
        return events.get(events.size() - 1).id();
    }

    public List<RecordedEvent> events() {
        return List.copyOf(events);
    }

    public Herd herd() {
        return Herd.of(events);
    }

    /** Calf A as it stands. */
    public CalfRecord record() {
        return record("A");
    }

    public CalfRecord record(String calf) {
        return herd().calf(calf(calf)).orElseThrow();
    }
}
