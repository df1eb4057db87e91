package strawbed.exchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Writes a file that was not there, whole or not at all, and its owner's alone: it tells of farm and people. */
public final class NewFile {
    /** What writes the content. */
    @FunctionalInterface
    public interface Content {
        void writeTo(Appendable out) throws IOException;
    }

    private NewFile() {}

    /**
     * Writes the file in UTF-8 and returns when it is on the disk.
     *
     * @throws ExchangeException if there is such a file already, or it cannot be written
     */
    public static void write(Path file, Content content) {
        Path whole = file.toAbsolutePath();
        if (Files.exists(whole, LinkOption.NOFOLLOW_LINKS)) {
            throw exists(file, null);
        }
        Path folder = Optional.ofNullable(whole.getParent()).orElse(whole);
        try {
            // A temporary file is for this user's eyes only, and so is what it becomes.
            Path part = Files.createTempFile(folder, "strawbed-", ".part");
            try {
                try (BufferedWriter out = Files.newBufferedWriter(part)) {
                    content.writeTo(out);
                }
                try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
                    written.force(true);
                }
                Files.move(part, whole);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (FileAlreadyExistsException failure) {
            throw exists(file, failure);
        } catch (IOException failure) {
            throw new ExchangeException(
                    file + " cannot be written: " + failure + ". Make room, or check who may write there.", failure);
        }
    }

    private static ExchangeException exists(Path file, @Nullable Exception cause) {
        return new ExchangeException(
                file + " is there already and was left as it is. Give another name, or move it away.", cause);
    }
}
