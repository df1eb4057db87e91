package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.print.PrintUse;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;
import strawbed.station.Act;
import strawbed.station.Paper;
import strawbed.station.PaperState;
import strawbed.station.PaperStep;
import strawbed.station.Place;

/** What waits to be printed, on the station: it never holds up the work. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationPrintsIT {
    @TempDir
    Path data;

    private StationRig station;

    @BeforeEach
    void a_calf_is_known() {
        station = new StationRig(data);
        station.knows(new Event.CalfOpened("12", null));
    }

    @AfterEach
    void close() {
        station.close();
    }

    private Statement heifer() {
        return new Statement(
                new CalfReference.Numbered("12"),
                List.of(new SaidFact(new Event.SexNoted(Term.Sex.FEMALE), station.clock.instant(), false)));
    }

    private void waitsForPrints(PaperState... states) {
        while (!station.known().papers().all().stream()
                .map(Paper::state)
                .toList()
                .equals(List.of(states))) {
            station.turn();
        }
    }

    private void waitsForNote(String words) {
        while (!station.known().note().contains(words)) {
            station.turn();
        }
    }

    private void printsOf(int number, PaperStep step) {
        station.presses(new Act.Go(new Place.OnePrint(number)));
        station.presses(new Act.OfPaper(number, step));
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void a_print_that_waits_is_listed_tried_again_handed_over_and_printed_again() throws Exception {
        PrintDesk.queue(station.settings()).add(new byte[] {1}, "the card of calf 12", PrintUse.CARDS, "CARDS");
        station.opens("printer.cards = OFFICE");
        waitsForPrints(PaperState.WAITING);
        assertThat(station.known().papers().all())
                .containsExactly(
                        new Paper(1, "the card of calf 12", "CARDS", PaperState.WAITING, "It was not tried yet."));
        station.printers.refuse("The printer CARDS is out of paper. Fill it.");
        printsOf(1, PaperStep.TRY);
        assertThat(station.eyes.place).isEqualTo(new Place.Prints(0));
        assertThat(station.known().note()).isEqualTo("It is tried now. What comes of it is told here.");
        waitsForNote("Waits for the printer CARDS: job 1, the card of calf 12. The printer CARDS is out of paper.");
        waitsForPrints(PaperState.WAITING);
        assertThat(station.known().papers().all().get(0).why()).contains("out of paper");
        station.printers.refuse(null);
        printsOf(1, PaperStep.TRY);
        station.presses(new Act.OfPaper(1, PaperStep.AGAIN));
        waitsForPrints(PaperState.HANDED_OVER);
        waitsForNote("Handed over to the printer CARDS: job 1");
        printsOf(1, PaperStep.AGAIN);
        waitsForNote("Handed over to the printer OFFICE: job 1");
        assertThat(station.printers.taken())
                .extracting(taken -> taken.split(" ", 2)[0])
                .as("a key that is pressed twice prints once")
                .containsExactly("CARDS", "OFFICE");
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void while_a_printer_is_silent_keys_go_on_and_a_print_is_given_up() throws Exception {
        station.printers.fallSilent();
        PrintDesk.queue(station.settings()).add(new byte[] {1}, "the card of calf 12", PrintUse.CARDS, "CARDS");
        PrintDesk.queue(station.settings()).add(new byte[] {1}, "the handover sheet", PrintUse.SHEETS, "OFFICE");
        station.opens();
        printsOf(1, PaperStep.TRY);
        printsOf(2, PaperStep.GIVE_UP);
        waitsForPrints(PaperState.WAITING, PaperState.GIVEN_UP);
        station.presses(new Act.Enter(heifer(), Optional.empty()));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(station.known().told().word()).isEqualTo("SAVED");
        assertThat(station.printers.taken()).isEmpty();
        station.printers.wakeUp();
        waitsForPrints(PaperState.GIVEN_UP, PaperState.HANDED_OVER);
        printsOf(2, PaperStep.AGAIN);
        waitsForNote("No printer is chosen for it.");
    }

    @Test
    @Timeout(value = 2, unit = TimeUnit.MINUTES)
    void a_list_of_prints_that_cannot_be_read_is_told_and_keys_go_on() throws Exception {
        PrintDesk.queue(station.settings()).add(new byte[] {1}, "the card of calf 12", PrintUse.CARDS, "CARDS");
        Files.writeString(data.resolve("print-queue/2.job"), "rubbish");
        station.opens();
        waitsForPrints(PaperState.WAITING);
        assertThat(station.known().papers().trouble()).startsWith("1 of the prints cannot be read.");
        Files.move(data.resolve("print-queue"), data.resolve("elsewhere"));
        Files.writeString(data.resolve("print-queue"), "in the way");
        printsOf(1, PaperStep.GIVE_UP);
        waitsForNote("The prints cannot be read or changed.");
        station.presses(new Act.Enter(heifer(), Optional.empty()));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(station.known().told().word()).isEqualTo("SAVED");
    }
}
