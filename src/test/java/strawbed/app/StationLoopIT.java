package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.AudioSource;
import strawbed.audio.Cue;
import strawbed.audio.MicrophoneState;
import strawbed.audio.Sound;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.OpenStatement;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.SaidFact;
import strawbed.statement.Statement;
import strawbed.station.Act;
import strawbed.station.Choices;
import strawbed.station.Known;
import strawbed.station.Place;
import strawbed.station.Sign;
import strawbed.station.ThrownAway;
import strawbed.text.Messages;
import strawbed.voice.FreeTtsVoice;

/** The station without window, microphone and speaker: sound, keys and time go in, screens, words and facts come out. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationLoopIT {
    private static final Instant BEGIN = Instant.parse("2026-03-02T09:00:00Z");
    private static final ZoneId BARN = ZoneId.of("America/Chicago");
    private static final FreeTtsVoice PERSON = new FreeTtsVoice();

    @TempDir
    Path data;

    private final SteppedClock clock = new SteppedClock();
    private final Microphone microphone = new Microphone();
    private final Ears ears = new Ears();
    private final Eyes eyes = new Eyes();
    private @Nullable Stage stage;
    private @Nullable StationLoop loop;

    /** Goes on with the sound. */
    private static final class SteppedClock extends Clock {
        private Instant now = BEGIN;

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return BARN;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("nobody asks for it");
        }
    }

    /** Gives what was put in, then quiet; each poll is 20 ms. */
    private final class Microphone implements SoundIn {
        private final Deque<short[]> blocks = new ArrayDeque<>();
        private MicrophoneState state = MicrophoneState.LISTENING;
        private @Nullable MicrophoneState told;
        private long position;

        @Override
        public Optional<Sound> poll(Duration wait, boolean mayJump) {
            clock.now = clock.now.plusMillis(20);
            if (state != MicrophoneState.LISTENING) {
                position += AudioSource.BLOCK;
                return Optional.empty();
            }
            short[] next = blocks.isEmpty() ? new short[AudioSource.BLOCK] : blocks.removeFirst();
            Sound block = Sound.of(next, position);
            position += next.length;
            return Optional.of(block);
        }

        @Override
        public Optional<MicrophoneState> changed() {
            boolean isNew = told != state;
            told = state;
            return isNew ? Optional.of(state) : Optional.empty();
        }

        @Override
        public String sentence() {
            return "Plug it in.";
        }

        @Override
        public boolean clips() {
            return false;
        }

        @Override
        public double level() {
            return -40;
        }

        @Override
        public Losses losses() {
            return new Losses(0, 0, 0);
        }

        @Override
        public void close() {}
    }

    /** Hears what the station says; it speaks until somebody says that it is over. */
    private static final class Ears implements Mouth {
        private final List<String> said = new ArrayList<>();
        private final List<Sound> played = new ArrayList<>();
        private Optional<String> trouble = Optional.empty();
        private boolean speaking;
        private int stops;

        @Override
        public void say(String text) {
            said.add(text);
        }

        @Override
        public void play(Sound sound) {
            played.add(sound);
        }

        @Override
        public Optional<String> trouble() {
            return trouble;
        }

        @Override
        public boolean isSpeaking() {
            return speaking;
        }

        @Override
        public void stop() {
            stops++;
            speaking = false;
        }
    }

    private static final class Eyes implements StationLoop.Panel {
        private @Nullable Place place;
        private @Nullable Known known;

        @Override
        public void show(Place shown, Known now) {
            place = shown;
            known = now;
        }

        @Override
        public void level(double decibel) {}

        Known known() {
            return Objects.requireNonNull(known);
        }
    }

    @BeforeEach
    void a_calf_is_known() {
        TimeOrderedIds ids = new TimeOrderedIds(clock, new java.util.Random(7));
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, BARN, ids)) {
            CalfId calf = new CalfId(ids.get());
            journal.append(List.of(
                    fact(calf, new Event.CalfOpened("12", null)), fact(calf, new Event.CalfBorn(new When.At(BEGIN)))));
        }
    }

    private static NewEvent fact(CalfId calf, Event event) {
        return new NewEvent(calf, event, BEGIN, Provenance.of(Provenance.Source.COMMAND));
    }

    @AfterEach
    void close() {
        if (stage != null) {
            stage.close();
        }
    }

    private void opens(String... lines) throws java.io.IOException {
        java.nio.file.Files.writeString(data.resolve(StationFile.NAME), String.join("\n", lines));
        Settings settings = new Settings(data, Optional.empty(), clock, BARN);
        StringWriter err = new StringWriter();
        stage = Stage.open(settings, clock.instant(), new PrintWriter(err, true));
        microphone.told = null;
        Choices choices = StationFile.in(data).choices();
        StationDesk desk = new StationDesk(
                settings,
                PrintWork.begin(settings),
                new Messages(Locale.US),
                choices,
                code -> "key " + code,
                149,
                c -> {});
        loop = new StationLoop(stage, microphone, ears, desk, eyes, on -> "");
        waits(Duration.ofSeconds(1));
    }

    private void says(String words) {
        Sound sound = PERSON.speak(words);
        for (int at = 0; at + AudioSource.BLOCK <= sound.length(); at += AudioSource.BLOCK) {
            microphone.blocks.add(sound.slice(at, at + AudioSource.BLOCK).copySamples());
        }
        while (!microphone.blocks.isEmpty()) {
            turn();
        }
    }

    private void waits(Duration time) {
        Instant until = clock.instant().plus(time);
        while (clock.instant().isBefore(until)) {
            turn();
        }
    }

    private void turn() {
        Objects.requireNonNull(loop).turn();
    }

    private void presses(Act act) {
        Objects.requireNonNull(loop).press(act);
        turn();
    }

    private List<Event> facts() {
        return Objects.requireNonNull(stage).herd().byNumber("12").orElseThrow().history().stream()
                .filter(entry -> !entry.withdrawn())
                .map(entry -> entry.recorded())
                .filter(recorded -> recorded.provenance().source() != Provenance.Source.COMMAND)
                .map(RecordedEvent::event)
                .toList();
    }

    @Test
    void what_was_said_is_shown_at_once_read_back_after_quiet_and_saved_by_a_key() throws Exception {
        opens();
        says("calf twelve, heifer");
        waits(Duration.ofMillis(500));
        assertThat(eyes.known().pending()).isPresent();
        assertThat(eyes.known().asked()).contains("Calf 12: heifer");
        assertThat(ears.played)
                .extracting(Sound::length)
                .containsExactly(Cue.HEARD.sound().length());
        assertThat(ears.said).as("the speaker may go on").isEmpty();
        waits(Duration.ofSeconds(1));
        assertThat(ears.said).hasSize(1);
        assertThat(ears.said.get(0)).contains("heifer");
        presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        assertThat(eyes.known().told().word()).isEqualTo("SAVED");
        assertThat(ears.played).hasSize(2);
    }

    @Test
    void a_key_ends_what_is_being_said_at_once() throws Exception {
        opens();
        says("calf twelve, heifer");
        waits(Duration.ofSeconds(2));
        ears.speaking = true;
        turn();
        assertThat(eyes.known().sign()).isIn(Sign.SPEAKING, Sign.LISTENING);
        presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(ears.stops).isPositive();
        assertThat(ears.speaking).isFalse();
    }

    @Test
    void on_an_open_speaker_nothing_is_heard_while_it_speaks_and_in_a_headset_it_is() throws Exception {
        opens();
        ears.speaking = true;
        says("calf twelve, heifer");
        waits(Duration.ofSeconds(1));
        assertThat(eyes.known().pending()).isEmpty();
        assertThat(eyes.known().sign()).isEqualTo(Sign.SPEAKING);
        Objects.requireNonNull(stage).close();
        opens("headset = yes");
        ears.speaking = true;
        says("calf twelve, heifer");
        waits(Duration.ofSeconds(1));
        assertThat(eyes.known().pending()).isPresent();
    }

    @Test
    void where_talk_is_held_it_hears_only_then_and_ends_when_it_is_let_go() throws Exception {
        opens("listen = hold");
        says("calf twelve, heifer");
        waits(Duration.ofSeconds(1));
        assertThat(eyes.known().pending()).isEmpty();
        assertThat(eyes.known().sign()).isEqualTo(Sign.HOLD_TO_TALK);
        assertThat(Objects.requireNonNull(stage).open())
                .as("nothing is kept that was not to be heard")
                .isEmpty();
        presses(new Act.Talk(true));
        says("calf twelve, heifer");
        presses(new Act.Talk(false));
        assertThat(eyes.known().pending()).isPresent();
    }

    @Test
    void a_microphone_that_is_gone_is_told_and_keys_go_on() throws Exception {
        opens();
        microphone.state = MicrophoneState.GONE;
        waits(Duration.ofMillis(200));
        assertThat(eyes.known().sign()).isEqualTo(Sign.NO_SOUND);
        assertThat(eyes.known().note()).isEqualTo("Plug it in.");
        assertThat(ears.said).containsExactly("Plug it in.");
        assertThat(ears.played)
                .extracting(Sound::length)
                .containsExactly(Cue.PROBLEM.sound().length());
        presses(new Act.Enter(heifer(), Optional.empty()));
        presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        microphone.state = MicrophoneState.LISTENING;
        waits(Duration.ofMillis(200));
        assertThat(eyes.known().sign()).isEqualTo(Sign.LISTENING);
        says("calf twelve, navel dipped");
        waits(Duration.ofMillis(500));
        assertThat(eyes.known().pending()).as("no new start is needed").isPresent();
    }

    @Test
    void a_speaker_that_is_gone_is_told_on_the_screen() throws Exception {
        opens();
        ears.trouble = Optional.of("The speaker went away; plug it in again.");
        waits(Duration.ofSeconds(1));
        assertThat(eyes.known().note()).isEqualTo("The speaker went away; plug it in again.");
    }

    @Test
    void a_sentence_that_the_microphone_cut_off_is_heard_as_far_as_it_came() throws Exception {
        opens();
        says("calf twelve, heifer");
        assertThat(eyes.known().pending()).as("it is not quiet yet").isEmpty();
        microphone.state = MicrophoneState.GONE;
        waits(Duration.ofMillis(200));
        assertThat(eyes.known().pending()).isPresent();
        assertThat(Objects.requireNonNull(stage).isSpeaking()).isFalse();
    }

    private Statement heifer() {
        return new Statement(
                new CalfReference.Numbered("12"),
                List.of(new SaidFact(new Event.SexNoted(Term.Sex.FEMALE), clock.instant(), false)));
    }

    @Test
    void what_was_pressed_and_not_confirmed_waits_among_the_open_ones_in_words() throws Exception {
        opens();
        presses(new Act.Enter(heifer(), Optional.empty()));
        waits(Recorder.PATIENCE.plusSeconds(1));
        assertThat(eyes.known().pending()).isEmpty();
        assertThat(eyes.known().told().word()).isEqualTo("NOT SAVED");
        OpenStatement open = eyes.known().open().get(0);
        assertThat(open.statement().hasSound()).isFalse();
        assertThat(open.statement().words()).containsExactly("calf 12", "heifer");
        presses(new Act.Enter(heifer(), Optional.of(open.id())));
        presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(eyes.known().open()).as("mended").isEmpty();
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
    }

    @Test
    void an_open_statement_is_heard_again_kept_as_a_note_or_thrown_away() throws Exception {
        opens();
        says("calf twelve, heifer");
        waits(Recorder.PATIENCE.plusSeconds(2));
        OpenStatement open = eyes.known().open().get(0);
        presses(new Act.Replay(open.id()));
        assertThat(ears.played.get(ears.played.size() - 1).length())
                .as("its own sound, a second or two")
                .isGreaterThan(Sound.RATE);
        presses(new Act.Go(new Place.OneOpen(open.id())));
        presses(new Act.HearAgain(open.id()));
        assertThat(eyes.place).as("where it is answered").isEqualTo(new Place.Now());
        assertThat(eyes.known().asked()).contains("heifer");
        presses(new Act.Order(Control.CANCEL_ENTRY));
        assertThat(eyes.known().open()).as("still there").hasSize(1);
        presses(new Act.HearAgain(open.id()));
        presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(eyes.known().open()).isEmpty();
        assertThat(facts()).containsExactly(new Event.SexNoted(Term.Sex.FEMALE));
        says("the weather is nice today");
        waits(Duration.ofSeconds(1));
        OpenStatement talk = eyes.known().open().get(0);
        presses(new Act.KeepAsNote(
                talk.id(), eyes.known().herd().byNumber("12").orElseThrow().id()));
        assertThat(facts()).last().isInstanceOf(Event.VoiceNoteTaken.class);
        assertThat(eyes.known().open()).isEmpty();
        says("what a lovely morning for the milking");
        waits(Duration.ofSeconds(1));
        presses(new Act.Settle(eyes.known().open().get(0).id(), ThrownAway.TALK));
        assertThat(eyes.known().open()).isEmpty();
    }

    @Test
    void a_late_task_is_announced_again_and_again_until_it_is_put_off() throws Exception {
        opens("late.again-minutes = 10", "late.put-off-minutes = 60");
        waits(Duration.ofMinutes(3));
        assertThat(ears.said).as("the first breath is seen at once").anyMatch(said -> said.contains("Late"));
        assertThat(eyes.known().canPutOff()).isTrue();
        presses(new Act.Order(Control.PUT_IT_OFF));
        assertThat(eyes.known().told().text()).isEqualTo("Put off for 1 h.");
        assertThat(eyes.known().canPutOff()).isFalse();
    }

    @Test
    void who_works_is_chosen_by_one_key_and_kept_with_each_fact() throws Exception {
        opens("operators = Ana, Sam");
        assertThat(eyes.known().choices().operators()).containsExactly("Ana", "Sam");
        presses(new Act.Operate("Ana"));
        assertThat(eyes.known().operator()).contains("Ana");
        presses(new Act.Enter(heifer(), Optional.empty()));
        presses(new Act.Order(Control.CONFIRM_ENTRY));
        assertThat(Objects.requireNonNull(stage)
                        .herd()
                        .byNumber("12")
                        .orElseThrow()
                        .history())
                .last()
                .satisfies(entry ->
                        assertThat(entry.recorded().provenance().operator()).isEqualTo("Ana"));
    }

    @Test
    void a_key_is_learnt_taken_from_another_meaning_and_refused_without_a_code() throws Exception {
        opens();
        presses(new Act.Learn(strawbed.station.Meaning.CONFIRM, 34));
        assertThat(eyes.known().note()).isEqualTo("key 34 means Yes now.");
        presses(new Act.Learn(strawbed.station.Meaning.UNDO, 34));
        assertThat(eyes.known().note()).isEqualTo("key 34 meant Yes before; it means Undo now.");
        assertThat(StationFile.in(data).choices().pedal())
                .containsOnly(java.util.Map.entry(34, strawbed.station.Meaning.UNDO));
        presses(new Act.Learn(strawbed.station.Meaning.UNDO, 0));
        assertThat(eyes.known().note()).startsWith("This key changes the volume");
    }
}
