package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.station.Choices;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DailyBackupIT {
    private static final ZoneId BARN = ZoneId.of("America/Chicago");

    /** In the barn it is still the evening before. */
    private static final Instant FIRST = Instant.parse("2026-03-02T03:00:00Z");

    @TempDir
    Path folder;

    private Path second() throws IOException {
        return Files.createDirectories(folder.resolve("stick"));
    }

    private Settings at(Instant now) {
        return new Settings(folder.resolve("data"), Optional.empty(), Clock.fixed(now, BARN), BARN);
    }

    private SqliteEventJournal open(Instant now) {
        Settings settings = at(now);
        return SqliteEventJournal.open(
                settings.data(), settings.clock(), BARN, new TimeOrderedIds(settings.clock(), new Random(1)));
    }

    private static void feed(SqliteEventJournal journal, Instant now) {
        journal.append(
                List.of(new NewEvent(null, new Event.FeedRefused(), now, Provenance.of(Provenance.Source.BUTTON))));
    }

    private List<String> make(Instant now, int kept) throws IOException {
        StationFile station = new StationFile(
                "", Optional.of(second()), kept, Optional.empty(), Optional.empty(), Map.of(), Choices.USUAL);
        return new DailyBackup(at(now), station, second()).make().told();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(second())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void one_a_day_while_the_recorder_writes_and_the_oldest_go() throws IOException {
        Files.writeString(second().resolve("calves.txt"), "not ours");
        for (int day = 0; day < 5; day++) {
            Instant now = FIRST.plus(Duration.ofDays(day));
            try (SqliteEventJournal journal = open(now)) {
                feed(journal, now);
                assertThat(make(now, 3))
                        .singleElement()
                        .asString()
                        .contains(", chain whole", "strawbed-2026-03-0")
                        .startsWith("Backup of today made");
                feed(journal, now);
                assertThat(make(now.plus(Duration.ofHours(1)), 3)).isEmpty();
            }
        }
        assertThat(names())
                .containsExactly(
                        "calves.txt", "strawbed-2026-03-03.db", "strawbed-2026-03-04.db", "strawbed-2026-03-05.db");
    }

    @Test
    void a_missing_disk_is_told_and_made_nowhere() throws IOException {
        open(FIRST).close();
        StationFile station = StationFile.USUAL;
        Path gone = folder.resolve("gone");
        DailyBackup.Outcome outcome = new DailyBackup(at(FIRST), station, gone).make();
        assertThat(outcome.isGood()).isFalse();
        assertThat(outcome.told())
                .singleElement()
                .asString()
                .startsWith("No backup today: ")
                .contains("Plug its disk in");
        assertThat(gone).doesNotExist();
    }

    @Test
    void the_command_makes_it_where_the_station_file_says() throws IOException {
        open(Instant.now()).close();
        Path data = folder.resolve("data");
        assertThat(run("backup", "--data", data.toString())).startsWith("2 Where to?");
        Files.writeString(data.resolve("station.properties"), "backup.folder = " + second() + "\n");
        assertThat(run("backup", "--data", data.toString())).startsWith("0 Backup of today made");
        assertThat(run("backup", "--data", data.toString())).startsWith("0 Today's backup is in");
        assertThat(names()).hasSize(1);
    }

    private static String run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
        return code + " " + err + out;
    }
}
