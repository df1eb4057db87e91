package strawbed.app;

import java.util.Set;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import org.jspecify.annotations.Nullable;
import strawbed.print.Porter;
import strawbed.print.PrintJob;

/** What came of pages, as lines for a person: of each once that it waits, once that it went. Safe for any thread. */
final class PrintNews {
    private final PrintWords words;
    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    /** Jobs of which somebody was told that they wait. */
    private final Set<Integer> told = ConcurrentHashMap.newKeySet();

    private @Nullable String lastFailure;

    PrintNews(PrintWords words) {
        this.words = words;
    }

    /** The next line; null while there is none. */
    @Nullable
    String poll() {
        return lines.poll();
    }

    void add(String line) {
        lines.add(line);
    }

    /** A folder that cannot be used is no news each quarter of a minute. */
    synchronized void addOnce(String failure) {
        if (!failure.equals(lastFailure)) {
            lastFailure = failure;
            add(failure);
        }
    }

    /** Somebody hears of this job in another way. */
    void isTold(PrintJob job, boolean waits) {
        if (waits) {
            told.add(job.number());
        } else {
            told.remove(job.number());
        }
    }

    /** A page was tried that nobody waits for. */
    void tell(Porter.Tried tried) {
        PrintJob job = tried.after();
        if (tried.isHandedOver()) {
            boolean waited = told.remove(job.number()) || tried.before().fault() != null;
            if (waited) {
                add(words.told(job));
            }
        } else if (told.add(job.number())) {
            add(words.told(job));
        }
    }
}
