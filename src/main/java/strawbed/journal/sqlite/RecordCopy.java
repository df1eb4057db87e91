package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/**
 * A copy of a record as it is at one moment, also while another program writes to it. It is its owner's alone, and it
 * has its name only once it is whole and on the disk.
 */
final class RecordCopy {
    private static final String NOT_MADE = "the copy was not made";

    private RecordCopy() {}

    /**
     * Copies a record, opens the copy and looks through it.
     *
     * @param from in no transaction
     * @param target must not exist; its folder must
     * @return what the look through the copy found: it has the faults of the record
     * @throws JournalException if the copy cannot be made; then there is none
     */
    static RecordHealth write(Handle from, Path target) {
        reserve(target);
        try {
            return fill(from, target);
        } catch (IOException e) {
            throw failed(target, e, remove(target, e));
        } catch (JdbiException e) {
            throw SqliteFailure.of(NOT_MADE, target, remove(target, e));
        } catch (RuntimeException e) {
            throw remove(target, e);
        }
    }

    /** The name is taken by an empty file first: to look whether it is free and take it later could hit another's. */
    private static void reserve(Path target) {
        try {
            Files.createFile(target, DataFolder.ownersFile(target));
        } catch (FileAlreadyExistsException e) {
            throw new JournalException(
                    Reason.EXISTS,
                    "There is a " + target + " already, and a copy never replaces a file. Give another name.",
                    e);
        } catch (NoSuchFileException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "The copy " + target + " cannot be made: its folder is not there. Make it, or give another name.",
                    e);
        } catch (IOException e) {
            throw failed(target, e, e);
        }
    }

    private static RecordHealth fill(Handle from, Path target) throws IOException {
        Path folder = target.toAbsolutePath().resolveSibling("");
        Path part = Files.createTempFile(folder, "record-", ".part", DataFolder.ownersFile(target));
        try {
            from.execute("VACUUM INTO ?", part.toString());
            RecordHealth health = verify(part);
            try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
                written.force(true);
            }
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            return health;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static RecordHealth verify(Path copy) {
        RecordFile file = RecordFile.at(copy);
        try (Handle handle = Jdbi.open(file.connectReadOnly())) {
            return RecordVerification.of(handle, copy);
        }
    }

    private static <E extends Exception> E remove(Path target, E reason) {
        try {
            Files.deleteIfExists(target);
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
        return reason;
    }

    private static JournalException failed(Path target, IOException e, Exception cause) {
        return new JournalException(
                e instanceof AccessDeniedException ? Reason.READ_ONLY : Reason.FAILED,
                "The copy " + target + " was not made: " + DataFolder.reasonOf(e)
                        + ". Check the disk and your right to write there, or give another name.",
                cause);
    }
}
