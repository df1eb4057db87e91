package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Event.CardPrinted;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.Provenance.Source;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.report.pdf.CardPaper;
import strawbed.text.Messages;

/** The command that prints cards, and what the record then knows of it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CardCommandIT {
    private static final ZoneId BARN = ZoneId.of("America/Chicago");
    private static final Instant BIRTH = Instant.parse("2026-03-03T08:00:00Z");
    private static final CalfId TWELVE = new CalfId(new UUID(0x7000L, 0));

    @TempDir
    Path folder;

    /** Calves 12, 13 and 14; the last one is dead. */
    @BeforeEach
    void record() {
        List<NewEvent> events = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            CalfId calf = new CalfId(new UUID(0x7000L, i));
            events.add(of(calf, new Event.CalfOpened(String.valueOf(12 + i), "300")));
            events.add(of(calf, new Event.CalfBorn(new When.At(BIRTH))));
        }
        events.add(
                of(new CalfId(new UUID(0x7000L, 2)), new Event.CalfDied(BIRTH.plusSeconds(600), Term.DeathTime.LATER)));
        try (EventJournal journal = open()) {
            journal.append(events);
        }
    }

    private SqliteEventJournal open() {
        Clock clock = Clock.fixed(BIRTH.plusSeconds(3600), BARN);
        return SqliteEventJournal.open(data(), clock, BARN, new TimeOrderedIds(clock, new SecureRandom()));
    }

    private Path data() {
        return folder.resolve("data");
    }

    private static NewEvent of(CalfId calf, Event event) {
        return new NewEvent(calf, event, BIRTH, Provenance.of(Source.VOICE));
    }

    private CommandRun run(String... args) {
        List<String> all = new ArrayList<>(List.of("card", "--data", data().toString()));
        all.addAll(List.of(args));
        return CommandRun.of(all.toArray(String[]::new));
    }

    private List<CardPrinted> prints() {
        try (EventJournal journal = open()) {
            return journal.all().stream()
                    .map(RecordedEvent::event)
                    .filter(CardPrinted.class::isInstance)
                    .map(CardPrinted.class::cast)
                    .toList();
        }
    }

    private static String text(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(file))) {
            return new PDFTextStripper().getText(document);
        }
    }

    private Path card(String name) {
        return data().resolve("cards").resolve(name);
    }

    @Test
    void each_print_has_the_next_number_and_stands_in_the_record() throws IOException {
        CommandRun first = run("12");
        assertThat(first.code()).as(first.err()).isZero();
        assertThat(first.out().strip()).isEqualTo(card("card-calf-12.pdf").toString());
        assertThat(first.err()).isEmpty();
        assertThat(text(card("card-calf-12.pdf"))).contains("Print 1, ").doesNotContain("in place of");
        assertThat(run("12", "--upright", "--a6").code()).isZero();
        assertThat(text(card("card-calf-12-A6-upright.pdf"))).contains("Print 2, ", "in place of print 1, ");
        assertThat(run(new UUID(0x7000L, 1).toString().toUpperCase(Locale.ROOT)).code())
                .as("the id as the code has it")
                .isZero();
        assertThat(text(card("card-calf-13.pdf"))).contains("Print 1, ");
        assertThat(prints())
                .containsExactly(
                        new CardPrinted(1, Term.Printout.HUTCH_CARD, Term.CardSize.FOUR_BY_SIX_INCH),
                        new CardPrinted(2, Term.Printout.HUTCH_CARD, Term.CardSize.A6_UPRIGHT),
                        new CardPrinted(1, Term.Printout.HUTCH_CARD, Term.CardSize.FOUR_BY_SIX_INCH));
        CommandRun account = CommandRun.of("calf", "12", "--data", data().toString());
        assertThat(account.out()).contains("hutch card printed, print 1", "hutch card printed, print 2");
    }

    @Test
    void while_the_recorder_holds_the_record_the_card_is_a_copy() throws IOException {
        CommandRun run;
        try (EventJournal recorder = open()) {
            run = run("12");
            assertThat(recorder.all()).noneMatch(recorded -> recorded.event() instanceof CardPrinted);
        }
        assertThat(run.code()).isZero();
        assertThat(run.err().strip())
                .isEqualTo(
                        "This is a copy without a number and not noted in the record, because the recorder, or another"
                                + " program, holds it.");
        assertThat(text(card("card-calf-12.pdf"))).contains("Copy, ").doesNotContain("Print ");
        assertThat(run("12").code()).isZero();
        assertThat(text(card("card-calf-12.pdf"))).contains("Print 1, ");
    }

    @Test
    void of_a_dead_calf_there_is_a_record_sheet() throws IOException {
        assertThat(run("14").code()).isZero();
        assertThat(text(card("record-calf-14.pdf"))).contains("DEAD", "told", "Feeds", "not recorded");
        assertThat(prints())
                .containsExactly(new CardPrinted(1, Term.Printout.RECORD_SHEET, Term.CardSize.FOUR_BY_SIX_INCH));
    }

    @Test
    void several_calves_have_a_file_each_or_share_sheets() throws IOException {
        CommandRun each = run("12", "13", "12");
        assertThat(each.out().lines())
                .containsExactly(
                        card("card-calf-12.pdf").toString(),
                        card("card-calf-13.pdf").toString());
        Path sheet = folder.resolve("sheet.pdf");
        CommandRun sheets = run("12", "13", "14", "--paper", "a4", "-o", sheet.toString());
        assertThat(sheets.code()).as(sheets.err()).isZero();
        assertThat(sheets.out().strip()).isEqualTo(sheet.toString());
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(sheet))) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
        }
        assertThat(prints()).extracting(CardPrinted::number).containsExactly(1, 1, 2, 2, 1);
        assertThat(prints().get(2).size()).as("a6 is usual on a4").isEqualTo(Term.CardSize.A6);
        assertThat(run("12", "--paper", "letter").out().strip())
                .isEqualTo(card("cards-calf-12-letter.pdf").toString());
        assertThat(prints().get(5).size()).isEqualTo(Term.CardSize.FOUR_BY_SIX_INCH);
    }

    @Test
    void what_cannot_be_printed_is_told_and_notes_nothing() {
        refused("One file holds one card", "12", "13", "-o", "x.pdf");
        refused("On a sheet the cards lie", "12", "--upright", "--paper", "a4");
        refused("There is no paper \"a5\"", "12", "--paper", "a5");
        refused("There is no card of the size \"5x7\"", "12", "--card", "5x7");
        refused("--a6 and --card 4x6", "12", "--card", "4x6", "--a6");
        refused("There is no calf 99", "12", "99");
        refused(
                "cannot be written",
                "12",
                "-o",
                data().resolve("record.db").resolve("x.pdf").toString());
        assertThat(prints()).isEmpty();
        assertThat(data().resolve("cards")).doesNotExist();
    }

    private void refused(String why, String... args) {
        CommandRun run = run(args);
        assertThat(run.code()).as(run.err()).isEqualTo(2);
        assertThat(run.err()).contains(why);
    }

    @Test
    void no_record_is_begun_for_a_card() {
        CommandRun run =
                CommandRun.of("card", "12", "--data", folder.resolve("none").toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void reading_commands_note_nothing() {
        assertThat(CommandRun.of("due", "--data", data().toString()).code()).isZero();
        assertThat(CommandRun.of("calf", "12", "--data", data().toString()).code())
                .isZero();
        assertThat(prints()).isEmpty();
    }

    @Test
    void the_same_record_time_and_number_give_the_same_bytes() throws IOException {
        Settings settings = new Settings(data(), Optional.empty(), Clock.fixed(BIRTH.plusSeconds(5400), BARN), BARN);
        CardPrinting.Wanted wanted;
        try (SqliteEventJournal journal = open()) {
            var herd = HerdReading.around(journal, "12", BIRTH.plusSeconds(5400), Instant.MAX);
            wanted = new CardPrinting.Wanted(herd.calf(TWELVE).orElseThrow(), herd);
        }
        CardPrinting printing = new CardPrinting(new Messages(Locale.US), settings, prints -> Optional.empty());
        CardPrinting refusing =
                new CardPrinting(new Messages(Locale.US), settings, prints -> Optional.of("The disk is full."));
        for (CardPaper paper : CardPaper.values()) {
            Path one = printing.print(wanted, paper, folder.resolve("one.pdf")).file();
            Path other =
                    printing.print(wanted, paper, folder.resolve("other.pdf")).file();
            assertThat(Files.readAllBytes(other)).isEqualTo(Files.readAllBytes(one));
            Path copy =
                    refusing.print(wanted, paper, folder.resolve("copy.pdf")).file();
            assertThat(text(copy)).contains("Copy, ");
        }
    }
}
