package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.account.CalfAccount;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.DueList;
import strawbed.care.StoredColostrum;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.exchange.CalfSheet;
import strawbed.exchange.EventSheet;
import strawbed.exchange.RecordWriter;
import strawbed.exchange.ade.AdeExport;
import strawbed.exchange.ade.AdeSource;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;

/** What a day's work comes to depends on its facts alone: not on how often they are read, nor in what portions. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TwiceReplayedIT {
    private static final Instant FROM = Instant.parse("2026-03-02T06:00:00Z");
    private static final long SEED = 200;

    @TempDir
    Path folder;

    @Test
    void a_days_work_of_200_calvings_replayed_twice_gives_the_same_bytes() throws IOException {
        List<RecordedEvent> work = new SimulatedHerd(200, 200, FROM, SEED).rest();
        Instant now = FROM.plusSeconds(24 * 3600);
        String whole = replayed("whole", List.of(work), now);
        String again = replayed("again", List.of(new SimulatedHerd(200, 200, FROM, SEED).rest()), now);
        String byStatements = replayed("by-statements", statements(work), now);
        assertThat(whole).hasSizeGreaterThan(200_000).contains("CalfOpened");
        assertThat(again).isEqualTo(whole);
        assertThat(byStatements).isEqualTo(whole);
    }

    /** As they were saved: what has one time of saving was one statement. */
    private static List<List<RecordedEvent>> statements(List<RecordedEvent> work) {
        List<List<RecordedEvent>> statements = new ArrayList<>();
        for (RecordedEvent event : work) {
            if (statements.isEmpty() || !savedTogether(statements.get(statements.size() - 1), event)) {
                statements.add(new ArrayList<>());
            }
            statements.get(statements.size() - 1).add(event);
        }
        return statements;
    }

    private static boolean savedTogether(List<RecordedEvent> statement, RecordedEvent event) {
        return statement.get(0).recordedAt().equals(event.recordedAt());
    }

    /** Saves the portions one by one, each folded into the herd before it; gives all that can be told afterwards. */
    private String replayed(String name, List<List<RecordedEvent>> portions, Instant now) throws IOException {
        Clock clock = Clock.fixed(now, SimulatedHerd.ZONE);
        Herd herd = Herd.of(List.of());
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                folder.resolve(name), clock, SimulatedHerd.ZONE, new TimeOrderedIds(clock, new Random(SEED)))) {
            for (List<RecordedEvent> portion : portions) {
                herd = herd.plus(journal.importAll(portion));
            }
            StringBuilder told = new StringBuilder();
            RecordWriter.write(journal.asItIs(), "test", told);
            EventSheet.write(journal.asItIs(), told);
            CalfSheet.write(journal, now, told);
            return told
                    + told(herd, now)
                    + Objects.requireNonNull(journal.verify().head());
        }
    }

    private static String told(Herd herd, Instant now) {
        Messages messages = new Messages(Locale.US);
        return DueList.open(herd, now) + "\n" + StoredColostrum.of(herd, now) + "\n"
                + AdeExport.json(herd, new AdeSource("org.example.willowbank")) + "\n"
                + herd.calves().stream()
                        .map(calf -> account(calf, herd, now, messages))
                        .collect(Collectors.joining("\n"));
    }

    private static String account(CalfRecord calf, Herd herd, Instant now, Messages messages) {
        return calf.id() + " " + CalfAccount.of(calf, herd, now, messages, SimulatedHerd.ZONE);
    }
}
