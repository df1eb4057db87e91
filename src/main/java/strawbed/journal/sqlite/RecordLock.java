package strawbed.journal.sqlite;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/**
 * The right to write to a record, held by one program at a time. The system gives it back when the program ends,
 * however it ends; the file that stays behind means nothing.
 */
final class RecordLock implements AutoCloseable {
    /** Far behind the text, so that others can read the text on systems where a lock forbids reading. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    /**
     * Held by this program. On POSIX, closing any channel to a file drops the program's locks on it, so a second one
     * must not even be opened.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private static final DateTimeFormatter STARTED = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    private final Path file;
    private final FileChannel channel;

    private RecordLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the lock of a data folder.
     *
     * @param directory must exist
     * @param zone that the time of this start is written in
     * @throws JournalException if another program, or this one, holds it; the message says who
     */
    static RecordLock take(Path directory, ZoneId zone) {
        Path file;
        try {
            file = directory.toRealPath().resolve("record.lock");
        } catch (IOException e) {
            throw failed(directory, e);
        }
        if (!HELD.add(file)) {
            throw busy(directory, "this program itself");
        }
        try {
            return new RecordLock(file, lockedChannel(directory, file, zone));
        } catch (RuntimeException e) {
            HELD.remove(file);
            throw e;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw failed(file, e);
        } finally {
            HELD.remove(file);
        }
    }

    private static FileChannel lockedChannel(Path directory, Path file, ZoneId zone) {
        try {
            FileChannel channel = FileChannel.open(
                    file,
                    Set.of(StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE),
                    DataFolder.ownersFile(file));
            try {
                if (channel.tryLock(LOCKED_BYTE, 1, false) == null) {
                    throw busy(directory, readHolder(channel));
                }
                writeHolder(channel, zone);
                return channel;
            } catch (IOException | RuntimeException e) {
                channel.close();
                throw e;
            }
        } catch (IOException e) {
            throw Files.isWritable(directory) && !(e instanceof AccessDeniedException)
                    ? failed(directory, e)
                    : readOnly(directory, e);
        }
    }

    private static void writeHolder(FileChannel channel, ZoneId zone) throws IOException {
        ProcessHandle self = ProcessHandle.current();
        String started = self.info()
                .startInstant()
                .map(start -> STARTED.format(start.atZone(zone)))
                .orElse("an unknown time");
        ByteBuffer text = StandardCharsets.UTF_8.encode("process " + self.pid() + ", started at " + started + "\n");
        channel.truncate(0);
        while (text.hasRemaining()) {
            channel.write(text);
        }
    }

    private static String readHolder(FileChannel channel) throws IOException {
        String text = new String(Channels.newInputStream(channel).readNBytes(200), StandardCharsets.UTF_8).strip();
        return text.isEmpty() ? "a program that has not yet said its name" : text;
    }

    private static JournalException busy(Path directory, String holder) {
        return new JournalException(
                Reason.BUSY,
                "The record in " + directory + " is already open for writing by " + holder
                        + ". Close that one first, or choose another data folder.",
                null);
    }

    private static JournalException readOnly(Path directory, IOException e) {
        return new JournalException(
                Reason.READ_ONLY,
                "The record in " + directory + " may only be read: " + DataFolder.reasonOf(e)
                        + ". Ask for the right to write there, or choose another data folder.",
                e);
    }

    private static JournalException failed(Path place, IOException e) {
        return new JournalException(
                Reason.FAILED,
                "The record in " + place + " cannot be locked: " + DataFolder.reasonOf(e)
                        + ". Check the disk, then try again.",
                e);
    }
}
