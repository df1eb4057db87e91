package strawbed.app;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.protocol.Protocols;

/** Reads the farm's record without holding it, so that a recorder may run at the same time. */
final class RecordReading {
    private RecordReading() {}

    /** The calves of the record; none where there is no record yet. */
    static Herd herd(Settings settings) {
        return Herd.of(events(settings));
    }

    /** The calves as the record knew them at this time: what was saved later is left out. */
    static Herd herdAt(Settings settings, Instant time) {
        return Herd.of(events(settings).stream()
                .filter(recorded -> !recorded.recordedAt().isAfter(time))
                .toList());
    }

    /**
     * The calf that somebody asks for, by id or number; of several that bore the number a living one first.
     *
     * @throws BadInputException if there is none
     */
    static CalfRecord calf(Herd herd, String wanted) {
        return herd.calves().stream()
                .filter(known -> known.id().toString().equals(wanted))
                .findFirst()
                .or(() -> herd.byNumber(wanted))
                .or(() -> herd.calves().stream()
                        .filter(known -> known.bears(wanted))
                        .findFirst())
                .orElseThrow(() -> new BadInputException(
                        "There is no calf " + wanted + " in the record. \"strawbed calves\" lists those that are."));
    }

    /** The protocols of the record; none where there is no record yet. */
    static Protocols protocols(Settings settings) {
        return Protocols.of(events(settings));
    }

    /**
     * Whether there is a record yet.
     *
     * @throws JournalException if there was one, and its file was emptied or taken away
     */
    static boolean isThere(Settings settings) {
        return SqliteEventJournal.isThere(settings.data());
    }

    /** All events of the record in its order; none where there is no record yet. */
    static List<RecordedEvent> events(Settings settings) {
        if (!isThere(settings)) {
            return List.of();
        }
        try (EventJournal journal = SqliteEventJournal.openReadOnly(
                settings.data(),
                settings.clock(),
                settings.zone(),
                new TimeOrderedIds(settings.clock(), new SecureRandom()))) {
            return journal.all();
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
