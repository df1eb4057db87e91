package strawbed.app;

import java.io.PrintWriter;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import strawbed.calf.Herd;
import strawbed.journal.JournalException;

/**
 * The calves of a big record that are older than some days, read beside the first seconds of listening; until then they
 * cannot be called. Owned by one thread.
 */
final class OlderCalves {
    private final PrintWriter err;
    private CompletableFuture<Optional<Herd>> reading;

    private OlderCalves(CompletableFuture<Optional<Herd>> reading, PrintWriter err) {
        this.reading = reading;
        this.err = err;
    }

    /** Where all calves are known from the start. */
    static OlderCalves none(PrintWriter err) {
        return new OlderCalves(CompletableFuture.completedFuture(Optional.empty()), err);
    }

    /** @param err for what a person must be told if they cannot be read */
    static OlderCalves begin(Settings settings, PrintWriter err) {
        CompletableFuture<Optional<Herd>> reading = new CompletableFuture<>();
        // A thread that ends with the program: who stops listening at once need not wait for it.
        Thread reader = new Thread(() -> read(settings, reading), "older calves");
        reader.setDaemon(true);
        reader.start();
        return new OlderCalves(reading, err);
    }

    private static void read(Settings settings, CompletableFuture<Optional<Herd>> reading) {
        try {
            reading.complete(RecordReading.read(
                    settings,
                    record -> HerdReading.recent(record, settings.clock().instant(), Instant.MAX)));
        } catch (RuntimeException failure) {
            reading.completeExceptionally(failure);
        }
    }

    /** The herd with them, once, when they have been read; what was saved meanwhile may be missing in it. */
    Optional<Herd> arrived() {
        if (!reading.isDone()) {
            return Optional.empty();
        }
        CompletableFuture<Optional<Herd>> done = reading;
        reading = CompletableFuture.completedFuture(Optional.empty());
        try {
            return done.join();
        } catch (CompletionException failure) {
            if (!(failure.getCause() instanceof JournalException damage)) {
                throw failure;
            }
            err.println("Older calves cannot be called now. " + damage.getMessage());
            return Optional.empty();
        }
    }
}
