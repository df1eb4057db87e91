package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** Puts a backup in the place of a data folder's record. Immutable, safe for any thread. */
public final class RecordRestore {
    /** The notes last, so that they still tell when only a part of this was done. */
    private static final List<String> PARTS = List.of("-shm", "-wal", "", "-head", "-lost");

    /** What a person looks for first. */
    private static final List<String> TOLD = List.of("", "-wal", "-shm", "-head", "-lost");

    private final Path directory;
    private final RecordFile record;
    private final Clock clock;
    private final ZoneId zone;

    /**
     * @param directory the data folder; made if it is not there
     * @param clock dates what is replaced
     * @param zone the farm's zone
     */
    public RecordRestore(Path directory, Clock clock, ZoneId zone) {
        this.directory = directory;
        this.record = RecordFile.in(directory);
        this.clock = clock;
        this.zone = zone;
    }

    /**
     * What was done.
     *
     * @param health of the record that is there now
     * @param kept where the record that was there is now, or the first file of what was left of it, such as its log;
     *     null if there was nothing
     */
    public record Restored(RecordHealth health, @Nullable Path kept) {}

    /**
     * Looks through the backup, copies it into the data folder and puts it in the record's place. The record that was
     * there stays under a dated name.
     *
     * @param backup a record's file; it is only read
     * @param replace whether facts may be replaced that the backup lacks, or a record that cannot be read
     * @throws JournalException if the backup is not sound, if another program writes to the record
     *     ({@link Reason#BUSY}), if the record has facts that the backup lacks ({@link Reason#EXISTS}), or if the disk
     *     refuses; then the record is as it was
     */
    public Restored from(Path backup, boolean replace) {
        DataFolder.make(directory);
        RecordLock lock = RecordLock.take(directory, zone);
        try (Handle source = Jdbi.open(RecordFile.at(backup).connectReadOnly())) {
            refuseItself(backup);
            refuseUnsound(backup, RecordVerification.of(source, backup));
            compare(source, backup, replace);
            return copy(source, backup);
        } finally {
            lock.close();
        }
    }

    private Restored copy(Handle source, Path backup) {
        Instant now = clock.instant();
        Path fresh = record.beside("restoring", now);
        try {
            RecordHealth health = RecordCopy.write(source, fresh);
            refuseUnsound(backup, health);
            Path kept = put(fresh, isAnythingThere() ? record.beside("replaced", now) : null);
            note(health);
            new RecordBackup(directory).note(backup, health, clock);
            return new Restored(health, kept);
        } finally {
            remove(fresh);
        }
    }

    /** The notes of the record before moved away with it. */
    private void note(RecordHealth health) {
        if (health.head() == null) {
            return;
        }
        try (HeadNote note = HeadNote.of(record.path())) {
            note.write(new HeadNote.Head(health.last(), health.head()));
            note.force();
        } catch (IOException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "The record in " + directory + " was replaced, but no note of its newest fact could be written: "
                            + DataFolder.reasonOf(e) + ". Check the disk and your right to write there.",
                    e);
        }
    }

    /** A log that lost its file counts: SQLite would take it for the log of the restored file. */
    private boolean isAnythingThere() {
        return PARTS.stream().anyMatch(part -> Files.exists(record.path().resolveSibling("record.db" + part)));
    }

    private void remove(Path fresh) {
        try {
            Files.deleteIfExists(fresh);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private void refuseItself(Path backup) {
        try {
            if (Files.exists(record.path()) && Files.isSameFile(backup, record.path())) {
                throw new JournalException(
                        Reason.EXISTS, backup + " is the record itself. Give the file of a backup.", null);
            }
        } catch (IOException e) {
            throw failed(e);
        }
    }

    private static void refuseUnsound(Path backup, RecordHealth health) {
        if (!health.isSound()) {
            Finding first = health.findings().get(0);
            throw new JournalException(
                    Reason.CORRUPT,
                    "The backup " + backup + " is not sound and was not restored; "
                            + (health.findings().size() == 1
                                    ? "this was found: "
                                    : "the first of " + health.findings().size() + " findings: ")
                            + first.what() + " Take another backup.",
                    null);
        }
    }

    private void compare(Handle source, Path backup, boolean replace) {
        LackingFacts lacking;
        try {
            if (!EmptiedRecord.isThere(record.path())) {
                return;
            }
            lacking = LackingFacts.of(record, source);
        } catch (JournalException e) {
            if (replace) {
                return;
            }
            throw new JournalException(
                    Reason.EXISTS,
                    "Nothing was restored: the record in " + directory + " cannot be read, so nobody can tell what it"
                            + " has that the backup lacks (" + e.getMessage() + ") To put the backup in its place all"
                            + " the same, give --replace; the record is then kept under another name.",
                    e);
        }
        if (!lacking.isNone() && !replace) {
            throw new JournalException(
                    Reason.EXISTS,
                    "Nothing was restored: the record in " + directory + " has " + lacking.told(backup.toString())
                            + ". To put the backup in its place all the same, give --replace; the record is then kept"
                            + " under another name.",
                    null);
        }
        record.foldLog();
    }

    /** @param kept where the record that is there goes; null if there is none */
    private @Nullable Path put(Path fresh, @Nullable Path kept) {
        try {
            if (kept != null) {
                move(record.path(), kept);
            }
            try {
                Files.move(fresh, record.path(), StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException e) {
                if (kept != null) {
                    move(kept, record.path());
                }
                throw e;
            }
            return kept == null ? null : firstOf(kept);
        } catch (IOException e) {
            throw failed(e);
        }
    }

    /** The record itself, where it was there; a log that lost its record has its new name behind that of no file. */
    private static @Nullable Path firstOf(Path kept) {
        return TOLD.stream()
                .map(part -> kept.resolveSibling(kept.getFileName() + part))
                .filter(Files::exists)
                .findFirst()
                .orElse(null);
    }

    /** The log moves with its file: alone it would be taken for that of the next file with its name. */
    private static void move(Path from, Path to) throws IOException {
        for (String part : PARTS) {
            Path file = from.resolveSibling(from.getFileName() + part);
            if (Files.exists(file)) {
                Files.move(file, to.resolveSibling(to.getFileName() + part), StandardCopyOption.ATOMIC_MOVE);
            }
        }
    }

    private JournalException failed(IOException e) {
        return new JournalException(
                Reason.FAILED,
                "The record in " + directory + " was not replaced: " + DataFolder.reasonOf(e)
                        + ". Check the disk and your right to write there, then try again.",
                e);
    }
}
