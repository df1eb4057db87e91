package strawbed.testkit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventJournal;
import strawbed.journal.EventSource;
import strawbed.journal.ImportPlan;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;

/** A record in memory that can be told to fail. All of it is at one instant. */
public final class MemoryJournal implements EventJournal {
    private final List<RecordedEvent> events = new ArrayList<>();
    private final Map<UUID, OpenStatement> open = new LinkedHashMap<>();
    private final List<NewOpenStatement> kept = new ArrayList<>();
    private final List<String> settled = new ArrayList<>();
    private final Instant now;
    private long ids;
    private @Nullable String failure;
    private @Nullable String refusal;
    private Consumer<String> onSound = name -> {};

    public MemoryJournal(Instant now) {
        this.now = now;
    }

    /** The next append is refused. */
    public void failNext(String reason) {
        failure = reason;
    }

    /** Everything is refused from now on, for this reason; null ends that. */
    public void refuseAll(@Nullable String reason) {
        refusal = reason;
    }

    /** Whoever is told of each sound that facts or statements name, in the moment in which they are saved. */
    public void onSound(Consumer<String> named) {
        onSound = named;
    }

    private void refuse() {
        if (refusal != null) {
            throw new JournalException(JournalException.Reason.FULL, refusal, null);
        }
    }

    /** How kept statements came to their end, each as "words: how". */
    public List<String> settled() {
        return List.copyOf(settled);
    }

    @Override
    public List<RecordedEvent> append(List<NewEvent> more) {
        refuse();
        if (failure != null) {
            String reason = failure;
            failure = null;
            throw new JournalException(JournalException.Reason.FULL, reason, null);
        }
        List<RecordedEvent> added = new ArrayList<>();
        for (NewEvent event : more) {
            added.add(new RecordedEvent(
                    new EventId(new UUID(0x7000L, ++ids)),
                    events.size() + added.size() + 1L,
                    now,
                    event.occurredAt(),
                    SpokenSentence.ZONE,
                    event.calf(),
                    event.event(),
                    event.provenance()));
        }
        events.addAll(added);
        added.stream()
                .map(event -> event.provenance().sound())
                .filter(Objects::nonNull)
                .distinct()
                .forEach(onSound);
        return List.copyOf(added);
    }

    @Override
    public List<RecordedEvent> importAll(List<RecordedEvent> imported) {
        List<RecordedEvent> added = plan(imported).orRefuse().added();
        events.addAll(added);
        return added;
    }

    @Override
    public ImportPlan plan(List<RecordedEvent> imported) {
        return ImportPlan.of(events, events.size(), imported);
    }

    @Override
    public List<RecordedEvent> all() {
        return List.copyOf(events);
    }

    @Override
    public EventSource asItIs() {
        return parts().asItIs();
    }

    @Override
    public List<CalfId> calves() {
        return parts().calves();
    }

    @Override
    public Set<CalfId> calvesRecorded(Instant from, Instant until) {
        return parts().calvesRecorded(from, until);
    }

    @Override
    public Set<CalfId> calvesNaming(Naming how, Map<String, Instant> since) {
        return parts().calvesNaming(how, since);
    }

    @Override
    public List<RecordedEvent> since(Instant day) {
        return parts().since(day);
    }

    @Override
    public List<RecordedEvent> ofCalves(Collection<CalfId> calves) {
        return parts().ofCalves(calves);
    }

    @Override
    public long last() {
        return parts().last();
    }

    @Override
    public List<RecordedEvent> ofBarn(Instant from) {
        return parts().ofBarn(from);
    }

    @Override
    public List<RecordedEvent> protocols() {
        return parts().protocols();
    }

    @Override
    public List<RecordedEvent> air(Instant from, Instant until) {
        return parts().air(from, until);
    }

    @Override
    public List<RecordedEvent> stored(Collection<String> batches) {
        return parts().stored(batches);
    }

    private ListedParts parts() {
        return new ListedParts(events);
    }

    @Override
    public Optional<RecordedEvent> find(EventId id) {
        return events.stream().filter(event -> event.id().equals(id)).findFirst();
    }

    @Override
    public OpenStatement keep(NewOpenStatement statement) {
        refuse();
        OpenStatement kept = new OpenStatement(new UUID(0x7001L, ++ids), now, statement);
        open.put(kept.id(), kept);
        this.kept.add(statement);
        onSound.accept(statement.sound());
        return kept;
    }

    @Override
    public void settle(UUID id, String how) {
        refuse();
        OpenStatement statement = open.remove(id);
        if (statement == null) {
            throw new IllegalArgumentException("No open statement has the id " + id);
        }
        settled.add(String.join(" ", statement.statement().words()) + ": " + how);
    }

    @Override
    public List<OpenStatement> openStatements() {
        return List.copyOf(open.values());
    }

    @Override
    public List<OpenStatement> openStatementsAt(Instant time) {
        return time.isBefore(now) ? List.of() : openStatements();
    }

    @Override
    public Set<String> named(Collection<String> sounds) {
        return Stream.concat(
                        kept.stream().map(NewOpenStatement::sound),
                        events.stream().map(event -> event.provenance().sound()).filter(Objects::nonNull))
                .filter(sounds::contains)
                .collect(Collectors.toSet());
    }

    @Override
    public void close() {
        open.clear();
    }
}
