package strawbed.app;

import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.SqliteEventJournal;

/** What is done beside the recorder's work by a thread of its own, which ends with it: the backup of each day. */
final class DailyWork implements AutoCloseable {
    private static final long EACH_MINUTES = 30;

    private final BlockingQueue<String> news = new LinkedBlockingQueue<>();
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "daily work");
        made.setDaemon(true);
        return made;
    });

    private DailyWork() {}

    /** Looks through a big record once, then looks each half hour whether a new day needs its backup. */
    static DailyWork begin(Settings settings, StationFile station) {
        DailyWork work = new DailyWork();
        work.thread.execute(() -> work.lookThrough(settings));
        if (station.backupFolder().isPresent()) {
            DailyBackup backup =
                    new DailyBackup(settings, station, station.backupFolder().get());
            // Its result is told as news; it never throws.
            ScheduledFuture<?> unused =
                    work.thread.scheduleWithFixedDelay(() -> work.make(backup), 0, EACH_MINUTES, TimeUnit.MINUTES);
        }
        return work;
    }

    /** The next line for a person; null while there is none. */
    @Nullable
    String news() {
        return news.poll();
    }

    /** A backup that is being made may end; it has its name only once it is whole. */
    @Override
    public void close() {
        thread.shutdown();
    }

    private void lookThrough(Settings settings) {
        try {
            SqliteEventJournal.lookThrough(settings.data());
        } catch (JournalException damage) {
            news.add(damage.getMessage());
        }
    }

    /** What it throws would end all later ones unheard. */
    private void make(DailyBackup backup) {
        try {
            news.addAll(backup.make().told());
        } catch (RuntimeException failure) {
            news.add("No backup today: " + failure + ". Please report this.");
        }
    }
}
