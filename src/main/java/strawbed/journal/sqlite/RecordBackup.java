package strawbed.journal.sqlite;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Backups of the record: one file each, which holds the facts and the open statements, and no sounds. Immutable, safe
 * for any thread.
 */
public final class RecordBackup {
    private final RecordFile record;

    /** @param directory the data folder */
    public RecordBackup(Path directory) {
        this.record = RecordFile.in(directory);
    }

    /**
     * Copies the record as it is at this moment, also while a recorder writes, and looks through the copy. A sound copy
     * is noted in the data folder as its newest backup; one with findings is kept and not noted.
     *
     * @param target must not exist; will be its owner's alone
     * @throws strawbed.journal.JournalException if there is no record, or if the copy could not be made; then there is
     *     none
     */
    public RecordHealth write(Path target, Clock clock) {
        RecordHealth health;
        try (Handle handle = Jdbi.open(record.connectReadOnly())) {
            health = RecordCopy.write(handle, target);
        }
        if (health.isSound()) {
            note(target, health, clock);
        }
        return health;
    }

    /** The newest sound backup that was made of this data folder's record, or that it was restored from. */
    public Optional<Backup> newest() {
        return BackupNotes.of(record.path()).newest();
    }

    /** Remembers what a backup holds. */
    void note(Path file, RecordHealth health, Clock clock) {
        BackupNotes.of(record.path())
                .add(new Backup(
                        clock.instant(),
                        file.toAbsolutePath().normalize().toString(),
                        health.facts(),
                        health.last(),
                        health.head()));
    }
}
