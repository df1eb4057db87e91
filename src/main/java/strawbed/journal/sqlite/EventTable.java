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
                               source, words, verdict, grammar, model, sound)
            VALUES (:sequence, :id, :recorded_at, :occurred_at, :zone, :calf, :type, :version, :json,
                    :source, :words, :verdict, :grammar, :model, :sound)
            """;

    private final ZoneId zone;
    private final Supplier<UUID> ids;
    private final EventCodec codec = new EventCodec();

    EventTable(ZoneId zone, Supplier<UUID> ids) {
        this.zone = zone;
        this.ids = ids;
    }

    /** Adds facts behind the last one; the caller holds a transaction. */
    List<RecordedEvent> append(Handle handle, List<NewEvent> events, Instant now) {
        if (events.isEmpty()) {
            return List.of();
        }
        long last = handle.createQuery("SELECT coalesce(max(sequence), 0) FROM event")
                .mapTo(Long.class)
                .one();
        List<RecordedEvent> recorded = new ArrayList<>();
        try (PreparedBatch batch = handle.prepareBatch(INSERT)) {
            for (NewEvent event : events) {
                last++;
                recorded.add(add(batch, event, last, now));
            }
            batch.execute();
        }
        return List.copyOf(recorded);
    }

    /** Adds facts of another record behind the last one; the caller holds a transaction. */
    List<RecordedEvent> importAll(Handle handle, List<RecordedEvent> imported) {
        List<RecordedEvent> added =
                ImportPlan.of(all(handle), imported).orRefuse().added();
        if (!added.isEmpty()) {
            try (PreparedBatch batch = handle.prepareBatch(INSERT)) {
                added.forEach(event -> write(batch, event, codec.json(event.event())));
                batch.execute();
            }
        }
        return added;
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

    private RecordedEvent add(PreparedBatch batch, NewEvent added, long sequence, Instant now) {
        EventId id = new EventId(ids.get());
        String type = added.event().type();
        String json = codec.json(added.event());
        // Read back what is written, so that nothing is saved that cannot be read again.
        Event kept = codec.event(type, EventCodec.VERSION, json);
        RecordedEvent recorded =
                new RecordedEvent(id, sequence, now, added.occurredAt(), zone, added.calf(), kept, added.provenance());
        write(batch, recorded, json);
        return recorded;
    }

    private void write(PreparedBatch batch, RecordedEvent recorded, String json) {
        CalfId calf = recorded.calf();
        Provenance how = recorded.provenance();
        batch.bind("sequence", recorded.sequence())
                .bind("id", recorded.id().toString())
                .bind("recorded_at", recorded.recordedAt().toString())
                .bind("occurred_at", recorded.occurredAt().toString())
                .bind("zone", recorded.zone().getId())
                .bind("calf", calf == null ? null : calf.toString())
                .bind("type", recorded.event().type())
                .bind("version", EventCodec.VERSION)
                .bind("json", json)
                .bind("source", how.source().word())
                .bind("words", how.words().isEmpty() ? null : codec.json(how.words()))
                .bind("verdict", how.verdict())
                .bind("grammar", how.grammar())
                .bind("model", how.model())
                .bind("sound", how.sound())
                .add();
    }

    private RecordedEvent read(ResultSet row) throws SQLException {
        long sequence = row.getLong("sequence");
        try {
            String calf = row.getString("calf");
            return new RecordedEvent(
                    EventId.of(row.getString("id")),
                    sequence,
                    Instant.parse(row.getString("recorded_at")),
                    Instant.parse(row.getString("occurred_at")),
                    ZoneId.of(row.getString("zone")),
                    calf == null ? null : CalfId.of(calf),
                    codec.event(row.getString("type"), row.getInt("version"), row.getString("json")),
                    new Provenance(
                            Term.of(Provenance.Source.class, row.getString("source")),
                            words(row.getString("words")),
                            row.getString("verdict"),
                            row.getString("grammar"),
                            row.getString("model"),
                            row.getString("sound")));
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

    private List<String> words(@Nullable String json) {
        return json == null ? List.of() : codec.words(json);
    }
}
