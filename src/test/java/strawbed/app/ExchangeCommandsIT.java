package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.calf.RandomEvents;
import strawbed.event.NewEvent;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;

/** Out of one data folder and into another, as a person does it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ExchangeCommandsIT {
    private static final Instant NOW = Instant.parse("2026-03-02T05:30:00.5Z");
    private static final long SEED = 20261125;

    @TempDir
    Path folder;

    private Path from;
    private Path to;

    @BeforeEach
    void choose_folders() {
        from = folder.resolve("from");
        to = folder.resolve("to");
    }

    private void fill(int count) {
        List<NewEvent> events = new ArrayList<>();
        for (RecordedEvent told : new RandomEvents(SEED).told(count).events()) {
            events.add(new NewEvent(told.calf(), told.event(), told.occurredAt(), told.provenance()));
        }
        Clock clock = Clock.fixed(NOW, ZoneOffset.UTC);
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                from, clock, ZoneId.of("America/Chicago"), new TimeOrderedIds(clock, new Random(SEED)))) {
            journal.append(events);
        }
    }

    private static CommandRun run(Path data, Object... args) {
        List<String> words = new ArrayList<>(List.of("--data", data.toString()));
        Stream.of(args).map(String::valueOf).forEach(words::add);
        return CommandRun.of(words.toArray(String[]::new));
    }

    private Path exported(int count) {
        fill(count);
        Path file = folder.resolve("record.jsonl");
        assertThat(run(from, "export", "--format", "json", "-o", file).code()).isZero();
        return file;
    }

    private void assertNothingWasMade(CommandRun run) {
        assertThat(run.code()).as(run.out()).isEqualTo(2);
        assertThat(run.err()).contains("Nothing was changed").doesNotContain("Exception");
        assertThat(to).doesNotExist();
    }

    @Test
    void export_import_export_gives_the_same_bytes() throws IOException {
        Path file = exported(500);
        assertThat(run(to, "import", file, "--dry-run").out()).contains("Nothing was changed; to be added: 500 events");
        assertThat(to).doesNotExist();

        assertThat(run(to, "import", file).out()).startsWith("Imported 500 events of 3 calves.");
        assertThat(run(to, "export", "--format", "json").out())
                .as("seed %s", SEED)
                .isEqualTo(Files.readString(file));
        assertThat(run(to, "calves").out()).isEqualTo(run(from, "calves").out());
        assertThat(run(to, "import", file).out()).contains("Imported 0 events of 0 calves; 500 in the record already.");
        assertThat(run(to, "export", "--format", "json").out()).isEqualTo(Files.readString(file));
    }

    @Test
    void half_a_file_or_one_bad_line_changes_nothing() throws IOException {
        Path file = exported(50);
        List<String> lines = Files.readAllLines(file);
        Files.write(file, lines.subList(0, 25));
        assertNothingWasMade(run(to, "import", file));

        lines.set(30, lines.get(30).replace("\"sequence\"", "\"sequins\""));
        Files.write(file, lines);
        CommandRun run = run(to, "import", file);
        assertNothingWasMade(run);
        assertThat(run.err()).contains("  line 31: ", "the field sequence is missing");
    }

    @Test
    void a_sound_that_lies_elsewhere_changes_nothing() throws IOException {
        Path file = exported(50);
        List<String> lines = Files.readAllLines(file);
        lines.set(20, lines.get(20).replaceFirst("\\}$", ",\"sound\":\"../record.db\"}"));
        Files.write(file, lines);
        CommandRun run = run(to, "import", file);
        assertNothingWasMade(run);
        assertThat(run.err()).contains("1 fault", "  line 21: its sound \"../record.db\" is not the plain name");
    }

    @Test
    void an_import_into_a_record_that_lost_facts_tells_so() throws IOException {
        Path file = exported(10);
        RecordThatLostFacts.in(to);
        CommandRun run = run(to, "import", file);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).startsWith("Imported 10 events");
        assertThat(run.err()).contains(RecordThatLostFacts.TOLD, "else restore the record from a backup");
    }

    @Test
    void a_table_of_calves_into_a_record_that_lost_facts_tells_so() throws IOException {
        Path file = folder.resolve("calves.csv");
        Files.writeString(file, "Ear\n312\n");
        RecordThatLostFacts.in(to);
        CommandRun run = run(to, "import", file, "--map", "number=Ear");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err()).contains(RecordThatLostFacts.TOLD);
    }

    @Test
    void an_event_that_differs_from_the_one_in_the_record_is_told_with_its_line() throws IOException {
        Path file = exported(10);
        List<String> lines = Files.readAllLines(file);
        lines.set(4, lines.get(4).replaceFirst("\"recorded_at\":\"2026", "\"recorded_at\":\"2025"));
        Files.write(file, lines);
        String before = run(from, "export", "--format", "json").out();
        CommandRun run = run(from, "import", file);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("1 fault. Nothing was changed", "  line 5: the record has another event");
        assertThat(run(from, "export", "--format", "json").out()).isEqualTo(before);
    }

    @Test
    void a_file_that_is_there_is_left_as_it_was() throws IOException {
        Path file = exported(3);
        String before = Files.readString(file);
        CommandRun run = run(from, "export", "--format", "csv", "-o", file);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("is there already and was left as it is");
        assertThat(file).hasContent(before);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactlyInAnyOrder(from, file);
        }
    }

    @Test
    void the_tables_go_to_the_terminal() {
        fill(60);
        CommandRun events = run(from, "export", "--format", "csv");
        assertThat(events.out()).startsWith("sequence,id,recorded_at_utc");
        assertThat(events.out().split("\r\n")).hasSize(61);
        assertThat(run(from, "export", "--format", "csv", "--rows", "events")).isEqualTo(events);
        assertThat(run(from, "export", "--format", "csv", "--rows", "calves").out())
                .startsWith("number,id,dam,sex,breed,born_local");
    }

    @Test
    void what_cannot_be_exported_is_told() {
        assertThat(run(from, "export", "--format", "csv").err()).contains("There is no record in");
        fill(1);
        for (CommandRun run : List.of(
                run(from, "export"),
                run(from, "export", "--format", "pdf"),
                run(from, "export", "--format", "csv", "--rows", "cows"),
                run(from, "export", "--format", "json", "--rows", "calves"),
                run(from, "export", "--format", "csv", "-o", folder.resolve("none/there.csv")),
                run(from, "import", folder.resolve("nothing.jsonl")),
                run(from, "import", folder))) {
            assertThat(run.code()).as(run.err()).isEqualTo(2);
            assertThat(run.err()).isNotBlank().doesNotContain("\tat ");
        }
    }

    @Test
    void a_table_of_calves_opens_them_once() throws IOException {
        Path file = folder.resolve("calves.csv");
        Files.writeString(file, "Ear,Cow,Date\r\n312,88,2026-03-01\r\n,90,2026-03-01 05:30\r\n");
        Object[] command = {"import", file, "--map", "number=Ear,dam=Cow,born=Date"};
        assertThat(run(to, "import", file, "--map", "number=Ear,dam=Cow,born=Date", "--dry-run")
                        .out())
                .contains("to be added: 4 events of 2 calves.");
        assertThat(to).doesNotExist();
        assertThat(run(to, command).out()).startsWith("Imported 4 events of 2 calves.");
        assertThat(run(to, "calves").out()).contains("312", "90");

        CommandRun again = run(to, command);
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("2 faults. Nothing was changed", "line 2: a calf 312 is open");
        assertThat(run(to, "calves", "--json").out().lines()).hasSize(2);
    }

    @Test
    void a_bad_table_makes_no_record() throws IOException {
        Path file = folder.resolve("calves.csv");
        Files.writeString(file, "Ear,Date\n1,2026-03-01\n2,yesterday\n");
        CommandRun run = run(to, "import", file, "--map", "number=Ear,born=Date");
        assertNothingWasMade(run);
        assertThat(run.err()).contains("  line 3: \"yesterday\" is no date of birth");
    }
}
