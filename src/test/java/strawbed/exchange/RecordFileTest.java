package strawbed.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.CalfId;
import strawbed.event.EventId;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventSource;
import strawbed.journal.RandomEvents;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordFileTest {
    private static final String PROGRAM = "strawbed 0.1.0";

    @TempDir
    Path folder;

    /** A record of facts of every kind with every part of the envelope. */
    static List<RecordedEvent> random(long seed, int count) {
        Random random = new Random(seed);
        RandomEvents facts = new RandomEvents(random);
        List<RecordedEvent> events = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            events.add(new RecordedEvent(
                    new EventId(new UUID(random.nextLong(), random.nextLong())),
                    i,
                    Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000_000)),
                    Instant.ofEpochSecond(random.nextInt()),
                    ZoneId.of(random.nextBoolean() ? "Europe/Warsaw" : "America/Chicago"),
                    random.nextInt(5) == 0 ? null : new CalfId(new UUID(7, random.nextInt(9))),
                    facts.next(),
                    random.nextBoolean()
                            ? Provenance.of(Provenance.Source.COMMAND)
                            : new Provenance(
                                    Provenance.Source.VOICE,
                                    List.of("calf", "\u017c\u00f3\u0142w \u00f1", "\"; DROP TABLE event; --"),
                                    "unsure",
                                    "g1",
                                    "m1",
                                    "0001.wav",
                                    "Ines \u00c1guila")));
        }
        return events;
    }

    private static String text(List<RecordedEvent> events) throws IOException {
        StringBuilder out = new StringBuilder();
        RecordWriter.write(EventSource.of(events), PROGRAM, out);
        return out.toString();
    }

    private Reading<List<RecordedEvent>> read(String text) throws IOException {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    private Reading<List<RecordedEvent>> read(byte[] bytes) throws IOException {
        Path file = folder.resolve("record.jsonl");
        Files.write(file, bytes);
        return RecordReader.read(file);
    }

    private static List<String> faults(Reading<?> reading) {
        assertThat(reading).isInstanceOf(Reading.Broken.class);
        return ((Reading.Broken<?>) reading)
                .faults().stream().map(Fault::sentence).toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 20261125})
    void a_record_of_any_events_comes_back_equal(long seed) throws IOException {
        List<RecordedEvent> events = random(seed, 300);
        String text = text(events);

        assertThat(read(text)).as("seed %s", seed).isEqualTo(new Reading.Good<>(events));
        assertThat(text.lines()).hasSize(301);
    }

    @Test
    void an_empty_record_comes_back_empty() throws IOException {
        assertThat(read(text(List.of()))).isEqualTo(new Reading.Good<>(List.of()));
    }

    @Test
    void line_ends_and_a_mark_of_an_editor_change_nothing() throws IOException {
        List<RecordedEvent> events = random(4, 20);
        assertThat(read("\uFEFF" + text(events).replace("\n", "\r\n"))).isEqualTo(new Reading.Good<>(events));
        assertThat(read(text(events).stripTrailing())).isEqualTo(new Reading.Good<>(events));
    }

    @Test
    void a_file_cut_off_at_any_byte_is_never_taken() throws IOException {
        byte[] whole = text(random(5, 6)).getBytes(StandardCharsets.UTF_8);
        // Without its last line feed it is still whole.
        for (int length = 0; length < whole.length - 1; length++) {
            byte[] part = Arrays.copyOf(whole, length);
            assertThat(faults(read(part))).as("cut off after %s bytes", length).isNotEmpty();
        }
    }

    @Test
    void a_missing_line_is_one_fault_at_the_gap_and_one_at_the_end() throws IOException {
        List<String> lines = new ArrayList<>(text(random(6, 10)).lines().toList());
        lines.remove(4);
        assertThat(faults(read(String.join("\n", lines))))
                .satisfiesExactly(
                        gap -> assertThat(gap).startsWith("line 5: its sequence is 5 and not 4."),
                        end -> assertThat(end).contains("the file ends after 9 of 10 events"));
    }

    @Test
    void swapped_and_doubled_lines_are_told() throws IOException {
        List<String> lines = new ArrayList<>(text(random(7, 10)).lines().toList());
        Collections.swap(lines, 3, 7);
        assertThat(faults(read(String.join("\n", lines)))).first().asString().startsWith("line 4: its sequence is 7");
        lines = new ArrayList<>(text(random(7, 10)).lines().toList());
        lines.set(5, lines.get(4));
        assertThat(faults(read(String.join("\n", lines))))
                .anySatisfy(fault -> assertThat(fault).matches("line 6: its id .* stands in line 5 already\\."));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "``|it is no JSON object",
                "not json|it is no JSON object",
                "null|it is no JSON object",
                "[1,2]|it is no JSON object",
                "{\"type\":\"DamNursed\"|it is no JSON object",
                "{} {}|something stands behind",
                "{}|the field type is missing",
                "{\"type\":\"DamNursed\",\"type\":\"DamNursed\"}|it is no JSON object",
                "{\"type\":7}|the field type cannot be 7",
                "{\"type\":\"DamNursed\",\"version\":1}|the field id is missing",
                "{\"type\":\"DamNursed\",\"version\":1,\"id\":\"1-1-1-1-1\"}|the field id cannot be 1-1-1-1-1",
                "{\"type\":\"DamNursed\",\"version\":1e99}|the field version cannot be",
            })
    void every_broken_line_is_told_with_its_number(String line, String fault) throws IOException {
        List<String> lines = new ArrayList<>(text(random(8, 3)).lines().toList());
        lines.set(2, line);
        assertThat(faults(read(String.join("\n", lines) + "\n")))
                .singleElement()
                .asString()
                .startsWith("line 3: ")
                .contains(fault);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"zone\":\"UTC\"|\"zone\":\"Mars/Olympus\"|the field zone cannot be Mars/Olympus",
                "\"zone\":\"UTC\"|\"zone\":\"UTC\",\"more\":1|it has no field more",
                "\"version\":1|\"version\":2|this program does not know this version",
                "DamNursed|CowSang|this program does not know this type",
                "\"fields\":{}|\"fields\":{\"x\":1}|it has no field x",
                "\"fields\":{}|\"fields\":[]|the field fields cannot be []",
                "\"source\":\"command\"|\"source\":\"rumour\"|this program does not know the word \"rumour\"",
                "2026-03-01T05:00:00Z|+99999-01-01T00:00:00Z|is not in the years 1900 to 9998",
                "2026-03-01T05:00:00Z|yesterday|the field occurred_at cannot be yesterday",
                "\"source\":\"command\"|\"source\":\"command\",\"words\":[1]|the field words cannot be [1]",
            })
    void every_broken_part_is_told(String part, String instead, String fault) throws IOException {
        String good = "{\"format\":\"strawbed record\",\"version\":1,\"program\":\"p\",\"events\":1}\n"
                + "{\"sequence\":1,\"id\":\"00000000-0000-7000-8000-000000000001\","
                + "\"recorded_at\":\"2026-03-01T05:00:01Z\",\"occurred_at\":\"2026-03-01T05:00:00Z\",\"zone\":\"UTC\","
                + "\"type\":\"DamNursed\",\"version\":1,\"fields\":{},\"source\":\"command\"}\n";
        assertThat(read(good)).isInstanceOf(Reading.Good.class);
        int last = good.lastIndexOf(part);
        String broken = good.substring(0, last) + instead + good.substring(last + part.length());
        assertThat(faults(read(broken)))
                .singleElement()
                .asString()
                .startsWith("line 2: ")
                .contains(fault);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                ".",
                "..",
                "../record.db",
                "sounds/0001.wav",
                "/etc/passwd",
                "sounds\\\\0001.wav",
                "..\\\\record.db",
                "C:0001.wav",
                "0001\\u0000.wav",
                "0001\\u001b[2J.wav",
                "0001\\n.wav",
                "0001\\ud800.wav"
            })
    void a_sound_with_a_way_in_its_name_is_told_with_its_line(String written) throws IOException {
        String sound = "\"sound\":\"" + written + "\"";
        for (String fact : List.of(
                "\"type\":\"DamNursed\",\"version\":1,\"fields\":{}," + sound,
                "\"type\":\"VoiceNoteTaken\",\"version\":1,\"fields\":{" + sound + "}",
                "\"type\":\"VetCalled\",\"version\":1,\"fields\":{" + sound + "}",
                "\"type\":\"TreatmentNoted\",\"version\":1,\"fields\":{\"kind\":\"vaccine\"," + sound + "}")) {
            assertThat(faults(read(oneFact(fact))))
                    .as(fact)
                    .singleElement()
                    .asString()
                    .startsWith("line 2: its sound \"")
                    .contains("is not the plain name of a file");
            assertThat(read(oneFact(fact.replace(sound, "\"sound\":\"0001.wav\""))))
                    .isInstanceOf(Reading.Good.class);
        }
    }

    private static String oneFact(String fact) {
        return "{\"format\":\"strawbed record\",\"version\":2,\"program\":\"p\",\"events\":1}\n"
                + "{\"sequence\":1,\"id\":\"00000000-0000-7000-8000-000000000001\","
                + "\"recorded_at\":\"2026-03-01T05:00:01Z\",\"occurred_at\":\"2026-03-01T05:00:00Z\",\"zone\":\"UTC\","
                + fact + ",\"source\":\"command\"}\n";
    }

    @Test
    void another_version_or_another_file_is_refused_at_its_first_line() throws IOException {
        String good = text(random(9, 3));
        assertThat(faults(read(good.replaceFirst("\"version\":2", "\"version\":3"))))
                .containsExactly("line 1: the version of the file's form is 3, and this program knows 1 to 2 only."
                        + " Use the Strawbed that wrote it.");
        assertThat(faults(read("number,dam\n1,2\n"))).singleElement().asString().contains("--map");
        assertThat(faults(read("{\"format\":\"shopping\"}\n")))
                .singleElement()
                .asString()
                .contains("--map");
        assertThat(faults(read(""))).containsExactly("line 1: the file is empty.");
    }

    @Test
    void a_line_without_end_and_bytes_that_are_no_text_are_told() throws IOException {
        String good = text(random(10, 2));
        assertThat(faults(read(good + "x".repeat(LineReader.LONGEST + 1) + "\nx\n")))
                .satisfiesExactly(
                        fault -> assertThat(fault).startsWith("line 4: the line has more than"),
                        fault -> assertThat(fault).startsWith("line 5: it is no JSON"),
                        fault -> assertThat(fault).contains("4 of 2 events"));
        byte[] bytes = good.getBytes(StandardCharsets.UTF_8);
        bytes[bytes.length - 3] = (byte) 0xFF;
        assertThat(faults(read(bytes))).singleElement().asString().startsWith("line 3: it is not UTF-8 text");
    }

    @Test
    void of_many_faults_the_first_hundred_are_told_and_none_can_move_the_cursor() throws IOException {
        Reading<?> reading = read(text(List.of()) + "\u001b[2J\u202E\n".repeat(250));
        assertThat(((Reading.Broken<?>) reading).count()).isEqualTo(251);
        assertThat(faults(reading))
                .hasSize(100)
                .allSatisfy(fault -> assertThat(fault).doesNotContain("\u001b", "\u202E", "\n"));
    }
}
