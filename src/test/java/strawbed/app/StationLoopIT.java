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
import strawbed.audio.Cue;
import strawbed.audio.MicrophoneState;
import strawbed.audio.Sound;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.journal.OpenStatement;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;
import strawbed.station.Act;
import strawbed.station.Place;
import strawbed.station.Sign;
import strawbed.station.ThrownAway;

/** The station without window, microphone and speaker: sound, keys and time go in, screens, words and facts come out. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationLoopIT {
    @TempDir
    Path data;

    private StationRig station;

    @BeforeEach
    void a_calf_is_known() {
        station = new StationRig(data);
        station.knows(new Event.CalfOpened("12", null), new Event.CalfBorn(new When.At(StationRig.BEGIN)));
    }

    @AfterEach
    void close() {
        station.close();
    }

    private List<Event> facts() {
        return station.stage().herd().byNumber("12").orElseThrow().history().stream()
                .filter(entry -> !entry.withdrawn())
                .map(entry -> entry.recorded())
                .filter(recorded -> recorded.provenance().source() != Provenance.Source.COMMAND)
                .map(RecordedEvent::event)
                .toList();
    }

    @Test
    void what_was_said_is_shown_at_once_read_back_after_quiet_and_saved_by_a_key() throws Exception {
        station.opens();
        station.says("calf twelve, heifer");
        station.waits(Duration.ofMillis(500));
        assertThat(station.known().pending()).isPresent();
        assertThat(station.known().asked()).contains("Calf 12: heifer");
        assertThat(station.ears.played)
                .extracting(Sound::length)
                .containsExactly(Cue.HEARD.sound().length());
        assertThat(station.ears.said).as("the speaker may go on").isEmpty();
        station.waits(Duration.ofSeconds(1));
        assertThat(station.ears.said).hasSize(1);
        assertThat(station.ears.said.get(0)).contains("heifer");
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        assertThat(station.known().told().word()).isEqualTo("SAVED");
        assertThat(station.ears.played).hasSize(2);
    }

    @Test
    void a_key_ends_what_is_being_said_at_once() throws Exception {
        station.opens();
        station.says("calf twelve, heifer");
        station.waits(Duration.ofSeconds(2));
        station.ears.speaking = true;
        station.turn();
        assertThat(station.known().sign()).isIn(Sign.SPEAKING, Sign.LISTENING);
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(station.ears.stops).isPositive();
        assertThat(station.ears.speaking).isFalse();
    }

    @Test
    void on_an_open_speaker_nothing_is_heard_while_it_speaks_and_in_a_headset_it_is() throws Exception {
        station.opens();
        station.ears.speaking = true;
        station.says("calf twelve, heifer");
        station.waits(Duration.ofSeconds(1));
        assertThat(station.known().pending()).isEmpty();
        assertThat(station.known().sign()).isEqualTo(Sign.SPEAKING);
        station.close();
        station.opens("headset = yes");
        station.ears.speaking = true;
        station.says("calf twelve, heifer");
        station.waits(Duration.ofSeconds(1));
        assertThat(station.known().pending()).isPresent();
    }

    @Test
    void where_talk_is_held_it_hears_only_then_and_ends_when_it_is_let_go() throws Exception {
        station.opens("listen = hold");
        station.says("calf twelve, heifer");
        station.waits(Duration.ofSeconds(1));
        assertThat(station.known().pending()).isEmpty();
        assertThat(station.known().sign()).isEqualTo(Sign.HOLD_TO_TALK);
        assertThat(station.stage().open())
                .as("nothing is kept that was not to be heard")
                .isEmpty();
        station.presses(new Act.Talk(true));
        station.says("calf twelve, heifer");
        station.presses(new Act.Talk(false));
        assertThat(station.known().pending()).isPresent();
    }

    @Test
    void a_microphone_that_is_gone_is_told_and_keys_go_on() throws Exception {
        station.opens();
        station.microphone.becomes(MicrophoneState.GONE);
        station.waits(Duration.ofMillis(200));
        assertThat(station.known().sign()).isEqualTo(Sign.NO_SOUND);
        assertThat(station.known().note()).isEqualTo("Plug it in.");
        assertThat(station.ears.said).containsExactly("Plug it in.");
        assertThat(station.ears.played)
                .extracting(Sound::length)
                .containsExactly(Cue.PROBLEM.sound().length());
        station.presses(new Act.Enter(heifer(), Optional.empty()));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        station.microphone.becomes(MicrophoneState.LISTENING);
        station.waits(Duration.ofMillis(200));
        assertThat(station.known().sign()).isEqualTo(Sign.LISTENING);
        station.says("calf twelve, navel dipped");
        station.waits(Duration.ofMillis(500));
        assertThat(station.known().pending()).as("no new start is needed").isPresent();
    }

    @Test
    void a_speaker_that_is_gone_is_told_on_the_screen() throws Exception {
        station.opens();
        station.ears.trouble = Optional.of("The speaker went away; plug it in again.");
        station.waits(Duration.ofSeconds(1));
        assertThat(station.known().note()).isEqualTo("The speaker went away; plug it in again.");
    }

    @Test
    void a_sentence_that_the_microphone_cut_off_is_heard_as_far_as_it_came() throws Exception {
        station.opens();
        station.says("calf twelve, heifer");
        assertThat(station.known().pending()).as("it is not quiet yet").isEmpty();
        station.microphone.becomes(MicrophoneState.GONE);
        station.waits(Duration.ofMillis(200));
        assertThat(station.known().pending()).isPresent();
        assertThat(station.stage().isSpeaking()).isFalse();
    }

    private Statement heifer() {
        return new Statement(
                new CalfReference.Numbered("12"),
                List.of(new SaidFact(new Event.SexNoted(Term.Sex.FEMALE), station.clock.instant(), false)));
    }

    @Test
    void what_was_pressed_and_not_confirmed_waits_among_the_open_ones_in_words() throws Exception {
        station.opens();
        station.presses(new Act.Enter(heifer(), Optional.empty()));
        station.waits(Recorder.PATIENCE.plusSeconds(1));
        assertThat(station.known().pending()).isEmpty();
        assertThat(station.known().told().word()).isEqualTo("NOT SAVED");
        OpenStatement open = station.known().open().get(0);
        assertThat(open.statement().hasSound()).isFalse();
        assertThat(open.statement().words()).containsExactly("calf 12", "heifer");
        station.presses(new Act.Enter(heifer(), Optional.of(open.id())));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(station.known().open()).as("mended").isEmpty();
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
    }

    @Test
    void an_open_statement_is_heard_again_kept_as_a_note_or_thrown_away() throws Exception {
        station.opens();
        station.says("calf twelve, heifer");
        station.waits(Recorder.PATIENCE.plusSeconds(2));
        OpenStatement open = station.known().open().get(0);
        station.presses(new Act.Replay(open.id()));
        assertThat(station.ears.played.get(station.ears.played.size() - 1).length())
                .as("its own sound, a second or two")
                .isGreaterThan(Sound.RATE);
        station.presses(new Act.Go(new Place.OneOpen(open.id())));
        station.presses(new Act.HearAgain(open.id()));
        assertThat(station.eyes.place).as("where it is answered").isEqualTo(new Place.Now());
        assertThat(station.known().asked()).contains("heifer");
        station.presses(new Act.Order(Control.CANCEL_ENTRY));
        assertThat(station.known().open()).as("still there").hasSize(1);
        station.presses(new Act.HearAgain(open.id()));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(station.known().open()).isEmpty();
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        station.says("the weather is nice today");
        station.waits(Duration.ofSeconds(1));
        OpenStatement talk = station.known().open().get(0);
        station.presses(new Act.KeepAsNote(
                talk.id(), station.known().herd().byNumber("12").orElseThrow().id()));
        assertThat(facts()).last().isInstanceOf(Event.VoiceNoteTaken.class);
        assertThat(station.known().open()).isEmpty();
        station.says("what a lovely morning for the milking");
        station.waits(Duration.ofSeconds(1));
        station.presses(new Act.Settle(station.known().open().get(0).id(), ThrownAway.TALK));
        assertThat(station.known().open()).isEmpty();
    }

    @Test
    void a_late_task_is_announced_again_and_again_until_it_is_put_off() throws Exception {
        station.opens("late.again-minutes = 10", "late.put-off-minutes = 60");
        station.waits(Duration.ofMinutes(3));
        assertThat(station.ears.said).as("the first breath is seen at once").anyMatch(said -> said.contains("Late"));
        assertThat(station.known().canPutOff()).isTrue();
        station.presses(new Act.Order(Control.PUT_IT_OFF));
        assertThat(station.known().told().text()).isEqualTo("Put off for 1 h.");
        assertThat(station.known().canPutOff()).isFalse();
    }

    @Test
    void who_works_is_chosen_by_one_key_and_kept_with_each_fact() throws Exception {
        station.opens("operators = Ana, Sam");
        assertThat(station.known().choices().operators()).containsExactly("Ana", "Sam");
        station.presses(new Act.Operate("Ana"));
        assertThat(station.known().operator()).contains("Ana");
        station.presses(new Act.Enter(heifer(), Optional.empty()));
        station.presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(station.stage().herd().byNumber("12").orElseThrow().history())
                .last()
                .satisfies(entry ->
                        assertThat(entry.recorded().provenance().operator()).isEqualTo("Ana"));
    }

    @Test
    void a_key_is_learnt_taken_from_another_meaning_and_refused_without_a_code() throws Exception {
        station.opens();
        station.presses(new Act.Learn(strawbed.station.Meaning.CONFIRM, 34));
        assertThat(station.known().note()).isEqualTo("key 34 means Yes now.");
        station.presses(new Act.Learn(strawbed.station.Meaning.UNDO, 34));
        assertThat(station.known().note()).isEqualTo("key 34 meant Yes before; it means Undo now.");
        assertThat(StationFile.in(data).choices().pedal())
                .containsOnly(java.util.Map.entry(34, strawbed.station.Meaning.UNDO));
        station.presses(new Act.Learn(strawbed.station.Meaning.UNDO, 0));
        assertThat(station.known().note()).startsWith("This key changes the volume");
    }
}
