package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.RecordBackup;
import strawbed.journal.sqlite.RecordHealth;

/**
 * The backup of each day in the folder that the farm set, which is best on another disk: at most one a day, and the
 * oldest beyond the kept number go once the new one is whole. Safe for any thread.
 */
final class DailyBackup {
    private static final Pattern NAME = Pattern.compile("strawbed-\\d{4}-\\d{2}-\\d{2}\\.db");

    private final Settings settings;
    private final StationFile station;
    private final Path folder;

    /**
     * What came of it.
     *
     * @param isGood whether there is a sound backup of today
     * @param told what a person should read; nothing if it was there already
     */
    record Outcome(boolean isGood, List<String> told) {
        Outcome {
            told = List.copyOf(told);
        }

        private static Outcome bad(String told) {
            return new Outcome(false, List.of(told));
        }
    }

    /** @param folder of the station's file */
    DailyBackup(Settings settings, StationFile station, Path folder) {
        this.settings = settings;
        this.station = station;
        this.folder = folder;
    }

    /** Makes today's backup, unless it is there. */
    Outcome make() {
        Path file = today();
        if (Files.exists(file)) {
            return new Outcome(true, List.of());
        }
        if (!Files.isDirectory(folder)) {
            return Outcome.bad("No backup today: " + folder
                    + " is not there. Plug its disk in, or mend backup.folder in " + StationFile.NAME + ".");
        }
        try {
            RecordHealth health = new RecordBackup(settings.data()).write(file, settings.clock());
            if (!health.isSound()) {
                // It would keep today's name, so that the mended record had none.
                Files.move(file, file.resolveSibling("not-sound-" + file.getFileName()));
                return Outcome.bad("Today's backup is not sound, as the record is not; older ones stay. Type \"strawbed"
                        + " check\".");
            }
            removeOldest();
            return new Outcome(
                    true,
                    List.of("Backup of today made and looked through: " + file + ", " + RecordTelling.summary(health)
                            + "."));
        } catch (IOException | JournalException failure) {
            return Outcome.bad("No backup today: " + failure.getMessage());
        }
    }

    private Path today() {
        return folder.resolve("strawbed-" + LocalDate.ofInstant(settings.clock().instant(), settings.zone()) + ".db");
    }

    /** Only files with our name of a day. */
    private void removeOldest() throws IOException {
        List<Path> days;
        try (Stream<Path> files = Files.list(folder)) {
            days = files.filter(
                            file -> NAME.matcher(file.getFileName().toString()).matches())
                    .sorted()
                    .toList();
        }
        for (Path old : days.subList(0, Math.max(0, days.size() - station.backupsKept()))) {
            Files.delete(old);
        }
    }
}
