package strawbed.journal.sqlite;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;

/**
 * The record in the SQLite file {@code record.db} of a data folder.
 *
 * <p>One connection, kept open; a saved fact is on the disk (write-ahead log, full sync) before the call returns. Safe
 * for any thread; calls wait for each other.
 */
public final class SqliteEventJournal implements EventJournal {
    private final RecordFile file;
    private final @Nullable RecordLock lock;
    private final Handle handle;
    private final Clock clock;
    private final EventTable events;
    private final StatementTable statements;
    private boolean closed;

    private SqliteEventJournal(
            RecordFile file, @Nullable RecordLock lock, Clock clock, ZoneId zone, Supplier<UUID> ids) {
        this.file = file;
        this.lock = lock;
        this.handle = Jdbi.open(lock == null ? file.connectReadOnly() : file.connect(clock, ids));
        this.clock = clock;
        this.events = new EventTable(zone, ids);
        this.statements = new StatementTable(ids);
    }

    /**
     * Opens the record of a data folder for writing, and makes folder and record where they are missing.
     *
     * @param clock tells when a fact is saved
     * @param zone the farm's zone
     * @param ids gives each fact and statement its id
     * @throws JournalException if another program writes to this record ({@link Reason#BUSY}), if a newer program made
     *     it, if it is damaged or no record, or if folder or file cannot be written
     */
    public static SqliteEventJournal open(Path directory, Clock clock, ZoneId zone, Supplier<UUID> ids) {
        DataFolder.make(directory);
        RecordLock lock = RecordLock.take(directory);
        try {
            return new SqliteEventJournal(RecordFile.in(directory), lock, clock, zone, ids);
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /**
     * Opens the record of a data folder for reading only, also while another program writes to it.
     *
     * @throws JournalException if there is none ({@link Reason#NOT_A_RECORD}), and as {@link #open}
     */
    public static SqliteEventJournal openReadOnly(Path directory, Clock clock, ZoneId zone, Supplier<UUID> ids) {
        return new SqliteEventJournal(RecordFile.in(directory), null, clock, zone, ids);
    }

    @Override
    public List<RecordedEvent> append(List<NewEvent> added) {
        Instant now = clock.instant();
        String otherwise = added.size() == 1 ? "1 fact was not saved" : added.size() + " facts were not saved";
        return write(otherwise, open -> events.append(open, added, now));
    }

    @Override
    public List<RecordedEvent> importAll(List<RecordedEvent> imported) {
        return write("nothing was imported", open -> events.importAll(open, imported));
    }

    /** Saves statements of another record with their ids, times and ends, all or none. */
    void importStatements(List<PastStatement> imported) {
        write("no statement was imported", open -> {
            statements.importAll(open, imported);
            return imported.size();
        });
    }

    @Override
    public List<RecordedEvent> all() {
        return read(events::all);
    }

    @Override
    public Optional<RecordedEvent> find(EventId id) {
        return read(open -> events.find(open, id));
    }

    @Override
    public OpenStatement keep(NewOpenStatement statement) {
        Instant now = clock.instant();
        return write("a statement was not kept", open -> statements.keep(open, statement, now));
    }

    @Override
    public void settle(UUID id, String how) {
        Instant now = clock.instant();
        boolean settled = write("a statement was not settled", open -> statements.settle(open, id, how, now));
        if (!settled) {
            throw new IllegalArgumentException("no statement with the id " + id + " is open");
        }
    }

    @Override
    public List<OpenStatement> openStatements() {
        return read(statements::open);
    }

    /**
     * Looks through the whole record: the file, its tables, the chain of facts, whether each can be read, and whether
     * what the newest backup noted is still there. Takes about twice as long as {@link #all}; others may write
     * meanwhile.
     */
    public RecordHealth verify() {
        RecordHealth health = read(open -> RecordVerification.of(open, file.path()));
        List<Finding> findings = new ArrayList<>(health.findings());
        if (health.isChained()) {
            BackupNotes.of(file.path())
                    .newest()
                    .flatMap(backup -> read(open -> backup.missingFrom(open)))
                    .ifPresent(findings::add);
        }
        return new RecordHealth(health.facts(), health.isChained(), health.last(), health.head(), findings);
    }

    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        closed = true;
        try {
            handle.close();
        } catch (JdbiException e) {
            throw file.failure("the record was not closed", e);
        } finally {
            if (lock != null) {
                lock.close();
            }
        }
    }

    /** Lets the file grow to this many pages of 4096 bytes only, as a full disk would; for tests. */
    void limitPages(int pages) {
        read(open -> open.createQuery("PRAGMA max_page_count = " + pages)
                .mapTo(Long.class)
                .one());
    }

    private <T> T write(String otherwise, Function<Handle, T> work) {
        if (lock == null) {
            throw new JournalException(
                    Reason.READ_ONLY,
                    otherwise + ": the record " + file + " was opened for reading only. Open it for writing first.",
                    null);
        }
        return run(otherwise, open -> inTransaction(open, work));
    }

    /**
     * In SQLite's own words: when SQLite refuses to begin, or ends a transaction by itself as on a full disk, the driver
     * still believes in it, and all that follows would wait in it for a commit that never comes.
     */
    private static <T> T inTransaction(Handle open, Function<Handle, T> work) {
        open.execute("BEGIN IMMEDIATE");
        try {
            T result = work.apply(open);
            open.execute("COMMIT");
            return result;
        } catch (RuntimeException e) {
            rollBack(open, e);
            throw e;
        }
    }

    private static void rollBack(Handle open, RuntimeException reason) {
        try {
            open.execute("ROLLBACK");
        } catch (JdbiException e) {
            reason.addSuppressed(e);
        }
    }

    private <T> T read(Function<Handle, T> work) {
        return run("the record was not read", work);
    }

    private synchronized <T> T run(String otherwise, Function<Handle, T> work) {
        if (closed) {
            throw new IllegalStateException("the record " + file + " is closed");
        }
        try {
            return work.apply(handle);
        } catch (JdbiException e) {
            throw file.failure(otherwise, e);
        }
    }
}
