package strawbed.journal.sqlite;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;

/** A program that saves facts three at a time for ever, and prints the place of each one once it is saved. */
final class AppendUntilKilled {
    static final int AT_ONCE = 3;

    private AppendUntilKilled() {}

    public static void main(String[] arguments) {
        Clock clock = Clock.systemUTC();
        NewEvent fact =
                new NewEvent(null, new Event.FeedRefused(), Instant.EPOCH, Provenance.of(Provenance.Source.COMMAND));
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                Path.of(arguments[0]), clock, ZoneId.of("UTC"), new TimeOrderedIds(clock, new Random()))) {
            while (!System.out.checkError()) {
                for (RecordedEvent saved : journal.append(List.of(fact, fact, fact))) {
                    System.out.println(saved.sequence());
                }
            }
        }
    }
}
