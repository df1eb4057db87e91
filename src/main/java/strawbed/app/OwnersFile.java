package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Files and folders that only their owner may read, where the disk knows rights. */
final class OwnersFile {
    private OwnersFile() {}

    /** Writes a file whole or not at all; one that was there is replaced. */
    static void write(Path file, byte[] bytes) throws IOException {
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            // Such as the terminal: there is nothing to replace.
            Files.write(file, bytes);
            return;
        }
        Path whole = file.toAbsolutePath();
        // A temporary file is its owner's alone.
        Path part = Files.createTempFile(folderOf(whole), "strawbed-", ".part");
        try {
            Files.write(part, bytes);
            Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Makes a folder and those above it, where they are missing. */
    static void makeFolder(Path folder) throws IOException {
        boolean hasRights = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        FileAttribute<?>[] rights = hasRights
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
                }
                : new FileAttribute<?>[0];
        Files.createDirectories(folder, rights);
    }

    /** Takes from others what rights they have to a file or folder of ours. */
    static void keepToOwner(Path place) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(place, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        Set<PosixFilePermission> rights = EnumSet.copyOf(view.readAttributes().permissions());
        if (rights.removeIf(right -> !right.name().startsWith("OWNER"))) {
            view.setPermissions(rights);
        }
    }

    private static Path folderOf(Path whole) {
        @Nullable Path folder = whole.getParent();
        return folder == null ? whole : folder;
    }
}
