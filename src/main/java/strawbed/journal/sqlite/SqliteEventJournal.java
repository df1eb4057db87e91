package strawbed.journal.sqlite;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventJournal;
import strawbed.journal.EventSource;
import strawbed.journal.ImportPlan;
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
    private final EventParts parts;
    private final StatementTable statements;
    private final NewestFact newest;
    private boolean closed;

    private SqliteEventJournal(
            RecordFile file, @Nullable RecordLock lock, Clock clock, ZoneId zone, Supplier<UUID> ids) {
        this.file = file;
        this.lock = lock;
        this.handle = Jdbi.open(lock == null ? file.connectReadOnly() : file.connect(clock, ids));
        this.newest = new NewestFact(file.path());
        this.clock = clock;
        this.events = new EventTable(zone, ids);
        this.parts = new EventParts(events);
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
        RecordLock lock = RecordLock.take(directory, zone);
        try {
            SqliteEventJournal journal = new SqliteEventJournal(RecordFile.in(directory), lock, clock, zone, ids);
            try {
                journal.read(journal.newest::compareAndNote);
                return journal;
            } catch (RuntimeException e) {
                journal.close();
                throw e;
            }
        } catch (RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    /**
     * Whether a data folder has a record; false where none was begun yet.
     *
     * @throws JournalException if there was one, and its file was emptied or taken away
     */
    public static boolean isThere(Path directory) {
        return EmptiedRecord.isThere(RecordFile.in(directory).path());
    }

    /**
     * Opens the record of a data folder for reading only, also while another program writes to it.
     *
     * @throws JournalException if there is none ({@link Reason#NOT_A_RECORD}), and as {@link #open}
     */
    public static SqliteEventJournal openReadOnly(Path directory, Clock clock, ZoneId zone, Supplier<UUID> ids) {
        return new SqliteEventJournal(RecordFile.in(directory), null, clock, zone, ids);
    }

    /**
     * Looks through the file of a big record, which would take seconds when it is opened; a small one is looked through
     * then. Others may write meanwhile.
     *
     * @throws JournalException for {@link Reason#CORRUPT} if it is damaged, and as {@link #openReadOnly}
     */
    public static void lookThrough(Path directory) {
        RecordFile.in(directory).lookThrough();
    }

    @Override
    public List<RecordedEvent> append(List<NewEvent> added) {
        Instant now = clock.instant();
        String otherwise = added.size() == 1 ? "1 fact was not saved" : added.size() + " facts were not saved";
        List<RecordedEvent> saved = write(otherwise, open -> events.append(open, added, now));
        noteNewest(saved);
        return saved;
    }

    @Override
    public List<RecordedEvent> importAll(List<RecordedEvent> imported) {
        List<RecordedEvent> saved = write("nothing was imported", open -> events.importAll(open, imported));
        noteNewest(saved);
        return saved;
    }

    @Override
    public ImportPlan plan(List<RecordedEvent> imported) {
        return read(open -> events.plan(open, imported));
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
    public EventSource asItIs() {
        long last = last();
        return new EventSource() {
            @Override
            public long count() {
                return read(open -> parts.count(open, last));
            }

            @Override
            public void forEach(Consumer<RecordedEvent> reader) {
                read(open -> {
                    parts.forEach(open, last, reader);
                    return last;
                });
            }
        };
    }

    @Override
    public long last() {
        return read(events::last);
    }

    /** Whether the record is of the size above which a person would have to wait for what is read of it. */
    public boolean isBig() {
        return !file.isSmall();
    }

    @Override
    public List<CalfId> calves() {
        return read(parts::calves);
    }

    @Override
    public Set<CalfId> calvesRecorded(Instant from, Instant until) {
        return read(open -> parts.calvesRecorded(open, from, until));
    }

    @Override
    public Set<CalfId> calvesNaming(Naming how, Map<String, Instant> since) {
        return read(open -> parts.calvesNaming(open, how, since));
    }

    @Override
    public List<RecordedEvent> since(Instant day) {
        return read(open -> parts.since(open, day));
    }

    @Override
    public List<RecordedEvent> ofCalves(Collection<CalfId> calves) {
        return read(open -> parts.ofCalves(open, calves));
    }

    @Override
    public List<RecordedEvent> ofBarn(Instant from) {
        return read(open -> parts.ofBarn(open, from));
    }

    @Override
    public List<RecordedEvent> protocols() {
        return read(parts::protocols);
    }

    @Override
    public List<RecordedEvent> air(Instant from, Instant until) {
        return read(open -> parts.air(open, from, until));
    }

    @Override
    public List<RecordedEvent> stored(Collection<String> batches) {
        return read(open -> parts.stored(open, batches));
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
    public Set<String> named(Collection<String> sounds) {
        return read(open -> statements.named(open, sounds));
    }

    @Override
    public List<OpenStatement> openStatements() {
        return read(statements::open);
    }

    @Override
    public List<OpenStatement> openStatementsAt(Instant time) {
        return read(opened -> statements.openAt(opened, time));
    }

    /**
     * Looks through the whole record: the file, its tables, the chain of facts, whether each can be read, and whether
     * what the newest backup and the note of the newest fact name is still there. Takes about twice as long as
     * {@link #all}; others may write meanwhile.
     */
    public RecordHealth verify() {
        // Before the record is read: a recorder that runs meanwhile adds to both.
        HeadNote.Noted noted = HeadNote.of(file.path()).read();
        RecordHealth health = read(open -> RecordVerification.of(open, file.path()));
        List<Finding> findings = new ArrayList<>(health.findings());
        if (health.isChained()) {
            findings.addAll(read(noted::missingFrom));
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
            newest.close();
            if (lock != null) {
                lock.close();
            }
        }
    }

    /**
     * What a person must be told of a record that was opened for writing, mostly nothing: facts that were saved and are
     * gone, files that others may read, a note that the disk refuses at present. None of it stops the recording.
     */
    public synchronized List<Finding> findings() {
        return newest.findings();
    }

    private void noteNewest(List<RecordedEvent> saved) {
        if (!saved.isEmpty()) {
            read(newest::note);
        }
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
