package strawbed.app;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.sqlite.SqliteEventJournal;

/** An invented record for the station's bench: calves of the last hours, made by command: nobody said them. */
final class StationRecord {
    private static final Duration APART = Duration.ofMinutes(11);

    private StationRecord() {}

    /** Makes a record in which calves with these numbers were born, one after the other, until now. */
    static void make(Path data, Clock clock, Collection<String> numbers) {
        TimeOrderedIds ids = new TimeOrderedIds(clock, new Random(7));
        Instant born = clock.instant().minus(APART.multipliedBy(numbers.size()));
        List<NewEvent> facts = new ArrayList<>();
        for (String number : numbers) {
            born = born.plus(APART);
            CalfId calf = new CalfId(ids.get());
            facts.add(fact(calf, new Event.CalfOpened(number, null), born));
            facts.add(fact(calf, new Event.CalfBorn(new When.At(born)), born));
        }
        try (SqliteEventJournal journal = open(data, clock)) {
            journal.append(facts);
        }
    }

    private static NewEvent fact(CalfId calf, Event event, Instant at) {
        return new NewEvent(calf, event, at, Provenance.of(Provenance.Source.COMMAND));
    }

    /** How many facts a record has that were said or pressed. No station may have it open. */
    static long saidOrPressed(Path data, Clock clock) {
        try (SqliteEventJournal journal = open(data, clock)) {
            return journal.all().stream().filter(StationRecord::isSaidOrPressed).count();
        }
    }

    static boolean isSaidOrPressed(RecordedEvent fact) {
        return fact.provenance().source() != Provenance.Source.COMMAND;
    }

    private static SqliteEventJournal open(Path data, Clock clock) {
        return SqliteEventJournal.open(data, clock, clock.getZone(), new TimeOrderedIds(clock, new Random(8)));
    }
}
