package strawbed.testkit;

import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;

/** A record in memory that can be told to fail. */
public final class MemoryJournal implements EventJournal {
    private final Clock clock;
    private final ZoneId zone;
    private final List<RecordedEvent> events = new ArrayList<>();
    private final List<OpenStatement> open = new ArrayList<>();
    private @Nullable String full;
    private long next = 1;

    public MemoryJournal(Clock clock, ZoneId zone) {
        this.clock = clock;
        this.zone = zone;
    }

    /** From now on nothing is saved, for this reason; null mends it. */
    public void failWith(@Nullable String reason) {
        full = reason;
    }

    @Override
    public List<RecordedEvent> append(List<NewEvent> added) {
        if (full != null) {
            throw new JournalException(JournalException.Reason.FULL, full, null);
        }
        List<RecordedEvent> saved = new ArrayList<>();
        for (NewEvent event : added) {
            saved.add(new RecordedEvent(
                    new EventId(new UUID(0, next)),
                    next++,
                    clock.instant(),
                    event.occurredAt(),
                    zone,
                    event.calf(),
                    event.event(),
                    event.provenance()));
        }
        events.addAll(saved);
        return saved;
    }

    @Override
    public List<RecordedEvent> all() {
        return List.copyOf(events);
    }

    @Override
    public Optional<RecordedEvent> find(EventId id) {
        return events.stream().filter(event -> event.id().equals(id)).findFirst();
    }

    @Override
    public OpenStatement keep(NewOpenStatement statement) {
        OpenStatement kept = new OpenStatement(new UUID(1, next++), clock.instant(), statement);
        open.add(kept);
        return kept;
    }

    @Override
    public void settle(UUID id, String how) {
        if (!open.removeIf(statement -> statement.id().equals(id))) {
            throw new IllegalArgumentException("no open statement " + id);
        }
    }

    @Override
    public List<OpenStatement> openStatements() {
        return List.copyOf(open);
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}
