package strawbed.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.journal.EventSource;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.testkit.ListedParts;

/** Source of the form: RFC 4180, section 2 (from memory). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SheetsTest {
    private static String events(List<RecordedEvent> events) throws IOException {
        StringBuilder out = new StringBuilder();
        EventSheet.write(EventSource.of(events), out);
        return out.toString();
    }

    private static String calves(List<RecordedEvent> events) throws IOException {
        StringBuilder out = new StringBuilder();
        CalfSheet.write(new ListedParts(events), Told.time("40:00"), out);
        return out.toString();
    }

    private static List<Map<String, String>> rows(String csv) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(csv, format)) {
            return parser.getRecords().stream().map(CSVRecord::toMap).toList();
        }
    }

    /** The whole of RFC 4180 in one loop, apart from any library: the cells of each row, or an error. */
    private static List<List<String>> plain(String csv) {
        List<List<String>> rows = new ArrayList<>();
        int at = 0;
        while (at < csv.length()) {
            List<String> row = new ArrayList<>();
            boolean more = true;
            while (more) {
                StringBuilder cell = new StringBuilder();
                if (csv.charAt(at) == '"') {
                    at++;
                    while (csv.charAt(at) != '"' || (at + 1 < csv.length() && csv.charAt(at + 1) == '"')) {
                        at += csv.charAt(at) == '"' ? 1 : 0;
                        cell.append(csv.charAt(at++));
                    }
                    at++;
                } else {
                    while (",\r\n\"".indexOf(csv.charAt(at)) < 0) {
                        cell.append(csv.charAt(at++));
                    }
                }
                row.add(cell.toString());
                more = csv.charAt(at) == ',';
                assertThat(more || csv.startsWith("\r\n", at))
                        .as("a cell ends at %s", at)
                        .isTrue();
                at += more ? 1 : 2;
            }
            rows.add(row);
        }
        return rows;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_row_for_each_event_in_the_form_of_the_standard(long seed) throws IOException {
        List<RecordedEvent> events = RecordFileTest.random(seed, 400);
        String csv = events(events);
        List<List<String>> plain = plain(csv);

        assertThat(plain)
                .as("seed %s", seed)
                .hasSize(401)
                .allSatisfy(row -> assertThat(row).hasSameSizeAs(EventSheet.COLUMNS));
        assertThat(plain.get(0)).isEqualTo(EventSheet.COLUMNS).doesNotHaveDuplicates();
        assertThat(rows(csv)).extracting(row -> List.copyOf(row.values())).isEqualTo(plain.subList(1, 401));
        assertThat(rows(csv))
                .extracting(row -> row.get("id"))
                .isEqualTo(events.stream().map(event -> event.id().toString()).toList());
    }

    @Test
    void every_kind_of_event_has_columns_for_all_its_parts() throws IOException {
        for (long seed = 0; seed < 20; seed++) {
            List<RecordedEvent> events = RecordFileTest.random(seed, 200);
            for (Map<String, String> row : rows(events(events))) {
                assertThat(row.get("type")).isNotEmpty();
            }
            assertThat(plain(calves(
                            new strawbed.calf.RandomEvents(seed).told(150).events())))
                    .as("seed %s", seed)
                    .allSatisfy(row -> assertThat(row).hasSameSizeAs(CalfSheet.COLUMNS));
        }
    }

    /** 1 US quart is 0.946352946 L, 1 lb is 0.45359237 kg (NIST Handbook 44, Appendix C); 102.2 F is 39 C (NIST SP 811). */
    @Test
    void amounts_stand_as_said_and_converted() throws IOException {
        List<RecordedEvent> told = new Told()
                .a(
                        "05:00",
                        new Event.ColostrumFed(new Volume(new BigDecimal("2"), VolumeUnit.QUART), null, null),
                        new Event.CalfWeighed(new Mass(new BigDecimal("100"), MassUnit.POUND), null),
                        new Event.TemperatureTaken(
                                new Temperature(new BigDecimal("102.2"), TemperatureUnit.FAHRENHEIT)),
                        new Event.BarnClimateNoted(
                                new Temperature(new BigDecimal("-12.5"), TemperatureUnit.CELSIUS), null))
                .events();
        List<Map<String, String>> rows = rows(events(told));
        assertThat(rows.get(0))
                .containsEntry("volume_amount", "2")
                .containsEntry("volume_unit", "quart")
                .containsEntry("volume_litres", "1.892705892")
                .containsEntry("weight_kg", "")
                .containsEntry("temperature_celsius", "")
                .containsEntry("occurred_at_utc", "2026-03-01T05:00:00Z")
                .containsEntry("occurred_local", "2026-02-28T23:00:00");
        assertThat(rows.get(1)).containsEntry("weight_amount", "100").containsEntry("weight_kg", "45.359237");
        assertThat(rows.get(2)).containsEntry("temperature_celsius", "39.00");
        assertThat(rows.get(3)).containsEntry("temperature_amount", "-12.5").containsEntry("humidity_percent", "");
    }

    @Test
    void what_no_longer_counts_says_so() throws IOException {
        Told told = new Told().open("A", "05:00", "412", "88").a("05:01", new Event.SexNoted(Term.Sex.MALE));
        EventId wrong = told.last();
        told.withdraw(wrong);
        assertThat(rows(events(told.events())))
                .extracting(
                        row -> row.get("withdrawn"), row -> row.get("event_withdrawn"), row -> row.get("calf_number"))
                .containsExactly(tuple("no", "", "412"), tuple("yes", "", "412"), tuple("no", wrong.toString(), "412"));
    }

    @Test
    void a_row_for_each_calf_with_what_is_known_of_it() throws IOException {
        List<RecordedEvent> told = new Told()
                .open("A", "05:00", "412", "88")
                .a(
                        "05:00",
                        new Event.CalfBorn(Told.at("05:00")),
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.BreedNoted("Holstein"),
                        Told.score(2),
                        new Event.NavelDipped(null, null),
                        new Event.ColostrumTestedByBrix(new BigDecimal("24.5")))
                .a("06:30", new Event.ColostrumFed(new Volume(new BigDecimal("3"), VolumeUnit.LITRE), null, null))
                .a("06:45", new Event.CalfWeighed(new Mass(new BigDecimal("40"), MassUnit.KILOGRAM), null))
                .a("06:50", new Event.EarTagFitted("0098", Term.TagScheme.FARM))
                .open("B", "07:00", null, "90")
                .events();
        List<Map<String, String>> rows = rows(calves(told));
        // 3 L of 24.5 % Brix: 3 x (5.6143 x 24.5 - 60.22) = 232.0 g (line of Quigley 2013).
        assertThat(rows.get(0))
                .containsEntry("number", "412")
                .containsEntry("dam", "88")
                .containsEntry("sex", "female")
                .containsEntry("born_local", "2026-02-28T23:00:00")
                .containsEntry("born_known", "timed")
                .containsEntry("zone", "America/Chicago")
                .containsEntry("ease", "")
                .containsEntry("ease_score_1_to_5", "2")
                .containsEntry("first_feed_age_hours", "1.50")
                .containsEntry("first_dose_litres", "3")
                .containsEntry("brix_percent", "24.5")
                .containsEntry("antibody_g", "232.0")
                .containsEntry("dips", "1")
                .containsEntry("weight_kg", "40")
                .containsEntry("tag", "0098")
                .containsEntry("passive_immunity", "")
                .containsEntry("died_local", "");
        Map<String, String> unknown = rows.get(1);
        assertThat(unknown).containsEntry("born_known", "record opened").containsEntry("dam", "90");
        for (String column : List.of("number", "first_dose_litres", "dips", "weight_kg", "antibody_g", "died_local")) {
            assertThat(unknown).as(column).containsEntry(column, "");
        }
    }

    @Test
    void a_window_of_birth_is_told_by_its_ends() throws IOException {
        String csv = calves(new Told()
                .open("A", "12:00", "1", null)
                .a("12:00", new Event.CalfBorn(new When.Between(Told.time("10:00"), Told.time("12:00"))))
                .events());
        assertThat(rows(csv).get(0))
                .containsEntry("born_local", "2026-03-01T05:00:00")
                .containsEntry("born_known", "middle of window")
                .containsEntry("born_earliest_local", "2026-03-01T04:00:00")
                .containsEntry("born_latest_local", "2026-03-01T06:00:00");
    }

    /** Signs that begin a formula: Open Worldwide Application Security Project, CSV Injection (from memory). */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1+1",
                "@SUM(A1)",
                "=cmd|' /C calc'!A0",
                "=HYPERLINK(\"http://example.com\",\"x\")",
                "\t=1",
                "\r=1",
                "\n=1",
                "\u0000=1",
                " =1",
                "\u00a0=1",
                "\u200B=1",
                "\uFEFF=1",
                "\u202E=1",
                "\uFF1D1",
                "\uFF0B1",
                "\uFF0D1",
                "\uFF20x"
            })
    void no_text_can_be_run_as_a_formula(String hostile) throws IOException {
        List<RecordedEvent> told = new Told()
                .open("A", "05:00", hostile, hostile)
                .a("05:01", new Event.CalfMoved(hostile), new Event.BreedNoted(hostile))
                .events();
        for (Map<String, String> row : rows(events(told))) {
            assertThat(row.values())
                    .allSatisfy(cell ->
                            assertThat(cell).doesNotMatch("(?s)[\\s\\p{Cf}\\p{Z}]*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20].*"));
        }
        assertThat(rows(calves(told)).get(0).get("dam")).startsWith("'");
        assertThat(rows(events(told)).get(1).get("place")).startsWith("'");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "`say \"moo\", twice`|`say \"moo\", twice`",
                "`one\ntwo`|`one two`",
                "`Robert'); DROP TABLE event;--`|`Robert'); DROP TABLE event;--`",
                "`\u05e2\u05d2\u05dc \u202Egnp.exe`|`\u05e2\u05d2\u05dc gnp.exe`",
                "`\u0141\u0105ka za \u017ar\u00f3d\u0142em`|`\u0141\u0105ka za \u017ar\u00f3d\u0142em`",
                "`Ni\u00f1a de la Monta\u00f1a`|`Ni\u00f1a de la Monta\u00f1a`",
                "`\u001b[31mred\u0007`|`[31mred`",
                "`abcdefghijabcdefghijabcdefghijabcdefghijabcdefghijabcdefghij`|`abcdefghijabcdefghijabcdefghijabcdefghijabcdefghijabcdefghij`",
                "`0042`|`0042`",
            })
    void letters_of_all_scripts_stay_and_what_is_not_seen_goes(String told, String cell) throws IOException {
        List<RecordedEvent> events = new Told()
                .open("A", "05:00", null, told)
                .a("05:01", new Event.CalfMoved(told), new Event.SignNoted(Term.Sign.WEAK, told, told))
                .events();
        List<Map<String, String>> rows = rows(events(events));
        assertThat(rows.get(0)).containsEntry("dam", cell);
        assertThat(rows.get(1)).containsEntry("place", cell);
        assertThat(rows.get(2)).containsEntry("place", cell).containsEntry("finding", cell);
        assertThat(rows(calves(events)).get(0)).containsEntry("dam", cell);
        assertThat(plain(events(events)).get(1)).contains(cell);
    }
}
