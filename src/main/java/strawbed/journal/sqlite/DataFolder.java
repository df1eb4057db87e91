package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** The folder that holds the record. A new one is its owner's alone; one that is there stays as it is. */
final class DataFolder {
    private static final List<String> OWNERS = List.of(
            "record.db",
            "record.db-wal",
            "record.db-shm",
            "record.db-head",
            "record.db-lost",
            "record.lock",
            "backups.jsonl");

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

    /** Makes an empty file that only its owner may read, where there is none. */
    static void makeOwners(Path file) {
        try {
            Files.createFile(file, ownersFile(file));
        } catch (FileAlreadyExistsException e) {
            // Its rights are looked at when the record is open: what is there may be another's.
            return;
        } catch (IOException e) {
            throw SqliteFailure.notMade(file, e);
        }
    }

    /**
     * Takes from others on this computer the right to read or write what the record consists of, as an older program or
     * another tool may have given it.
     *
     * @return what could not be changed, such as another's file
     */
    static List<Finding> keepToOwner(Path record) {
        List<Finding> findings = new ArrayList<>();
        for (String name : OWNERS) {
            Path file = record.resolveSibling(name);
            try {
                PosixFileAttributeView rights = Files.getFileAttributeView(file, PosixFileAttributeView.class);
                if (rights != null && Files.exists(file)) {
                    keepToOwner(rights);
                }
            } catch (IOException e) {
                findings.add(new Finding(
                        null,
                        "Others on this computer may be able to read " + file + ": its rights could not be changed ("
                                + reasonOf(e) + ").",
                        "Keep the record in a folder of your own."));
            }
        }
        return findings;
    }

    private static void keepToOwner(PosixFileAttributeView file) throws IOException {
        Set<PosixFilePermission> rights = EnumSet.copyOf(file.readAttributes().permissions());
        if (rights.removeIf(right -> !right.name().startsWith("OWNER"))) {
            file.setPermissions(rights);
        }
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
