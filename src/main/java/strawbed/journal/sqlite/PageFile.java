package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/**
 * A SQLite file and its write-ahead log as bytes; both are only read, and SQLite never sees them. Owned by one thread,
 * which closes it.
 *
 * <p>Source of the format here and in the classes that read pages, cells and frames: SQLite, Database File Format, and
 * Write-Ahead Log File Format in the same document; from memory, checked in tests against files that SQLite wrote.
 */
final class PageFile implements AutoCloseable {
    static final int HEADER = 100;

    private final Path path;
    private final FileChannel file;
    private final @Nullable FileChannel log;
    private final List<Stamp> before;

    /** Places of the file that the disk would not give. */
    private final TreeSet<Long> refused = new TreeSet<>();

    private PageFile(Path path, FileChannel file, @Nullable FileChannel log) throws IOException {
        this.path = path;
        this.file = file;
        this.log = log;
        this.before = stamps();
    }

    /** What shows that somebody wrote to a file. */
    private record Stamp(long size, FileTime changed) {}

    /**
     * Opens a file for reading, with its log if there is one.
     *
     * @throws JournalException for {@link Reason#NOT_A_RECORD} if there is no such file
     */
    static PageFile open(Path path) {
        if (!Files.isRegularFile(path)) {
            throw new JournalException(
                    Reason.NOT_A_RECORD,
                    "There is no file " + path + ". Give the file of the damaged record; it is named record.db.",
                    null);
        }
        try {
            FileChannel file = FileChannel.open(path, StandardOpenOption.READ);
            FileChannel log = null;
            try {
                Path beside = log(path);
                log = Files.isRegularFile(beside) ? FileChannel.open(beside, StandardOpenOption.READ) : null;
                return new PageFile(path, file, log);
            } catch (IOException e) {
                file.close();
                if (log != null) {
                    log.close();
                }
                throw e;
            }
        } catch (IOException e) {
            throw failed(path, e);
        }
    }

    private static Path log(Path path) {
        return path.resolveSibling(path.getFileName() + "-wal");
    }

    long length() {
        return before.get(0).size();
    }

    /** The file's first bytes; fewer where it is shorter. */
    byte[] header() {
        return read(file, 0, HEADER);
    }

    boolean hasLog() {
        return log != null;
    }

    long logLength() {
        return log == null ? 0 : before.get(1).size();
    }

    /** Bytes of the log; fewer where it ends. */
    byte[] log(long at, int length) {
        return log == null ? new byte[0] : read(log, at, length);
    }

    /**
     * One way to see the pages.
     *
     * @param frames for pages that the log has, where their bytes begin in it
     */
    Pages pages(PageForm form, Map<Integer, Long> frames) {
        return new Pages(this, form, frames);
    }

    /** Bytes of the file; fewer where it ends or the disk refuses. */
    byte[] bytes(long at, int length) {
        return read(file, at, length);
    }

    /** How many reads the disk refused; what it would not give counts as damaged. */
    int refused() {
        return refused.size();
    }

    /**
     * Makes sure that what was read is of one moment.
     *
     * @throws JournalException for {@link Reason#BUSY} if another program wrote meanwhile
     */
    void refuseIfChanged() {
        try {
            if (!stamps().equals(before)) {
                throw new JournalException(
                        Reason.BUSY,
                        "Nothing was rescued: another program wrote to " + path
                                + " while it was read. Close that one, then try again.",
                        null);
            }
        } catch (IOException e) {
            throw failed(path, e);
        }
    }

    private List<Stamp> stamps() throws IOException {
        Stamp own = stamp(path);
        return log == null ? List.of(own) : List.of(own, stamp(log(path)));
    }

    private static Stamp stamp(Path path) throws IOException {
        return new Stamp(Files.size(path), Files.getLastModifiedTime(path));
    }

    private byte[] read(FileChannel from, long at, int length) {
        ByteBuffer buffer = ByteBuffer.allocate(length);
        try {
            while (buffer.hasRemaining() && from.read(buffer, at + buffer.position()) >= 0) {
                // A channel may give less than was asked for.
            }
        } catch (IOException e) {
            refused.add(at);
        }
        byte[] bytes = new byte[buffer.position()];
        buffer.flip().get(bytes);
        return bytes;
    }

    @Override
    public void close() {
        try {
            try {
                file.close();
            } finally {
                if (log != null) {
                    log.close();
                }
            }
        } catch (IOException e) {
            throw failed(path, e);
        }
    }

    private static JournalException failed(Path path, IOException e) {
        return new JournalException(
                Reason.FAILED,
                "Nothing was rescued: " + path + " cannot be read (" + DataFolder.reasonOf(e)
                        + "). Copy it to a sound disk, and its log too, then rescue the copy.",
                e);
    }
}
