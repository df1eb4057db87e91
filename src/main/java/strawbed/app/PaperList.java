package strawbed.app;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import strawbed.print.JobState;
import strawbed.print.PrintException;
import strawbed.print.PrintJob;
import strawbed.print.PrintQueue;
import strawbed.station.Paper;
import strawbed.station.Papers;

/**
 * The pages on their way to the printer as the station shows them. The folder is read on a thread of its own, so that
 * neither a slow disk nor a silent printer holds who asks. Safe for any thread.
 */
final class PaperList implements AutoCloseable {
    private final PrintQueue queue;
    private final PrintWords words;
    private final AtomicBoolean isAsked = new AtomicBoolean();
    private volatile Papers known = Papers.NONE;

    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread made = new Thread(work, "list of prints");
        made.setDaemon(true);
        return made;
    });

    PaperList(PrintQueue queue, PrintWords words) {
        this.queue = queue;
        this.words = words;
    }

    /** As they were when the folder was last read. */
    Papers known() {
        return known;
    }

    /** Asks for the folder to be read, and returns at once. */
    void look() {
        if (isAsked.compareAndSet(false, true)) {
            thread.execute(() -> {
                isAsked.set(false);
                read();
            });
        }
    }

    /** Does something about the queue that asks no printer. */
    void execute(Runnable work) {
        thread.execute(work);
    }

    /** Reads the folder. One at a time, so that what was read later counts. */
    synchronized void read() {
        try {
            PrintQueue.Contents contents = queue.contents();
            List<Paper> papers = contents.jobs().stream()
                    .sorted(Comparator.comparing((PrintJob job) -> job.state() != JobState.WAITING)
                            .thenComparing(PrintJob::number, Comparator.reverseOrder()))
                    .map(words::paper)
                    .toList();
            int damaged = contents.damaged().size();
            known = new Papers(papers, damaged == 0 ? "" : words.damaged(damaged));
        } catch (PrintException unreadable) {
            known = new Papers(List.of(), words.unusable(queue.folder()));
        } catch (RuntimeException failure) {
            known = new Papers(List.of(), words.odd(failure));
        }
    }

    @Override
    public void close() {
        thread.shutdown();
    }
}
