package strawbed.journal.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.journal.EventCodec;
import strawbed.journal.ImportPlan;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** The table of facts. */
final class EventTable {
    private static final String INSERT = """
            INSERT INTO event (sequence, id, recorded_at, occurred_at, zone, calf, type, version, json,
                               source, words, verdict, grammar, model, sound, operator)
            VALUES (:sequence, :id, :recorded_at, :occurred_at, :zone, :calf, :type, :version, :json,
                    :source, :words, :verdict, :grammar, :model, :sound, :operator)
            """;

    private static final int PORTION = 5000;

    private final ZoneId zone;
    private final Supplier<UUID> ids;
    private final EventCodec codec = new EventCodec();
    private final LastRead<Instant> instants = new LastRead<>();
    private final LastRead<ZoneId> zones = new LastRead<>();
    private final LastRead<List<String>> words = new LastRead<>();

    EventTable(ZoneId zone, Supplier<UUID> ids) {
        this.zone = zone;
        this.ids = ids;
    }

    /** Adds facts behind the last one; the caller holds a transaction. */
    List<RecordedEvent> append(Handle handle, List<NewEvent> events, Instant now) {
        if (events.isEmpty()) {
            return List.of();
        }
        long last = last(handle);
        List<RecordedEvent> recorded = new ArrayList<>();
        try (PreparedBatch batch = handle.prepareBatch(INSERT);
                Chain chain = new Chain(handle)) {
            for (NewEvent event : events) {
                last++;
                recorded.add(add(batch, chain, event, last, now));
            }
            batch.execute();
            chain.write();
        }
        return List.copyOf(recorded);
    }

    /** Adds facts of another record behind the last one; the caller holds a transaction. */
    List<RecordedEvent> importAll(Handle handle, List<RecordedEvent> imported) {
        List<RecordedEvent> added = plan(handle, imported).orRefuse().added();
        if (!added.isEmpty()) {
            try (PreparedBatch batch = handle.prepareBatch(INSERT);
                    Chain chain = new Chain(handle)) {
                // What waits to be written takes more memory than the facts themselves.
                for (int from = 0; from < added.size(); from += PORTION) {
                    added.subList(from, Math.min(added.size(), from + PORTION))
                            .forEach(event -> write(batch, chain, event, codec.json(event.event())));
                    batch.execute();
                    chain.write();
                }
            }
        }
        return added;
    }

    ImportPlan plan(Handle handle, List<RecordedEvent> imported) {
        return ImportPlan.of(withIdsOf(handle, imported), last(handle), imported);
    }

    /** The facts of this record that have the id of one of these. */
    List<RecordedEvent> withIdsOf(Handle handle, List<RecordedEvent> others) {
        return handle.createQuery("SELECT * FROM event WHERE id IN (SELECT value FROM json_each(:ids))")
                .bind(
                        "ids",
                        codec.json(others.stream()
                                .map(event -> event.id().toString())
                                .toList()))
                .map((row, context) -> read(row))
                .list();
    }

    List<RecordedEvent> all(Handle handle) {
        return handle.createQuery("SELECT * FROM event ORDER BY sequence")
                .map((row, context) -> read(row))
                .list();
    }

    Optional<RecordedEvent> find(Handle handle, EventId id) {
        return handle.createQuery("SELECT * FROM event WHERE id = :id")
                .bind("id", id.toString())
                .map((row, context) -> read(row))
                .findOne();
    }

    /** The sequence of the last fact, 0 where there is none. */
    long last(Handle handle) {
        return handle.createQuery("SELECT coalesce(max(sequence), 0) FROM event")
                .mapTo(Long.class)
                .one();
    }

    private RecordedEvent add(PreparedBatch batch, Chain chain, NewEvent added, long sequence, Instant now) {
        EventId id = new EventId(ids.get());
        String type = added.event().type();
        String json = codec.json(added.event());
        // Read back what is written, so that nothing is saved that cannot be read again.
        Event kept = codec.event(type, EventCodec.VERSION, json);
        RecordedEvent recorded =
                new RecordedEvent(id, sequence, now, added.occurredAt(), zone, added.calf(), kept, added.provenance());
        write(batch, chain, recorded, json);
        return recorded;
    }

    private void write(PreparedBatch batch, Chain chain, RecordedEvent recorded, String json) {
        CalfId calf = recorded.calf();
        Provenance how = recorded.provenance();
        EventRow row = new EventRow(
                recorded.id().toString(),
                recorded.recordedAt().toString(),
                recorded.occurredAt().toString(),
                recorded.zone().getId(),
                calf == null ? null : calf.toString(),
                recorded.event().type(),
                EventCodec.VERSION,
                json,
                how.source().word(),
                how.words().isEmpty() ? null : codec.json(how.words()),
                how.verdict(),
                how.grammar(),
                how.model(),
                how.sound(),
                how.operator());
        row.bindTo(batch.bind("sequence", recorded.sequence())).add();
        chain.add(recorded.sequence(), row);
    }

    /**
     * The fact that a row tells.
     *
     * @throws JournalException if it cannot be read; the message says which, and what to do
     */
    RecordedEvent read(ResultSet result) throws SQLException {
        long sequence = result.getLong("sequence");
        try {
            return decoded(sequence, EventRow.of(result));
        } catch (JournalException e) {
            throw new JournalException(
                    e.reason(), "Number " + sequence + " of the record was not read: " + e.getMessage(), e);
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new JournalException(
                    Reason.CORRUPT,
                    "Number " + sequence + " of the record was not read: " + e.getMessage()
                            + ". The record is damaged; restore it from a copy.",
                    e);
        }
    }

    /**
     * The fact of a row, at this place.
     *
     * @throws JournalException as {@link EventCodec}
     * @throws DateTimeException for a time or zone that cannot be read
     * @throws IllegalArgumentException for an id or a source that cannot be read
     */
    RecordedEvent decoded(long sequence, EventRow row) {
        return new RecordedEvent(
                EventId.of(row.id()),
                sequence,
                instants.of(row.recordedAt(), InstantText::parse),
                instants.of(row.occurredAt(), InstantText::parse),
                zones.of(row.zone(), ZoneId::of),
                row.calf() == null ? null : CalfId.of(row.calf()),
                codec.event(row.type(), row.version(), row.json()),
                new Provenance(
                        Term.of(Provenance.Source.class, row.source()),
                        words(row.words()),
                        row.verdict(),
                        row.grammar(),
                        row.model(),
                        row.sound(),
                        row.operator()));
    }

    private List<String> words(@Nullable String json) {
        return json == null ? List.of() : words.of(json, codec::words);
    }
}
