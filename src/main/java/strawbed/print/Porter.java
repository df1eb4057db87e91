package strawbed.print;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Carries waiting jobs to their printers, on threads of its own, as a dead print server may hold one for ever. A hand
 * over that was not answered in time is not begun again while it hangs, or a page would come twice.
 *
 * <p>One porter of one program carries at a time, by a lock. Safe for any thread; one carries, others wait.
 */
public final class Porter implements AutoCloseable {
    private static final long LOCK_MILLIS = 3_000;

    private final PrintQueue queue;
    private final Printers printers;
    private final Clock clock;
    private final Duration patience;
    private final Map<Integer, FutureTask<@Nullable Void>> hanging = new HashMap<>();
    private final Set<Integer> notNoted = new HashSet<>();
    private @Nullable FolderLock right;

    /** A job before and after it was tried. */
    public record Tried(PrintJob before, PrintJob after) {
        /** Whether the print system took it. */
        public boolean isHandedOver() {
            return after.state() == JobState.HANDED_OVER;
        }
    }

    /** @param patience how long a printer may take to answer */
    public Porter(PrintQueue queue, Printers printers, Clock clock, Duration patience) {
        this.queue = queue;
        this.printers = printers;
        this.clock = clock;
        this.patience = patience;
    }

    /** The printers of the computer. */
    public List<Printers.Known> printers() {
        FutureTask<List<Printers.Known>> asked = begun(printers::all);
        try {
            return asked.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            throw new PrintException("The computer's print service does not answer. Start it again.", e);
        } catch (ExecutionException e) {
            throw new PrintException("The computer's printers cannot be listed: " + e.getCause() + ".", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new PrintException("The computer's printers were not listed, as the program ends.", e);
        }
    }

    /** Tries this job now. */
    public Tried carry(PrintJob job) {
        List<Tried> tried = carry(one -> one.number() == job.number());
        return tried.isEmpty() ? new Tried(job, job) : tried.get(0);
    }

    /** Tries all that wait, now. */
    public List<Tried> carryAll() {
        return carry(job -> true);
    }

    /** Tries those that have waited long enough since their last try. */
    public List<Tried> carryDue() {
        return carry(job -> job.isDue(clock.instant()));
    }

    private synchronized List<Tried> carry(Predicate<PrintJob> wanted) {
        List<PrintJob> jobs = queue.contents().waiting().stream().filter(wanted).toList();
        if (jobs.isEmpty()) {
            return List.of();
        }
        if (!takeRight()) {
            PrintFault why = PrintFault.of(PrintFault.Kind.BUSY, "Another Strawbed is handing pages over just now.");
            return jobs.stream()
                    .map(job -> new Tried(job, job.failed(clock.instant(), why)))
                    .toList();
        }
        try {
            List<Tried> tried = new ArrayList<>();
            Set<String> silent = new HashSet<>();
            for (PrintJob before : jobs) {
                tried.add(new Tried(before, carry(before, silent)));
            }
            return tried;
        } finally {
            giveRight();
        }
    }

    /** @param silent printers that did not answer in this round: each is waited for once */
    private PrintJob carry(PrintJob job, Set<String> silent) {
        // Under the lock, as another program may have carried it meanwhile.
        Optional<PrintJob> now = queue.contents().waiting().stream()
                .filter(one -> one.number() == job.number())
                .findFirst();
        if (now.isEmpty()) {
            return queue.contents().jobs().stream()
                    .filter(one -> one.number() == job.number())
                    .findFirst()
                    .orElse(job.dropped());
        }
        Optional<PrintFault> fault = notNoted.contains(job.number()) ? Optional.empty() : handOver(now.get(), silent);
        return fault.map(why -> failed(now.get(), why)).orElseGet(() -> taken(now.get()));
    }

    private Optional<PrintFault> handOver(PrintJob job, Set<String> silent) {
        Path document = queue.document(job.number());
        if (!Files.exists(document)) {
            return Optional.of(PrintFault.of(
                    PrintFault.Kind.PAGE_LOST,
                    "Its page " + document + " is gone. Make it anew, and type \"strawbed printer drop " + job.number()
                            + "\"."));
        }
        FutureTask<@Nullable Void> begun = hanging.get(job.number());
        if (begun == null) {
            if (silent.contains(job.printer())) {
                return Optional.of(silence(job));
            }
            begun = begun(() -> {
                printers.handOver(document, job.printer(), "Strawbed " + job.number());
                return null;
            });
        }
        hanging.put(job.number(), begun);
        try {
            begun.get(silent.contains(job.printer()) ? 0 : patience.toMillis(), TimeUnit.MILLISECONDS);
            hanging.remove(job.number());
            return Optional.empty();
        } catch (TimeoutException e) {
            silent.add(job.printer());
            return Optional.of(silence(job));
        } catch (ExecutionException e) {
            hanging.remove(job.number());
            Throwable cause = Objects.requireNonNullElse(e.getCause(), e);
            return Optional.of(
                    cause instanceof PrintException refused
                            ? refused.fault()
                            : new PrintFault(
                                    PrintFault.Kind.REFUSED,
                                    cause.toString(),
                                    "The printer " + job.printer() + " did not take the page: " + cause + "."));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.of(PrintFault.of(PrintFault.Kind.ENDED, "The program ended before the printer answered."));
        }
    }

    private static PrintFault silence(PrintJob job) {
        return PrintFault.of(
                PrintFault.Kind.SILENT,
                "The printer " + job.printer() + " does not answer. Look whether it and the print service are on.");
    }

    private PrintJob taken(PrintJob job) {
        try {
            PrintJob noted = queue.changed(job.number(), one -> one.handedOver(clock.instant()))
                    .orElse(job.handedOver(clock.instant()));
            notNoted.remove(job.number());
            return noted;
        } catch (PrintException full) {
            // Never hand it over again for want of a note.
            notNoted.add(job.number());
            return job.handedOver(clock.instant());
        }
    }

    private PrintJob failed(PrintJob job, PrintFault why) {
        PrintJob failed = job.failed(clock.instant(), why);
        try {
            return queue.changed(job.number(), one -> one.isWaiting() ? one.failed(clock.instant(), why) : one)
                    .orElse(failed);
        } catch (PrintException full) {
            // The job waits all the same; only its last fault is not on the disk.
            return failed;
        }
    }

    private boolean takeRight() {
        if (right != null) {
            return true;
        }
        try {
            right = FolderLock.take(queue.madeFolder().resolve("porter.lock"), LOCK_MILLIS)
                    .orElse(null);
            return right != null;
        } catch (IOException e) {
            throw new PrintException(
                    "The folder of waiting pages cannot be used: " + e.getMessage()
                            + ". Check that the disk has room and that the folder can be written to.",
                    e);
        }
    }

    /** While a hand over hangs, no other program may begin it anew. */
    private void giveRight() {
        Set<Integer> waiting =
                queue.contents().waiting().stream().map(PrintJob::number).collect(Collectors.toSet());
        hanging.entrySet().removeIf(one -> one.getValue().isDone() && !waiting.contains(one.getKey()));
        if (right != null && hanging.isEmpty()) {
            close();
        }
    }

    @Override
    public synchronized void close() {
        if (right != null) {
            try {
                right.close();
            } catch (IOException e) {
                throw new PrintException("The lock of waiting pages was not given back: " + e.getMessage() + ".", e);
            } finally {
                right = null;
            }
        }
    }

    private static <T extends @Nullable Object> FutureTask<T> begun(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(task, "printer");
        thread.setDaemon(true);
        thread.start();
        return task;
    }
}
