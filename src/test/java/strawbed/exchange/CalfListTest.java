package strawbed.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.event.When;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalfListTest {
    private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final ColumnMap MAP =
            ColumnMap.of(Map.of("number", "Ear", "dam", "Cow", "born", "Date", "sex", "Sex", "breed", "Breed"));

    @TempDir
    Path folder;

    private Reading<List<CalfRow>> read(String csv) throws IOException {
        return read(csv.getBytes(StandardCharsets.UTF_8));
    }

    private Reading<List<CalfRow>> read(byte[] csv) throws IOException {
        Path file = folder.resolve("calves.csv");
        Files.write(file, csv);
        return CalfList.read(file, MAP, ZONE, NOW);
    }

    private static List<CalfRow> good(Reading<List<CalfRow>> reading) {
        assertThat(reading).isInstanceOf(Reading.Good.class);
        return ((Reading.Good<List<CalfRow>>) reading).content();
    }

    private static List<String> faults(Reading<?> reading) {
        assertThat(reading).isInstanceOf(Reading.Broken.class);
        return ((Reading.Broken<?>) reading)
                .faults().stream().map(Fault::sentence).toList();
    }

    @Test
    void rows_become_calves_that_somebody_typed() throws IOException {
        List<CalfRow> rows = good(read(String.join(
                "\r\n",
                "\uFEFFSex,Ear,Cow,Date,Breed,Other",
                "heifer,0312,\"\u0141\u0105ka, \u00f1\",2026-11-24 05:30,Holstein,x",
                ",,88,,,",
                "",
                "")));
        assertThat(rows)
                .containsExactly(
                        new CalfRow(
                                2,
                                "0312",
                                "\u0141\u0105ka, \u00f1",
                                new When.At(Instant.parse("2026-11-24T11:30:00Z")),
                                Term.Sex.FEMALE,
                                "Holstein"),
                        new CalfRow(3, null, "88", null, null, null));

        List<NewEvent> events = CalfList.events(rows, UUID::randomUUID, NOW);
        assertThat(events)
                .extracting(NewEvent::event)
                .containsExactly(
                        new Event.CalfOpened("0312", "\u0141\u0105ka, \u00f1"),
                        new Event.CalfBorn(new When.At(Instant.parse("2026-11-24T11:30:00Z"))),
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.BreedNoted("Holstein"),
                        new Event.CalfOpened(null, "88"));
        assertThat(events)
                .allSatisfy(event -> assertThat(event.provenance()).isEqualTo(Provenance.of(Provenance.Source.IMPORT)));
        assertThat(events.stream().map(NewEvent::calf).distinct()).hasSize(2);
    }

    /** Chicago: UTC-6, in summer UTC-5; clocks went forward on 2026-03-08 and back on 2026-11-01, at two o'clock. */
    @ParameterizedTest
    @CsvSource({
        "2026-11-20,2026-11-20T06:00:00Z,2026-11-21T05:59:59Z",
        "2026-11-25,2026-11-25T06:00:00Z,2026-11-25T12:00:00Z",
        "2026-11-20T05:30:10,2026-11-20T11:30:10Z,",
        "2026-11-20T05:30Z,2026-11-20T05:30:00Z,",
        "2026-11-20 05:30+01:00,2026-11-20T04:30:00Z,",
        "2026-11-01 01:30,2026-11-01T06:30:00Z,2026-11-01T07:30:00Z",
    })
    void a_birth_is_known_as_well_as_it_was_written(String cell, Instant from, Instant to) throws IOException {
        When expected = to == null ? new When.At(from) : new When.Between(from, to);
        assertThat(good(read("Ear,Cow,Date,Sex,Breed\n1,," + cell + ",,\n")))
                .extracting(CalfRow::born)
                .containsExactly(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12345,,,,|is no number that a calf can be called by",
                "-1,,,,|is no number that a calf can be called by",
                "=1,,,,|is no number that a calf can be called by",
                "7,,03/04/2026,,|is no date of birth",
                "7,,2026-02-30,,|is no date of birth",
                "7,,2026-03-08 02:30,,|the clocks were put forward",
                "7,,2026-11-26,,|lies ahead",
                "7,,1926-11-26,,|more than 30 years back",
                "7,,,steer,|is no sex",
                ",,,male,|neither a number nor a dam",
                "7,abcdefghijabcdefghijabcdefghijabcdefghijabcdefghijabcdefghijk,,,|longer than 60",
                "7,,|3 cells, and the heading 5",
                "1,,,,|stands in line 2 already",
                "01,,,,|stands in line 2 already",
            })
    void every_bad_row_is_told_with_its_line(String row, String fault) throws IOException {
        assertThat(faults(read("Ear,Cow,Date,Sex,Breed\n1,,,,\n" + row + "\n2,\"two\nlines\",,,\n" + "x,,,,\n")))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("line 3: ").contains(fault),
                        second -> assertThat(second).startsWith("line 4: the dam \"two lines\""),
                        third -> assertThat(third).startsWith("line 6: \"x\" is no number"));
    }

    @Test
    void what_is_no_table_is_told() throws IOException {
        assertThat(faults(read(""))).containsExactly("line 1: the file is empty.");
        assertThat(faults(read("Ear;Cow;Date;Sex;Breed\n")))
                .singleElement()
                .asString()
                .contains("there is no column \"Ear\"", "separated by commas");
        assertThat(faults(read("Ear,Ear,Cow,Date,Sex,Breed\n")))
                .singleElement()
                .asString()
                .contains("there are several columns \"Ear\"");
        assertThat(faults(read("Ear,Cow,Date,Sex,Breed\n1,\"a\"b,,,\n"))).isNotEmpty();
        assertThat(faults(read("Ear,Cow,Date,Sex,Breed\n1,\"" + "never closed\n".repeat(200_000))))
                .singleElement()
                .asString()
                .contains("is a quotation mark missing?");
        assertThat(faults(read("Ear,Cow,Date,Sex,Breed\n1,Ni\u00f1a,,,\n".getBytes(StandardCharsets.ISO_8859_1))))
                .singleElement()
                .asString()
                .contains("not UTF-8");
    }

    @Test
    void a_map_needs_a_number_or_a_dam_and_known_words() {
        assertThatThrownBy(() -> ColumnMap.of(Map.of("born", "Date")))
                .isInstanceOf(ExchangeException.class)
                .hasMessageContaining("number or its dam");
        assertThatThrownBy(() -> ColumnMap.of(Map.of("number", "Ear", "colour", "C")))
                .isInstanceOf(ExchangeException.class)
                .hasMessageContaining("[number, dam, born, sex, breed]");
    }

    @Test
    void a_calf_that_is_open_already_is_told() {
        Told told = new Told().open("A", "05:00", "312", "88").open("B", "05:00", null, "90");
        List<CalfRow> rows = List.of(
                new CalfRow(2, "0312", null, null, null, null),
                new CalfRow(3, null, "90", null, null, null),
                new CalfRow(4, null, "88", null, null, null));
        assertThat(faults(CalfList.against(rows, told.herd())))
                .containsExactly(
                        "line 2: a calf 0312 is open in the record already.",
                        "line 3: a calf of cow 90 without a number is open in the record already.");
        assertThat(CalfList.against(rows, new Told().herd())).isEqualTo(new Reading.Good<>(rows));
    }
}
