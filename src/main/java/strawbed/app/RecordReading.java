package strawbed.app;

import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.protocol.Protocols;

/** Reads the farm's record without holding it, so that a recorder may run at the same time. */
final class RecordReading {
    private static final Herd NONE = Herd.of(List.of());

    private RecordReading() {}

    /** All calves of the record, which of a big one takes time and memory; none where there is no record yet. */
    static Herd herd(Settings settings) {
        return Herd.of(events(settings));
    }

    /**
     * The calves that care was about at this time, as the record knew them then; see {@link HerdReading#recent}.
     *
     * @param time what was saved later is left out
     */
    static Herd recent(Settings settings, Instant time) {
        return read(settings, record -> HerdReading.recent(record, time, time)).orElse(NONE);
    }

    /**
     * The calf that somebody asks for, as the record knew it at this time, among those that have to do with it; see
     * {@link HerdReading#around}.
     *
     * @param until what was saved later is left out
     */
    static Herd around(Settings settings, String wanted, Instant now, Instant until) {
        return read(settings, record -> HerdReading.around(record, wanted, now, until))
                .orElse(NONE);
    }

    /**
     * The calf that somebody asks for, by id or number; of several that bore the number a living one first.
     *
     * @throws BadInputException if there is none
     */
    static CalfRecord calf(Herd herd, String wanted) {
        return find(herd, wanted)
                .orElseThrow(() -> new BadInputException(
                        "There is no calf " + wanted + " in the record. \"strawbed calves\" lists those that are."));
    }

    /** As {@link #calf}, or empty. */
    static Optional<CalfRecord> find(Herd herd, String wanted) {
        return id(wanted)
                .flatMap(herd::calf)
                .filter(herd.calves()::contains)
                .or(() -> herd.byNumber(wanted))
                .or(() -> herd.calves().stream()
                        .filter(known -> known.bears(wanted))
                        .findFirst());
    }

    /** The id that this is; in capitals it stands in the square code of a card. */
    static Optional<CalfId> id(String wanted) {
        String id = wanted.toLowerCase(Locale.ROOT);
        return id.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}") ? Optional.of(CalfId.of(id)) : Optional.empty();
    }

    /** The protocols of the record; none where there is no record yet. */
    static Protocols protocols(Settings settings) {
        return Protocols.of(read(settings, RecordReading::protocols).orElseGet(List::of));
    }

    /** Those that count, in the order of the record. */
    static List<RecordedEvent> protocols(EventJournal journal) {
        return Herd.of(journal.protocols()).barn();
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
        return read(settings, EventJournal::all).orElseGet(List::of);
    }

    /** What somebody reads out of the record; empty where there is no record yet. */
    static <T> Optional<T> read(Settings settings, Function<EventJournal, T> reader) {
        if (!isThere(settings)) {
            return Optional.empty();
        }
        try (EventJournal journal = SqliteEventJournal.openReadOnly(
                settings.data(),
                settings.clock(),
                settings.zone(),
                new TimeOrderedIds(settings.clock(), new SecureRandom()))) {
            return Optional.of(reader.apply(journal));
        }
    }

    /** The numbers of the open calves that care is about now. */
    static List<String> openCalves(Settings settings) {
        return List.copyOf(recent(settings, settings.clock().instant()).openNumbers());
    }
}
