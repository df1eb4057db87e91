package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.dialog.Prompt;
import strawbed.print.FakePrinters;
import strawbed.print.JobState;
import strawbed.print.PrintFault;
import strawbed.print.PrintJob;
import strawbed.print.PrintUse;
import strawbed.report.pdf.CardPaper;
import strawbed.station.Paper;
import strawbed.station.PaperState;
import strawbed.station.PaperStep;
import strawbed.station.Papers;
import strawbed.testkit.Barn;
import strawbed.text.Language;
import strawbed.text.Messages;

/** "Print the card" said to the recorder, and what waits beside its work. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 1, unit = TimeUnit.MINUTES)
class PrintWorkTest {
    private static final Messages ENGLISH = new Messages(Locale.US);
    private static final Instant NOW = Instant.parse("2026-03-03T05:30:00Z");
    private static final Duration LONG = Duration.ofSeconds(30);
    private static final Duration SHORT = Duration.ofMillis(50);
    private static final String REFUSAL = "The printer CARDS is out of paper. Fill it.";

    @TempDir
    Path data;

    private final FakePrinters printers = new FakePrinters();
    private final Herd herd = Barn.with("312").herd();

    @BeforeEach
    void choose() throws IOException {
        Files.writeString(data.resolve("station.properties"), "printer.cards = CARDS\n");
    }

    private Settings settings() {
        return new Settings(data, Optional.empty(), Clock.fixed(NOW, ZoneOffset.UTC), ZoneOffset.UTC);
    }

    private PrintWork work(Duration patience, Duration ofAnAnswer) {
        return new PrintWork(settings(), ENGLISH, printers, patience, ofAnAnswer);
    }

    private Answers.Said printCard(PrintWork work) {
        CalfRecord calf = herd.byNumber("312").orElseThrow();
        Messages messages = new Messages(Locale.US);
        CardPrinting.Printed printed = new CardPrinting(messages, settings(), prints -> Optional.empty())
                .print(
                        new CardPrinting.Wanted(calf, herd),
                        CardPaper.FOUR_BY_SIX_INCH,
                        data.resolve("cards/card-calf-312.pdf"));
        Prompt written = new Prompt.CardWritten(calf.id(), printed.file().toString(), null);
        return new Answers(messages, settings()).said(written, herd, work);
    }

    private static String awaitNews(PrintWork work) throws InterruptedException {
        return awaitLine(work, work::tryAgain);
    }

    /** @param between each look; a try tells of its own */
    private static String awaitLine(PrintWork work, Runnable between) throws InterruptedException {
        String line = work.news();
        while (line == null) {
            between.run();
            TimeUnit.MILLISECONDS.sleep(5);
            line = work.news();
        }
        return line;
    }

    @Test
    void the_card_is_written_and_sent_once_though_it_is_shown_and_spoken() throws IOException {
        try (PrintWork work = work(LONG, LONG)) {
            assertThat(printCard(work))
                    .isEqualTo(new Answers.Said("Card sent to the printer.", "Card sent to the printer."));
            assertThat(work.news()).isNull();
        }
        assertThat(printers.taken()).hasSize(1);
        assertThat(data.resolve("cards/card-calf-312.pdf")).hasSameBinaryContentAs(data.resolve("print-queue/1.pdf"));
    }

    @Test
    void that_a_card_is_a_copy_is_told_beside_what_the_printer_did() {
        CalfRecord calf = herd.byNumber("312").orElseThrow();
        Prompt copied =
                new Prompt.CardWritten(calf.id(), data.resolve("card.pdf").toString(), "the disk is full.");
        PrintedFile.write(data.resolve("card.pdf"), new byte[] {1}, "The card");
        try (PrintWork work = work(LONG, LONG)) {
            Answers.Said said = new Answers(new Messages(Locale.US), settings()).said(copied, herd, work);
            assertThat(said.shown()).contains("as a copy", "the disk is full.").endsWith(" Card sent to the printer.");
            assertThat(said.spoken()).contains("as a copy").endsWith(" Card sent to the printer.");
        }
    }

    @Test
    void without_a_chosen_printer_it_says_where_the_card_was_written() throws IOException {
        Files.delete(data.resolve("station.properties"));
        try (PrintWork work = work(LONG, LONG)) {
            assertThat(printCard(work).shown()).isEqualTo("Card written: " + data.resolve("cards/card-calf-312.pdf"));
        }
        assertThat(data.resolve("print-queue")).doesNotExist();
    }

    @Test
    void a_refused_card_waits_with_its_reason_on_the_screen_and_its_going_through_is_told_once() throws Exception {
        printers.refuse(REFUSAL);
        try (PrintWork work = work(LONG, LONG)) {
            Answers.Said said = printCard(work);
            assertThat(said.shown())
                    .isEqualTo(
                            "The printer did not take the card of calf 312; it waits and is tried again. " + REFUSAL);
            assertThat(said.spoken())
                    .isEqualTo("The printer did not take the card of calf three one two; it waits and is tried again.");
        }
        printers.refuse(null);
        try (PrintWork next = work(LONG, LONG)) {
            // The clock stands still: it is not due yet.
            next.tryAgain();
            assertThat(next.news()).isNull();
        }
        Settings later = settings().withClock(Clock.fixed(NOW.plusSeconds(15), ZoneOffset.UTC));
        try (PrintWork next = new PrintWork(later, ENGLISH, printers, LONG, LONG)) {
            next.tryAgain();
            assertThat(next.news()).isEqualTo("Handed over to the printer CARDS: job 1, the card of calf 312.");
            next.tryAgain();
            assertThat(next.news()).isNull();
        }
        assertThat(printers.taken()).hasSize(1);
    }

    @Test
    void a_silent_printer_holds_nobody_and_the_card_comes_when_it_wakes_up() throws Exception {
        printers.fallSilent();
        try (PrintWork work = work(LONG, SHORT)) {
            assertThat(printCard(work).shown())
                    .isEqualTo("The printer does not answer; the card of calf 312 waits and is tried again.");
            printers.wakeUp();
            assertThat(awaitNews(work)).isEqualTo("Handed over to the printer CARDS: job 1, the card of calf 312.");
        }
        assertThat(printers.taken()).hasSize(1);
    }

    /** As the station does, in its language. Each look makes a list of its own, which may be equal to the one before. */
    @SuppressWarnings("ReferenceEquality")
    private Papers looksAt(PrintWork work) throws InterruptedException {
        Papers before = work.papers();
        work.lookForPapers();
        while (work.papers() == before) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        return work.papers();
    }

    @Test
    void what_the_station_tells_is_in_its_language() throws Exception {
        Messages spanish = new Messages(Language.SPANISH.locale());
        printers.fallSilent();
        try (PrintWork work = new PrintWork(settings(), spanish, printers, SHORT, LONG)) {
            assertThat(printCard(work).shown())
                    .isEqualTo("La impresora no aceptó la tarjeta del becerro 312; espera y se intenta otra vez."
                            + " La impresora CARDS no contesta. Vea si está prendida y si el servicio de impresión"
                            + " funciona.");
            assertThat(looksAt(work).all())
                    .containsExactly(new Paper(
                            1,
                            "la tarjeta del becerro 312",
                            "CARDS",
                            PaperState.WAITING,
                            "La impresora CARDS no contesta. Vea si está prendida y si el servicio de impresión"
                                    + " funciona."));
            work.press(PaperStep.GIVE_UP, 1);
            assertThat(awaitLine(work, () -> {})).isEqualTo("Se abandonó: trabajo 1, la tarjeta del becerro 312.");
            work.press(PaperStep.GIVE_UP, 9);
            assertThat(awaitLine(work, () -> {})).isEqualTo("Esta impresión ya no está en la lista.");
        }
        printers.wakeUp();
    }

    @Test
    void what_waits_is_listed_before_what_does_not_and_the_newest_first() throws Exception {
        try (PrintWork work = work(LONG, LONG)) {
            for (String what : List.of("a", "b", "c", "d")) {
                PrintDesk.queue(settings()).add(new byte[] {1}, what, PrintUse.CARDS, "CARDS");
            }
            PrintDesk.queue(settings()).drop(2);
            PrintDesk.queue(settings()).drop(4);
            assertThat(looksAt(work).all()).extracting(Paper::number).containsExactly(3, 1, 4, 2);
            assertThat(work.papers().trouble()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource(PrintFault.Kind.class)
    void every_fault_has_its_sentence_in_both_languages(PrintFault.Kind kind) {
        PrintFault fault = new PrintFault(kind, "no paper", "It waits, as was written.");
        PrintJob job = new PrintJob(1, "the card", PrintUse.CARDS, "CARDS", NOW, JobState.WAITING, 1, NOW, fault);
        String english = new PrintWords(ENGLISH).why(job);
        String spanish = new PrintWords(new Messages(Language.SPANISH.locale())).why(job);
        assertThat(english).endsWith(".").doesNotContain("{");
        if (kind == PrintFault.Kind.OTHER) {
            assertThat(List.of(english, spanish)).containsOnly("It waits, as was written.");
        } else {
            assertThat(spanish).endsWith(".").isNotEqualTo(english);
        }
    }

    @Test
    void a_fault_of_a_waiting_page_is_told_once() {
        printers.refuse(REFUSAL);
        PrintDesk.queue(settings()).add(new byte[] {1}, "the crib sheet", PrintUse.SHEETS, "OFFICE");
        for (int round = 0; round < 3; round++) {
            Instant at = NOW.plusSeconds(600L * round);
            Settings then = settings().withClock(Clock.fixed(at, ZoneOffset.UTC));
            try (PrintWork work = new PrintWork(then, ENGLISH, printers, LONG, LONG)) {
                work.tryAgain();
                work.tryAgain();
                String news = work.news();
                if (round == 0) {
                    assertThat(news).contains("job 1, the crib sheet", REFUSAL);
                }
                assertThat(work.news()).isNull();
            }
        }
        assertThat(PrintDesk.queue(settings()).contents().jobs().get(0).tries()).isEqualTo(3);
    }

    @Test
    void a_queue_that_cannot_be_used_is_told_and_listening_goes_on() throws IOException {
        Files.writeString(data.resolve("print-queue"), "in the way");
        try (PrintWork work = work(LONG, LONG)) {
            assertThat(printCard(work).shown()).contains("is written to", "card-calf-312.pdf", "not sent");
        }
        Files.delete(data.resolve("print-queue"));
        Files.writeString(data.resolve("station.properties"), "printer.cards =\n");
        try (PrintWork work = work(LONG, LONG)) {
            assertThat(printCard(work).shown()).contains("printer.cards cannot be \"\"");
        }
    }

    @Test
    void check_tells_of_printers_and_waiting_pages() throws IOException {
        assertThat(PrintTelling.check(settings(), printers)).isEqualTo("cards go to CARDS; no page waits");
        PrintDesk.queue(settings()).add(new byte[] {1}, "the card of calf 312", PrintUse.CARDS, "CARDS");
        printers.refuse(REFUSAL);
        assertThatThrownBy(() -> PrintTelling.check(settings(), printers))
                .isInstanceOf(BadInputException.class)
                .hasMessageContainingAll(REFUSAL, "job 1, the card of calf 312", "strawbed printer retry");
        Files.writeString(data.resolve("station.properties"), "printer.sheets = GONE\n");
        assertThatThrownBy(() -> PrintTelling.check(settings(), printers)).hasMessageContaining("GONE is gone");
        Files.delete(data.resolve("station.properties"));
        PrintDesk.queue(settings()).drop(1);
        assertThat(PrintTelling.check(settings(), printers)).isEqualTo("none chosen; no page waits");
    }

    @Test
    void the_list_marks_the_chosen_printers_and_tells_how_far_each_page_came() throws IOException {
        Files.writeString(data.resolve("station.properties"), "printer.cards = CARDS\nprinter.sheets = OLD\n");
        PrintDesk desk = new PrintDesk(settings(), printers);
        desk.send(new byte[] {1}, "a", PrintUse.CARDS);
        printers.refuse(REFUSAL);
        desk.send(new byte[] {1}, "b", PrintUse.CARDS);
        desk.send(new byte[] {1}, "c", PrintUse.CARDS);
        desk.queue().drop(3);
        Files.writeString(data.resolve("print-queue/4.job"), "rubbish");
        assertThat(PrintTelling.list(settings(), printers))
                .containsSubsequence(
                        "  CARDS (for cards): " + REFUSAL,
                        "  OFFICE: ready, as far as is known",
                        "  OLD (for sheets): The printer OLD is gone. Set it up again, or choose another with \"strawbed"
                                + " printer use\".",
                        "  1  a, asked for 3 Mar 05:30: handed over to CARDS 3 Mar 05:30",
                        "  2  b, asked for 3 Mar 05:30: waits for CARDS. " + REFUSAL + " Last tried 3 Mar 05:30.",
                        "  3  c, asked for 3 Mar 05:30: given up")
                .anySatisfy(line -> assertThat(line).contains("Job 4 cannot be read"));
        assertThat(desk.queue().contents().jobs())
                .extracting(job -> job.state())
                .doesNotContainNull();
        assertThat(desk.queue().contents().jobs().get(2).state()).isEqualTo(JobState.DROPPED);
    }
}
