package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.Provenance.Source;
import strawbed.event.Term;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.EventJournal;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.sqlite.SqliteEventJournal;

/** The command that hands over a shift. The farm's zone is that of the tests, America/Chicago. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HandoverCommandIT {
    /** 02:00 on the farm's clock. */
    private static final Instant BIRTH = Instant.parse("2026-03-03T08:00:00Z");

    @TempDir
    Path folder;

    private void record(int calves) {
        Clock clock = Clock.fixed(BIRTH.plusSeconds(3600), ZoneId.of("UTC"));
        try (EventJournal journal = SqliteEventJournal.open(
                folder, clock, ZoneId.of("America/Chicago"), new TimeOrderedIds(clock, new SecureRandom()))) {
            List<NewEvent> events = new ArrayList<>();
            for (int i = 0; i < calves; i++) {
                CalfId calf = new CalfId(new UUID(0x7000L, i));
                events.add(of(calf, new Event.CalfOpened(String.valueOf(12 + i), String.valueOf(300 + i))));
                events.add(of(calf, new Event.CalfBorn(new When.At(BIRTH))));
                events.add(of(calf, new Event.SexNoted(Term.Sex.FEMALE)));
            }
            journal.append(events);
            journal.keep(new NewOpenStatement(
                    BIRTH.plusSeconds(60), Duration.ofSeconds(2), "unsure", List.of("fed two quarts"), null, "a.wav"));
        }
    }

    private static NewEvent of(CalfId calf, Event event) {
        return new NewEvent(calf, event, BIRTH, Provenance.of(Source.VOICE).by("Łucja Wiśniewska"));
    }

    private CommandRun run(String... args) {
        List<String> all = new ArrayList<>(List.of("handover", "--data", folder.toString()));
        all.addAll(List.of(args));
        return CommandRun.of(all.toArray(String[]::new));
    }

    private static String text(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void the_sheet_of_the_last_twelve_hours_goes_into_the_records_folder() throws IOException {
        record(1);
        CommandRun run = run("--at", "2026-03-03T05:30");
        assertThat(run.code()).as(run.err()).isZero();
        Path file = folder.resolve("handovers").resolve("handover-2026-03-03-0530.pdf");
        assertThat(run.out().strip()).isEqualTo(file.toString());
        assertThat(text(file))
                .contains("Mon 2 Mar 17:30 to Tue 3 Mar 05:30", "Łucja Wiśniewska", "page 1 of 1")
                .contains(
                        "calf 12",
                        "First breath within 30 s.",
                        "heifer, dam 300",
                        "“fed two quarts”",
                        "LATE by 3 h, since 02:30 dip navel",
                        "Taken over by");
    }

    @Test
    void a_sheet_of_an_earlier_time_has_nothing_that_was_kept_later() throws IOException {
        record(1);
        CommandRun run = run("--at", "2026-03-03T02:05", "--from", "2026-03-02T14:00");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(text(Path.of(run.out().strip())))
                .contains("Not confirmed none")
                .doesNotContain("fed two quarts");
    }

    @Test
    void the_farms_name_stands_on_it_and_a_broken_file_of_settings_stops_no_sheet() throws IOException {
        record(1);
        Path named = folder.resolve("named.pdf");
        Files.writeString(folder.resolve(StationFile.NAME), "farm.name = Łąka na Wzgórzu\n");
        assertThat(run("--at", "2026-03-03T05:30", "-o", named.toString()).code())
                .isZero();
        assertThat(text(named)).contains("Łąka na Wzgórzu");
        Path nameless = folder.resolve("nameless.pdf");
        Files.writeString(folder.resolve(StationFile.NAME), "farm.name = Łąka na Wzgórzu\nno.such.line = 1\n");
        assertThat(run("--at", "2026-03-03T05:30", "-o", nameless.toString()).code())
                .isZero();
        assertThat(text(nameless)).doesNotContain("Wzgórzu").contains("calf 12");
    }

    @Test
    void to_be_printed_it_needs_a_chosen_printer_and_is_written_all_the_same() {
        record(1);
        CommandRun run = run("--at", "2026-03-03T05:30", "--print");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("No printer is chosen for sheets", "strawbed printer use NAME --for sheets");
        assertThat(folder.resolve("handovers").resolve("handover-2026-03-03-0530.pdf"))
                .exists();
        assertThat(folder.resolve("print-queue")).doesNotExist();
    }

    @Test
    void the_same_record_and_time_give_the_same_bytes() throws IOException {
        record(3);
        Path one = folder.resolve("one.pdf");
        Path other = folder.resolve("other.pdf");
        for (Path file : List.of(one, other)) {
            CommandRun run = run("--at", "2026-03-03T05:30", "--paper", "A4", "-o", file.toString());
            assertThat(run.code()).as(run.err()).isZero();
        }
        assertThat(other).hasSameBinaryContentAs(one);
    }

    @Test
    void a_night_of_forty_calves_goes_on_to_further_pages_and_leaves_none_out() throws IOException {
        record(40);
        Path file = folder.resolve("night.pdf");
        assertThat(run("--from", "2026-03-02T18:00", "--at", "2026-03-03T04:00", "-o", file.toString())
                        .code())
                .isZero();
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(document.getNumberOfPages()).isGreaterThan(1);
        }
        String text = text(file);
        for (int i = 0; i < 40; i++) {
            assertThat(text).contains("calf " + (12 + i), "dam " + (300 + i));
        }
    }

    @Test
    void a_time_that_is_none_or_a_shift_that_ends_before_it_begins_is_told() {
        record(1);
        clearError(run("--at", "half past five"), "\"half past five\" is not a time");
        clearError(run("--from", "yesterday"), "\"yesterday\" is not a time");
        clearError(
                run("--from", "2026-03-03T06:00", "--at", "2026-03-03T05:30"),
                "would begin at 2026-03-03T06:00 and hand over at 2026-03-03T05:30",
                "Give a --from that is before --at");
        clearError(run("--from", "2025-03-03T06:00", "--at", "2026-03-03T05:30"), "45 days at most");
        clearError(run("--paper", "a3"), "There is no paper \"a3\"", "letter");
        assertThat(folder.resolve("handovers")).doesNotExist();
    }

    @Test
    void without_a_record_there_is_nothing_to_hand_over() {
        clearError(run(), "There is no record in " + folder, "--data");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_file_that_cannot_be_written_is_told() throws IOException {
        record(1);
        Path file = Files.writeString(folder.resolve("a-file"), "text");
        clearError(run("-o", file.resolve("sheet.pdf").toString()), "The handover sheet cannot be written", "-o");
    }

    private static void clearError(CommandRun run, String... parts) {
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.err()).contains(parts).doesNotContain("Exception");
        assertThat(run.out()).isEmpty();
    }
}
