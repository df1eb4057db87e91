package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.entry.EntryGroup;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;
import strawbed.station.Act;
import strawbed.station.Place;
import strawbed.station.Sign;

/** The station used by keys: without a speech model, with calves that cannot be called, and what is only shown. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationKeysIT {
    @TempDir
    Path data;

    private StationRig station;

    @BeforeEach
    void is_in_its_folder() {
        station = new StationRig(data);
    }

    @AfterEach
    void close() {
        station.close();
    }

    private Statement heifer(CalfReference calf) {
        return new Statement(
                calf, List.of(new SaidFact(new Event.SexNoted(Term.Sex.FEMALE), station.clock.instant(), false)));
    }

    private Statement dipped(String number) {
        return new Statement(
                new CalfReference.Numbered(number),
                List.of(new SaidFact(new Event.NavelDipped(null, null), station.clock.instant(), false)));
    }

    private List<Event> pressed(CalfId calf) {
        return station.stage().herd().calf(calf).orElseThrow().history().stream()
                .map(entry -> entry.recorded())
                .filter(recorded -> recorded.provenance().source() == Provenance.Source.BUTTON)
                .map(recorded -> recorded.event())
                .toList();
    }

    @Test
    void without_a_speech_model_it_says_so_and_keys_go_on() throws Exception {
        CalfId calf = station.knows(new Event.CalfOpened("12", null));
        station.hasItsModelIn(data.resolve("nowhere"));
        station.opens();
        assertThat(station.known().sign()).isEqualTo(Sign.KEYS_ONLY);
        assertThat(station.known().note()).contains("strawbed check");
        station.says("calf twelve, heifer");
        station.waits(Duration.ofSeconds(1));
        assertThat(station.known().pending()).isEmpty();
        assertThat(station.known().open())
                .as("nothing is kept, as nothing listens")
                .isEmpty();
        station.presses(new Act.Enter(heifer(new CalfReference.Numbered("12")), Optional.empty()));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(pressed(calf)).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        station.presses(new Act.Enter(dipped("12"), Optional.empty()));
        station.waits(Recorder.PATIENCE.plusSeconds(1));
        station.presses(new Act.HearAgain(station.known().open().get(0).id()));
        assertThat(station.known().note()).as("it never had a sound").isNotEmpty();
        station.presses(new Act.Order(Control.UNDO_LAST_ENTRY));
        assertThat(station.known().told().word()).isEqualTo("UNDONE");
        station.presses(new Act.Order(Control.PAUSE_RECORDER));
        assertThat(station.known().sign()).as("it announces nothing now").isEqualTo(Sign.PAUSED);
        station.presses(new Act.Order(Control.WAKE_UP_RECORDER));
        assertThat(station.known().sign()).isEqualTo(Sign.KEYS_ONLY);
    }

    @Test
    void a_calf_that_has_no_number_and_no_dam_is_chosen_from_the_list() throws Exception {
        CalfId calf =
                station.knows(new Event.CalfOpened(null, null), new Event.CalfBorn(new When.At(StationRig.BEGIN)));
        station.knows(new Event.CalfOpened(null, null));
        station.opens();
        station.presses(new Act.Enter(heifer(new CalfReference.Listed(calf)), Optional.empty()));
        assertThat(station.known().asked()).startsWith("Calf without a number: heifer");
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(pressed(calf)).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        assertThat(station.known().herd().calves()).hasSize(2);
    }

    @Test
    void what_people_do_not_want_to_hear_is_shown_and_saved_all_the_same() throws Exception {
        station.knows(new Event.CalfOpened("12", null));
        station.opens("voice.not-for = navel");
        station.presses(new Act.Enter(dipped("12"), Optional.empty()));
        station.waits(Duration.ofSeconds(2));
        assertThat(station.known().asked()).contains("navel dipped");
        assertThat(station.ears.said).isEmpty();
        assertThat(station.ears.played).as("the sound alone tells").hasSize(1);
        station.presses(new Act.Order(Control.REPEAT_ENTRY));
        station.waits(Duration.ofSeconds(2));
        assertThat(station.ears.said).as("who asks hears it").hasSize(1);
        station.ears.said.clear();
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        station.waits(Duration.ofSeconds(2));
        assertThat(station.known().told().word()).isEqualTo("SAVED");
        station.presses(new Act.Enter(heifer(new CalfReference.Numbered("12")), Optional.empty()));
        station.waits(Duration.ofSeconds(2));
        assertThat(station.ears.said).as("of another kind").anyMatch(said -> said.contains("heifer"));
        station.presses(new Act.Order(Control.CANCEL_ENTRY));
        station.ears.said.clear();
        station.presses(new Act.Enter(dipped("997"), Optional.empty()));
        station.waits(Duration.ofSeconds(2));
        assertThat(station.ears.said).as("a calf that is not on the list").hasSize(1);
    }

    @Test
    void what_is_spoken_is_chosen_by_keys_and_kept() throws Exception {
        station.opens();
        station.presses(new Act.Speak(EntryGroup.NAVEL, false));
        station.presses(new Act.Speak(EntryGroup.FIRST_MINUTES, false));
        station.presses(new Act.Speak(EntryGroup.NAVEL, true));
        assertThat(station.known().choices().unspoken()).containsExactly(EntryGroup.FIRST_MINUTES);
        assertThat(StationFile.in(data).choices().unspoken()).containsExactly(EntryGroup.FIRST_MINUTES);
    }

    @Test
    void a_name_that_was_written_by_keys_can_be_chosen() throws Exception {
        station.opens("operators = Ana");
        station.presses(new Act.AddOperator("Sam"));
        assertThat(station.eyes.place).isEqualTo(new Place.Operators());
        assertThat(station.known().choices().operators()).containsExactly("Ana", "Sam");
    }
}
