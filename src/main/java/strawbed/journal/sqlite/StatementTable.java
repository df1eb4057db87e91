package strawbed.journal.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import strawbed.journal.EventCodec;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;

/** The tables of statements that wait for an answer, and of how they ended. */
final class StatementTable {
    private static final String OPEN =
            " FROM open_statement WHERE NOT EXISTS (SELECT 1 FROM statement_settled WHERE statement = id)";

    private final Supplier<UUID> ids;
    private final EventCodec codec = new EventCodec();

    StatementTable(Supplier<UUID> ids) {
        this.ids = ids;
    }

    OpenStatement keep(Handle handle, NewOpenStatement statement, Instant now) {
        UUID id = ids.get();
        insert(handle, id, statement, now);
        return new OpenStatement(id, now, statement);
    }

    private void insert(Handle handle, UUID id, NewOpenStatement statement, Instant now) {
        handle.createUpdate("""
                        INSERT INTO open_statement (id, recorded_at, began_at, length, verdict, words, reading, sound)
                        VALUES (:id, :recorded_at, :began_at, :length, :verdict, :words, :reading, :sound)
                        """)
                .bind("id", id.toString())
                .bind("recorded_at", now.toString())
                .bind("began_at", statement.from().toString())
                .bind("length", statement.length().toString())
                .bind("verdict", statement.verdict())
                .bind("words", codec.json(statement.words()))
                .bind("reading", statement.reading())
                .bind("sound", statement.sound())
                .execute();
    }

    /** Whether there was such an open statement. */
    boolean settle(Handle handle, UUID id, String how, Instant now) {
        int rows = handle.createUpdate(
                        "INSERT INTO statement_settled (statement, settled_at, how) SELECT id, :settled_at, :how" + OPEN
                                + " AND id = :id")
                .bind("settled_at", now.toString())
                .bind("how", how)
                .bind("id", id.toString())
                .execute();
        return rows == 1;
    }

    List<OpenStatement> open(Handle handle) {
        return handle.createQuery("SELECT *" + OPEN + " ORDER BY sequence")
                .map((row, context) -> read(row))
                .list();
    }

    /** All are read, as times have as many digits as they need and SQLite compares letters. */
    List<OpenStatement> openAt(Handle handle, Instant time) {
        return handle
                .createQuery("SELECT open_statement.*, settled_at FROM open_statement"
                        + " LEFT JOIN statement_settled ON statement = id ORDER BY sequence")
                .map((row, context) -> new Kept(read(row), row.getString("settled_at")))
                .stream()
                .filter(kept -> kept.isOpenAt(time))
                .map(Kept::statement)
                .toList();
    }

    /** A statement and when it was settled, if it was. */
    private record Kept(OpenStatement statement, @Nullable String settledAt) {
        boolean isOpenAt(Instant time) {
            return !statement.recordedAt().isAfter(time)
                    && (settledAt == null || Instant.parse(settledAt).isAfter(time));
        }
    }

    /** Those of these sounds that a fact or a statement names, settled ones too. */
    Set<String> named(Handle handle, Collection<String> sounds) {
        return handle.createQuery("SELECT value FROM json_each(:sounds) AS looked"
                        + " WHERE EXISTS (SELECT 1 FROM event WHERE sound = looked.value)"
                        + " OR EXISTS (SELECT 1 FROM open_statement WHERE sound = looked.value)")
                .bind("sounds", codec.json(List.copyOf(sounds)))
                .mapTo(String.class)
                .set();
    }

    /** Adds statements of another record, and how they ended, in this order; the caller holds a transaction. */
    void importAll(Handle handle, List<PastStatement> statements) {
        for (PastStatement past : statements) {
            OpenStatement kept = past.kept();
            insert(handle, kept.id(), kept.statement(), kept.recordedAt());
            if (past.end() != null) {
                handle.createUpdate("INSERT INTO statement_settled (statement, settled_at, how)"
                                + " VALUES (:id, :settled_at, :how)")
                        .bind("id", kept.id().toString())
                        .bind("settled_at", past.end().at().toString())
                        .bind("how", past.end().how())
                        .execute();
            }
        }
    }

    private OpenStatement read(ResultSet row) throws SQLException {
        String id = row.getString("id");
        try {
            return decoded(
                    id,
                    row.getString("recorded_at"),
                    row.getString("began_at"),
                    row.getString("length"),
                    row.getString("verdict"),
                    row.getString("words"),
                    row.getString("reading"),
                    row.getString("sound"));
        } catch (DateTimeException | IllegalArgumentException e) {
            throw new JournalException(
                    Reason.CORRUPT,
                    "The open statement " + id + " was not read: " + e.getMessage()
                            + ". The record is damaged; restore it from a copy.",
                    e);
        }
    }

    /**
     * The statement that these columns tell.
     *
     * @throws JournalException for words that are no list
     * @throws DateTimeException for a time that cannot be read
     * @throws IllegalArgumentException for an id that cannot be read
     */
    OpenStatement decoded(
            String id,
            String recordedAt,
            String beganAt,
            String length,
            String verdict,
            String words,
            @Nullable String reading,
            String sound) {
        return new OpenStatement(
                UUID.fromString(id),
                Instant.parse(recordedAt),
                new NewOpenStatement(
                        Instant.parse(beganAt), Duration.parse(length), verdict, codec.words(words), reading, sound));
    }
}
