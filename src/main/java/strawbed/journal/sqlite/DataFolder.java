package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** The folder that holds the record. A new one is its owner's alone; one that is there stays as it is. */
final class DataFolder {
    private DataFolder() {}

    static void make(Path directory) {
        if (Files.isDirectory(directory)) {
            return;
        }
        try {
            Files.createDirectories(directory, ownerOnly(directory));
        } catch (FileAlreadyExistsException e) {
            throw new JournalException(
                    Reason.NOT_A_RECORD,
                    "The data folder " + directory + " cannot be made: " + e.getFile()
                            + " is a file. Choose another data folder.",
                    e);
        } catch (AccessDeniedException e) {
            throw new JournalException(
                    Reason.READ_ONLY,
                    "The data folder " + directory
                            + " cannot be made: you may not write there. Choose another data folder.",
                    e);
        } catch (IOException e) {
            throw new JournalException(
                    Reason.FAILED,
                    "The data folder " + directory + " cannot be made: " + reasonOf(e)
                            + ". Choose another data folder.",
                    e);
        }
    }

    /** What the system says about a file, without the file's name. */
    static String reasonOf(IOException e) {
        String reason = e instanceof FileSystemException file ? file.getReason() : e.getMessage();
        return reason == null ? e.getClass().getSimpleName() : reason;
    }

    /** Rights for a new file that only its owner may read, where the disk knows rights. */
    static FileAttribute<?>[] ownersFile(Path file) {
        return rights(file, "rw-------");
    }

    private static FileAttribute<?>[] ownerOnly(Path directory) {
        return rights(directory, "rwx------");
    }

    private static FileAttribute<?>[] rights(Path place, String rights) {
        if (!place.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return new FileAttribute<?>[0];
        }
        return new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))};
    }
}
