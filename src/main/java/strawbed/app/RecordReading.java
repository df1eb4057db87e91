package strawbed.app;

import java.nio.file.Files;
import java.security.SecureRandom;
import java.util.List;
import strawbed.calf.Herd;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;

/** Reads the farm's record without holding it, so that a recorder may run at the same time. */
final class RecordReading {
    private RecordReading() {}

    /** The calves of the record; none where there is no record yet. */
    static Herd herd(Settings settings) {
        if (!Files.exists(settings.data().resolve("record.db"))) {
            return Herd.of(List.of());
        }
        try (EventJournal journal = SqliteEventJournal.openReadOnly(
                settings.data(),
                settings.clock(),
                settings.zone(),
                new TimeOrderedIds(settings.clock(), new SecureRandom()))) {
            return Herd.of(journal.all());
        }
    }

    /** The numbers of its open calves. */
    static List<String> openCalves(Settings settings) {
        return List.copyOf(herd(settings).openNumbers());
    }

    /** The numbers of the open calves of a record that is open already. */
    static List<String> openCalves(EventJournal journal) {
        return List.copyOf(Herd.of(journal.all()).openNumbers());
    }
}
