package strawbed.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** Ears that share work, one to a processor. */
final class Crew {
    private static final int EARS = Runtime.getRuntime().availableProcessors();

    private final Supplier<Ear> ears;

    Crew(Supplier<Ear> ears) {
        this.ears = ears;
    }

    /** What comes of each piece of work, in the order of the pieces. */
    <T, R> List<R> map(List<T> pieces, BiFunction<Ear, T, R> work) throws InterruptedException {
        ExecutorService threads = Executors.newFixedThreadPool(EARS);
        try {
            List<Future<List<R>>> shares = new ArrayList<>();
            for (int share = 0; share < EARS; share++) {
                int first = share;
                shares.add(threads.submit(() -> share(pieces, first, work)));
            }
            List<R> all = new ArrayList<>();
            for (int i = 0; i < pieces.size(); i++) {
                all.add(shares.get(i % EARS).get().get(i / EARS));
            }
            return all;
        } catch (ExecutionException e) {
            throw new IllegalStateException("an ear failed", e.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    /** A recogniser belongs to the thread that made it, so each share makes its own. */
    private <T, R> List<R> share(List<T> pieces, int first, BiFunction<Ear, T, R> work) {
        List<R> done = new ArrayList<>();
        try (Ear ear = ears.get()) {
            for (int i = first; i < pieces.size(); i += EARS) {
                done.add(work.apply(ear, pieces.get(i)));
            }
        }
        return done;
    }
}
