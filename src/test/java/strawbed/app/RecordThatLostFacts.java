package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Random;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;

/** A data folder in which somebody put an older copy in the place of the record; its note still names what is gone. */
final class RecordThatLostFacts {
    /** What whoever opens it for writing must be told. */
    static final String TOLD = "Facts up to number 7 were saved, and those after number 4 are gone";

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-02-28T05:00:00Z"), ZoneOffset.UTC);

    private RecordThatLostFacts() {}

    static void in(Path data) throws IOException {
        Path record = data.resolve("record.db");
        Path copy = data.resolveSibling("older-copy.db");
        save(data, 4);
        Files.copy(record, copy);
        save(data, 3);
        Files.move(copy, record, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void save(Path data, int facts) {
        NewEvent fact =
                new NewEvent(null, new Event.FeedRefused(), CLOCK.instant(), Provenance.of(Provenance.Source.COMMAND));
        TimeOrderedIds ids = new TimeOrderedIds(CLOCK, new Random(facts));
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, CLOCK, ZoneOffset.UTC, ids)) {
            journal.append(Collections.nCopies(facts, fact));
        }
    }
}
