package strawbed.print;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * A right that one part of one program has at a time, by a lock on a file. The system gives it back when the program
 * ends, however it ends.
 */
final class FolderLock implements AutoCloseable {
    /** The system's lock is one for the whole program; this tells its threads apart. */
    private static final Map<Path, Semaphore> HERE = new ConcurrentHashMap<>();

    private static final long LOOK_AGAIN_MILLIS = 20;

    private final Semaphore here;
    private final FileChannel channel;

    private FolderLock(Semaphore here, FileChannel channel) {
        this.here = here;
        this.channel = channel;
    }

    /**
     * Takes the right, or gives up after some time.
     *
     * @return empty if another program or thread had it all the time
     */
    static Optional<FolderLock> take(Path file, long millis) throws IOException {
        Semaphore here = HERE.computeIfAbsent(file.toAbsolutePath().normalize(), key -> new Semaphore(1));
        try {
            if (!here.tryAcquire(millis, TimeUnit.MILLISECONDS)) {
                return Optional.empty();
            }
            Optional<FileChannel> locked = Optional.empty();
            try {
                locked = locked(file, millis);
            } finally {
                if (locked.isEmpty()) {
                    here.release();
                }
            }
            return locked.map(channel -> new FolderLock(here, channel));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private static Optional<FileChannel> locked(Path file, long millis) throws IOException, InterruptedException {
        FileChannel channel = FileChannel.open(file, QueueFile.openForOwner(), QueueFile.rights(file));
        boolean isOurs = false;
        try {
            for (long waited = 0; !isOurs && waited <= millis; waited += LOOK_AGAIN_MILLIS) {
                FileLock lock = channel.tryLock();
                isOurs = lock != null;
                if (!isOurs) {
                    TimeUnit.MILLISECONDS.sleep(LOOK_AGAIN_MILLIS);
                }
            }
        } finally {
            if (!isOurs) {
                channel.close();
            }
        }
        return isOurs ? Optional.of(channel) : Optional.empty();
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            here.release();
        }
    }
}
