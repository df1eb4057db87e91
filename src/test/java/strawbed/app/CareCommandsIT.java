package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** The commands that tell what follows from the record. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CareCommandsIT {
    private static final Instant BIRTH = Instant.parse("2026-03-03T08:00:00Z");
    private static final CalfId CALF = new CalfId(new UUID(0x7000L, 1));

    @TempDir
    Path folder;

    /** A calf born at 02:00 on the farm's clock, fed at 03:30 from a batch that was stored at midnight. */
    private void record() {
        Clock clock = Clock.fixed(BIRTH.plusSeconds(6000), ZoneId.of("UTC"));
        try (EventJournal journal = SqliteEventJournal.open(
                folder, clock, ZoneId.of("America/Chicago"), new TimeOrderedIds(clock, new SecureRandom()))) {
            journal.append(List.of(
                    of(null, 0, new Event.ColostrumStored("9", quarts("6"), new BigDecimal("24.5"), null)),
                    of(CALF, 7200, opened()),
                    of(CALF, 7200, new Event.CalfBorn(new When.At(BIRTH))),
                    of(CALF, 7260, new Event.BreathingNoted(Term.Breathing.WELL)),
                    of(CALF, 12600, fromBatch()),
                    of(CALF, 12600, new Event.ColostrumFed(quarts("3"), Term.FeedingMethod.BOTTLE, null))));
        }
    }

    private static NewEvent of(@Nullable CalfId calf, long secondsFromMidnight, Event event) {
        return new NewEvent(
                calf,
                event,
                BIRTH.minusSeconds(7200).plusSeconds(secondsFromMidnight),
                Provenance.of(Provenance.Source.COMMAND));
    }

    private static Event opened() {
        return new Event.CalfOpened("12", null);
    }

    private static Event fromBatch() {
        return new Event.ColostrumSourceNoted(Term.ColostrumSource.BATCH, null, "9", null);
    }

    private static Volume quarts(String count) {
        return new Volume(new BigDecimal(count), VolumeUnit.QUART);
    }

    private CommandRun run(String... args) {
        String[] all = new String[args.length + 2];
        System.arraycopy(args, 0, all, 0, args.length);
        all[args.length] = "--data";
        all[args.length + 1] = folder.toString();
        return CommandRun.of(all);
    }

    @Test
    void due_lists_what_is_urgent_the_stock_and_the_herd() {
        record();
        CommandRun due = run("due", "--at", "2026-03-03T04:00");
        assertThat(due.code()).as(due.err()).isZero();
        assertThat(due.out().lines())
                .startsWith("Due at Tue 3 Mar 04:00, most urgent for the calf first:")
                .contains("  calf 12                see it on its breastbone     LATE by 1 h 45 min, since 02:15")
                .contains(
                        "  batch 9                2.8 liters left; 24.5 percent Brix: good for a first feed; keeps until"
                                + " Thu 5 Mar 00:00")
                .contains("  First fed within 4 h       1 of 1")
                .contains("  Passive immunity           no calf tested");
    }

    @Test
    void herd_tells_the_figures_of_a_period_whole_and_in_parts() {
        record();
        CommandRun herd = run("herd", "--from", "2026-03-01", "--to", "2026-03-31", "--compare");
        assertThat(herd.code()).as(herd.err()).isZero();
        assertThat(herd.out().lines())
                .startsWith("Herd report, births from 2026-03-01 to 2026-03-31")
                .contains("  Born                         1")
                .contains("  First fed within 4 h         1 of 1")
                .contains("By week", "  Week of 2026-03-02           1 born")
                .contains("By weekday of the birth", "  Tuesday                      1 born")
                .contains("By shift of the birth", "  22:00 to 06:00               1 born")
                .contains(
                        "In the period before, 2026-01-29 to 2026-02-28",
                        "                               No calf was born in this period.");
        assertThat(herd.out()).contains("p chart", "Ask the herd's veterinarian.");
    }

    @Test
    void herd_as_csv_has_a_row_for_each_measure_of_each_part() {
        record();
        CommandRun herd = run("herd", "--from", "2026-03-03", "--to", "2026-03-03", "--format", "csv");
        assertThat(herd.code()).as(herd.err()).isZero();
        assertThat(herd.out().lines())
                .startsWith(
                        "first_day,last_day,parted_by,part,born,measure,count,of,not_known,estimated_births,percent,"
                                + "low_95_percent,high_95_percent,centre_percent,lower_limit_percent,upper_limit_percent,"
                                + "outside_limits")
                .contains("2026-03-03,2026-03-03,all,all,1,fed within 4 hours,1,1,0,0,,,,,,,")
                .contains("2026-03-03,2026-03-03,week,2026-03-02,1,fed within 4 hours,1,1,0,0,,,,100.0,100.0,100.0,no")
                .contains("2026-03-03,2026-03-03,weekday,monday,0,fed within 4 hours,0,0,0,0,,,,,,,");
    }

    @Test
    void herd_as_pdf_and_as_page_is_written_under_a_clear_name_or_where_it_is_wanted() throws IOException {
        record();
        CommandRun pdf = run("herd", "--from", "2026-03-03", "--to", "2026-03-03", "--format", "pdf");
        assertThat(pdf.code()).as(pdf.err()).isZero();
        Path written = folder.resolve("herd").resolve("herd-2026-03-03-2026-03-03.pdf");
        assertThat(pdf.out().strip()).isEqualTo(written.toString());
        try (PDDocument document = Loader.loadPDF(written.toFile())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Births of 2026-03-03", "1 calf born", "First fed within 4 h", "1 of 1");
        }
        Path page = folder.resolve("own.html");
        CommandRun html =
                run("herd", "--from", "2026-03-03", "--to", "2026-03-03", "--format", "html", "-o", page.toString());
        assertThat(html.code()).as(html.err()).isZero();
        assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>").contains("1 calf born");
        assertThat(run("herd", "--format", "pdf").code())
                .as("a period without births")
                .isZero();
    }

    @Test
    void herd_tells_the_meaning_of_its_figures_when_asked() {
        record();
        assertThat(run("herd", "--from", "2026-03-03", "--to", "2026-03-03", "--why")
                        .out())
                .contains("How it is meant")
                .contains("Published: 6.5 % of calves in 2007 (Utah State University Extension 2010)")
                .contains("Within the time that the protocol sets (usually 30 min)");
    }

    @Test
    void herd_without_births_or_with_bad_days_says_so() {
        assertThat(run("herd").out()).contains("No calf was born in this period.");
        record();
        for (String[] bad : new String[][] {
            {"--from", "soon"},
            {"--to", "2026-02-30"},
            {"--from", "2026-03-04", "--to", "2026-03-03"},
            {"--format", "pie"},
            {"--format", "pdf", "--paper", "napkin"},
            {"--format", "csv", "--print"},
            {"--to", "0001-01-01"}
        }) {
            String[] args = new String[bad.length + 1];
            args[0] = "herd";
            System.arraycopy(bad, 0, args, 1, bad.length);
            CommandRun herd = run(args);
            assertThat(herd.code()).as(String.join(" ", bad)).isEqualTo(2);
            assertThat(herd.err()).as(String.join(" ", bad)).matches("(?s)[A-Z-].*\\. (Give|Use) .*");
        }
    }

    @Test
    void due_tells_why_when_asked() {
        record();
        CommandRun due = run("due", "--why", "--at", "2026-03-03T04:00");
        assertThat(due.out())
                .contains("Source: Colorado State University calving notes.")
                .contains("Asked for by: 3 quarts fed by bottle, 03:30.")
                .contains("In a refrigerator it keeps 2 days; at room temperature no longer than 30 min.");
    }

    @Test
    void due_as_json_is_one_object_a_line() throws IOException {
        record();
        List<String> lines =
                run("due", "--json", "--at", "2026-03-03T04:00").out().lines().toList();
        Map<String, Object> first = JSON.std.mapFrom(lines.get(0));
        assertThat(lines).hasSizeGreaterThan(8);
        assertThat(first)
                .containsEntry("calf", "12")
                .containsEntry("what", "on breastbone")
                .containsEntry("state", "late")
                .containsEntry("due_at", "2026-03-03T08:15:00Z")
                .containsEntry("counted_from", "born");
        assertThat(String.valueOf(first.get("why"))).contains("Source:");
    }

    @Test
    void what_was_saved_later_is_not_known_yet() {
        record();
        assertThat(run("due", "--at", "2026-03-03T03:00").out()).startsWith("Nothing is due at Tue 3 Mar 03:00.");
    }

    @Test
    void calf_tells_what_is_known_judged_and_assumed() {
        record();
        CommandRun calf = run("calf", "12", "--at", "2026-03-03T04:00");
        assertThat(calf.code()).as(calf.err()).isZero();
        assertThat(calf.out())
                .startsWith("Calf 12 at Tue 3 Mar 04:00")
                .contains("First feed                   at 1 h 30 min of age: on target")
                .contains("24.5 percent Brix: good for a first feed")
                .contains("As tested when its batch was put in stock.")
                .contains("No share of birth weight: it was not weighed")
                .contains("What is due");
    }

    @Test
    void calf_as_json_has_all_its_parts() throws IOException {
        record();
        Map<String, Object> calf = JSON.std.mapFrom(
                run("calf", "12", "--json", "--at", "2026-03-03T04:00").out());
        assertThat(calf).containsEntry("calf", "12").containsEntry("at", "2026-03-03T10:00:00Z");
        assertThat((List<?>) calf.get("parts")).hasSize(6);
    }

    @Test
    void a_calf_that_is_not_there_and_a_time_that_is_none_are_told() {
        record();
        assertThat(run("calf", "99").code()).isEqualTo(2);
        assertThat(run("calf", "99").err()).contains("There is no calf 99 in the record.");
        assertThat(run("due", "--at", "half past three").code()).isEqualTo(2);
        assertThat(run("due", "--at", "half past three").err()).contains("is not a time");
    }

    @Test
    void without_a_record_nothing_is_due() {
        CommandRun due = run("due", "--at", "2026-03-03T04:00");
        assertThat(due.code()).isZero();
        assertThat(due.out()).contains("Nothing is due").contains("No calf was born in the 30 days up to now.");
        assertThat(folder).isEmptyDirectory();
    }
}
