package strawbed.print;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files of the queue: whole or not at all, on the disk, and for their owner alone. */
final class QueueFile {
    static final String PART = ".part";

    private QueueFile() {}

    static void makeFolder(Path folder) throws IOException {
        Files.createDirectories(folder, rights(folder, "rwx------"));
    }

    /** Writes a file so that it is there whole, even after a power cut, or not at all. */
    static void write(Path file, byte[] bytes) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + PART);
        Files.deleteIfExists(part);
        try {
            try (FileChannel channel = FileChannel.open(part, openForOwner(), rights(part))) {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    static Set<OpenOption> openForOwner() {
        return Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    static FileAttribute<?>[] rights(Path file) {
        return rights(file, "rw-------");
    }

    private static FileAttribute<?>[] rights(Path place, String rights) {
        return place.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))}
                : new FileAttribute<?>[0];
    }
}
