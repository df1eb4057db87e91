package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.account.CalfAccount;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.RandomEvents;
import strawbed.care.BirthPeriod;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.care.HerdFigures;
import strawbed.care.HerdImmunity;
import strawbed.care.HerdReport;
import strawbed.care.StoredColostrum;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.testkit.ListedParts;
import strawbed.testkit.SimulatedHerd;
import strawbed.text.Messages;

/** What is said of a part of a record is what is said of the whole: the second is the reference of the first. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdReadingIT {
    private static final Duration PERIOD = Duration.ofDays(30);
    private static final int ACCOUNTS = 60;

    @TempDir
    Path folder;

    private SqliteEventJournal journal(List<RecordedEvent> events, Instant now) {
        Clock clock = Clock.fixed(now, SimulatedHerd.ZONE);
        SqliteEventJournal journal =
                SqliteEventJournal.open(folder, clock, SimulatedHerd.ZONE, new TimeOrderedIds(clock, new Random(1)));
        journal.importAll(events);
        return journal;
    }

    private static void assertSame(SqliteEventJournal journal, Instant now, long seed) {
        Herd whole = Herd.of(journal.all());
        Herd recent = HerdReading.recent(journal, now, Instant.MAX);
        assertThat(DueList.open(recent, now)).isEqualTo(DueList.open(whole, now));
        assertThat(StoredColostrum.of(recent, now)).isEqualTo(StoredColostrum.of(whole, now));
        BirthPeriod period = new BirthPeriod(now.minus(PERIOD), now);
        assertThat(HerdFigures.of(recent, Farm.of(recent), period, now))
                .usingRecursiveComparison()
                .isEqualTo(HerdFigures.of(whole, Farm.of(whole), period, now));
        assertThat(HerdImmunity.of(recent, Farm.of(recent), period))
                .usingRecursiveComparison()
                .isEqualTo(HerdImmunity.of(whole, Farm.of(whole), period));

        ListedParts listed = new ListedParts(journal.all());
        for (int days : new int[] {1, 20, 400}) {
            Instant day = now.minus(Duration.ofDays(days));
            assertThat(journal.since(day)).as("seed %s, %s days", seed, days).isEqualTo(listed.since(day));
        }
        LocalDate today = now.atZone(SimulatedHerd.ZONE).toLocalDate();
        for (int back : new int[] {30, 200}) {
            HerdReport.Days days = new HerdReport.Days(today.minusDays(back), today.minusDays(back - 30L));
            Herd born = HerdReading.bornSince(
                    journal, days.period(SimulatedHerd.ZONE).from());
            assertThat(HerdReport.of(born, Farm.of(born), days, SimulatedHerd.ZONE, now))
                    .as("seed %s, %s", seed, days)
                    .usingRecursiveComparison()
                    .isEqualTo(HerdReport.of(whole, Farm.of(whole), days, SimulatedHerd.ZONE, now));
        }

        List<CalfRecord> calves = new ArrayList<>(whole.calves());
        Collections.shuffle(calves, new Random(seed));
        for (CalfRecord calf : calves.subList(0, Math.min(ACCOUNTS, calves.size()))) {
            String id = calf.id().toString();
            assertThat(account(id, HerdReading.around(journal, id, now, Instant.MAX), now))
                    .as("seed %s, calf %s", seed, id)
                    .isEqualTo(account(id, whole, now));
            calf.number()
                    .ifPresent(number -> assertThat(
                                    account(number, HerdReading.around(journal, number, now, Instant.MAX), now))
                            .as("seed %s, number %s", seed, number)
                            .isEqualTo(account(number, whole, now)));
        }
    }

    private static String account(String wanted, Herd herd, Instant now) {
        CalfRecord calf = RecordReading.calf(herd, wanted);
        return calf.id() + " " + CalfAccount.of(calf, herd, now, new Messages(Locale.US), SimulatedHerd.ZONE);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_simulated_herd_of_months_is_told_the_same_by_parts(long seed) {
        List<RecordedEvent> events = new SimulatedHerd(900, 6, Instant.parse("2025-11-01T06:00:00Z"), seed).rest();
        Instant now = events.get(events.size() - 1).recordedAt().plusSeconds(60);
        try (SqliteEventJournal journal = journal(events, now)) {
            assertSame(journal, now, seed);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6, 7, 8, 9})
    void random_facts_are_told_the_same_by_parts(long seed) {
        List<RecordedEvent> events = new RandomEvents(seed).told(400).events();
        Instant now = events.stream()
                .map(RecordedEvent::recordedAt)
                .max(Instant::compareTo)
                .orElseThrow()
                .plusSeconds(60);
        try (SqliteEventJournal journal = journal(events, now)) {
            assertSame(journal, now, seed);
        }
    }
}
