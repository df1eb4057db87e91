package strawbed.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.Backup;
import strawbed.journal.sqlite.Finding;
import strawbed.journal.sqlite.RecordBackup;
import strawbed.journal.sqlite.RecordHealth;
import strawbed.journal.sqlite.SqliteEventJournal;

/** Tells how the record and its backups stand. */
final class RecordTelling {
    /** One tool's work can touch every fact; the first of them tell it. */
    private static final int TOLD = 20;

    private RecordTelling() {}

    /**
     * The record's line of {@code strawbed check}.
     *
     * @throws BadInputException with all findings if it is not sound
     */
    static String record(Settings settings) {
        if (!RecordReading.isThere(settings)) {
            return "none yet in " + settings.data() + "; the recorder makes it when it first listens";
        }
        try (SqliteEventJournal journal = SqliteEventJournal.openReadOnly(
                settings.data(),
                settings.clock(),
                settings.zone(),
                new TimeOrderedIds(settings.clock(), new SecureRandom()))) {
            RecordHealth health = journal.verify();
            if (!health.isSound()) {
                throw new BadInputException("not as it should be. " + findings(health));
            }
            int open = journal.openStatements().size();
            return summary(health) + ", " + open + (open == 1 ? " open statement" : " open statements") + ", in "
                    + settings.data();
        }
    }

    /** The backups' line of {@code strawbed check}: how old the newest is and what it lacks. */
    static String backup(Settings settings) {
        Optional<Backup> newest = new RecordBackup(settings.data()).newest();
        if (newest.isEmpty()) {
            return RecordReading.isThere(settings)
                    ? "none yet; make one with \"strawbed backup FILE\" and keep it on another disk, or set backup.folder in "
                            + StationFile.NAME + " for one each day"
                    : "none needed yet";
        }
        Backup backup = newest.get();
        return "the newest is "
                + age(Duration.between(backup.madeAt(), settings.clock().instant())) + " old and holds "
                + facts(backup.facts()) + ": " + backup.file()
                + (Files.exists(Path.of(backup.file())) ? "" : " (not to be seen now)");
    }

    /** Facts and chain of a sound record. */
    static String summary(RecordHealth health) {
        return facts(health.facts())
                + (health.isChained()
                        ? ", chain whole"
                        : ", no chain yet: the recorder makes it when it next listens, and keeps a copy from before")
                + (health.head() == null ? "" : " (" + health.head().substring(0, 8) + ")");
    }

    /** What a person must be told of a record that was opened for writing, each on a line; mostly nothing. */
    static List<String> findings(SqliteEventJournal journal) {
        return journal.findings().stream().map(Finding::text).toList();
    }

    /** Each finding on a line of its own, under how many there are. */
    static String findings(RecordHealth health) {
        int all = health.findings().size();
        return (all == 1 ? "1 finding" : all + " findings") + ":\n"
                + health.findings().stream()
                        .limit(TOLD)
                        .map(Finding::text)
                        .map(text -> "  " + text)
                        .collect(Collectors.joining("\n"))
                + (all > TOLD ? "\n  and " + (all - TOLD) + " more." : "");
    }

    /** The file that picocli requires. */
    static Path given(@Nullable Path file) {
        if (file == null) {
            throw new IllegalStateException("the command line was not set up");
        }
        return file;
    }

    private static String facts(long count) {
        return count == 1 ? "1 fact" : count + " facts";
    }

    private static String age(Duration age) {
        if (age.toDays() > 1) {
            return age.toDays() + " days";
        }
        return age.toHours() > 1 ? age.toHours() + " hours" : Math.max(0, age.toMinutes()) + " minutes";
    }
}
