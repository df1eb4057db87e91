package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.care.Caution;
import strawbed.dialog.Prompt;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.hearing.Heard;
import strawbed.hearing.Phrasebook;
import strawbed.statement.Control;
import strawbed.statement.Doubt;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.UtteranceInterpreter;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;
import strawbed.testkit.MemoryJournal;
import strawbed.testkit.SpokenSentence;

/** Stories of a person who talks to the recorder: dialog, record and open statements together. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecorderTest {
    private static final UtteranceInterpreter INTERPRETER = new UtteranceInterpreter(
            Phrasebook.read(Grammars.source()).with(List.of()).grammar(), Listener.THRESHOLDS);

    @TempDir
    Path folder;

    private SourceClock clock;
    private MemoryJournal journal;
    private Recorder recorder;
    private long ids;

    @BeforeEach
    void night() {
        clock = new SourceClock(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE);
        journal = new MemoryJournal(SpokenSentence.SPOKEN_AT);
        recorder = recorder(clock);
    }

    private Recorder recorder(Clock now) {
        return new Recorder(
                journal,
                HerdReading.recent(journal, now.instant(), Instant.MAX),
                new SoundFolder(folder, () -> new UUID(2, ids++)),
                now,
                () -> new UUID(3, ids++),
                () -> "g1",
                () -> "m1");
    }

    private List<Prompt> hears(String words) {
        return hears(words, false);
    }

    private List<Prompt> hears(String words, boolean goesOn) {
        SpeechTime speech = new SpeechTime(clock.instant(), SpokenSentence.ZONE);
        Listening listening = new Listening(new TreeSet<>(recorder.herd().openNumbers()), recorder.knowsSameCalf());
        Interpretation meaning = INTERPRETER.interpret(List.of(Grammars.reading(words, 0)), speech, listening);
        return recorder.heard(new Heard(Sound.of(new short[1600], 0), meaning, speech, Evidence.of(List.of()), goesOn));
    }

    private List<String> savedTypes() {
        return journal.all().stream().map(RecordedEvent::event).map(Event::type).toList();
    }

    private void hasCalf(String number) {
        hears("new calf " + number);
        hears("confirm entry");
    }

    @Test
    void a_feeding_is_saved_only_after_yes() {
        hasCalf("twelve");
        int before = journal.all().size();

        assertThat(hears("calf twelve fed two quarts")).hasExactlyElementsOfTypes(Prompt.ReadBack.class);
        assertThat(journal.all()).hasSize(before);

        assertThat(hears("confirm entry")).contains(new Prompt.Saved(1, "12"));
        assertThat(savedTypes()).endsWith("ColostrumFed").hasSize(before + 1);
    }

    @Test
    void facts_say_who_worked_also_after_a_new_start() {
        hasCalf("twelve");
        recorder.choose("Ines");
        hears("calf twelve fed two quarts");
        hears("confirm entry");
        recorder = recorder(clock);
        assertThat(recorder.operator()).contains("Ines");
        recorder.choose("Ines");
        hears("calf twelve navel dipped");
        recorder.choose(null);
        hears("confirm entry");
        assertThat(journal.all())
                .extracting(
                        told -> told.event().type() + " " + told.provenance().operator())
                .containsExactly(
                        "CalfOpened null",
                        "OperatorChosen Ines",
                        "ColostrumFed Ines",
                        "OperatorChosen null",
                        "NavelDipped null");
    }

    @Test
    void a_clock_that_jumped_is_noted_and_told() {
        Event jump = new Event.ClockChanged(clock.instant(), clock.instant().minusSeconds(90));
        assertThat(recorder.note(jump)).containsExactly(new Prompt.Noticed(jump));
        assertThat(journal.all().get(0).event()).isEqualTo(jump);
    }

    @Test
    void a_button_answers_as_a_voice_does() {
        hears("new calf twelve heifer");
        assertThat(recorder.pressed(Control.CONFIRM_ENTRY)).contains(new Prompt.Saved(2, "12"));
        assertThat(savedTypes()).containsExactly("CalfOpened", "SexNoted");
    }

    @Test
    void what_is_saved_says_how_it_was_heard_and_where_its_sound_is() {
        hears("new calf twelve heifer");
        hears("confirm entry");
        Provenance how = journal.all().get(0).provenance();
        assertThat(how.source()).isEqualTo(Provenance.Source.VOICE);
        assertThat(how.words()).containsExactly("new", "calf", "twelve", "heifer");
        assertThat(how.grammar()).isEqualTo("g1");
        assertThat(folder.resolve("sounds").resolve(String.valueOf(how.sound())))
                .exists();
    }

    @Test
    void a_cancelled_statement_saves_nothing_and_keeps_its_sound() throws Exception {
        hears("new calf twelve heifer");
        assertThat(hears("cancel entry")).containsExactly(new Prompt.Cancelled());
        assertThat(hears("confirm entry")).containsExactly(new Prompt.NothingPending());
        assertThat(journal.all()).isEmpty();
        assertThat(journal.openStatements()).isEmpty();
        try (var sounds = Files.list(folder.resolve("sounds"))) {
            assertThat(sounds).hasSize(1);
        }
    }

    @Test
    void repeat_reads_back_the_same_statement() {
        List<Prompt> first = hears("new calf twelve heifer");
        assertThat(hears("repeat entry")).isEqualTo(first);
    }

    @Test
    void repeat_asks_a_doubt_again() {
        List<Prompt> first = hears("calf ninety nine heifer");
        assertThat(first).hasExactlyElementsOfTypes(Prompt.Ask.class);
        assertThat(hears("repeat entry")).isEqualTo(first);
    }

    @Test
    void undo_withdraws_the_last_entry_and_keeps_it_in_the_history() {
        hasCalf("twelve");
        hears("calf twelve bull navel dipped");
        hears("confirm entry");
        assertThat(recorder.herd().byNumber("12").orElseThrow().sex()).isPresent();

        assertThat(hears("undo last entry")).containsExactly(new Prompt.Undone(2));
        assertThat(recorder.herd().byNumber("12").orElseThrow().sex()).isEmpty();
        assertThat(savedTypes()).contains("SexNoted").endsWith("EventWithdrawn", "EventWithdrawn");
        assertThat(hears("undo last entry")).containsExactly(new Prompt.NothingToUndo());
    }

    @Test
    void undo_goes_past_a_print_to_what_somebody_confirmed() {
        hasCalf("twelve");
        recorder.choose("Ines");
        hears("calf twelve bull navel dipped");
        hears("confirm entry");
        NewEvent print = new NewEvent(
                recorder.herd().byNumber("12").orElseThrow().id(),
                new Event.CardPrinted(1, Term.Printout.HUTCH_CARD, Term.CardSize.FOUR_BY_SIX_INCH),
                clock.instant(),
                Provenance.of(Provenance.Source.COMMAND));
        assertThat(recorder.take(List.of(print))).isEmpty();
        assertThat(journal.all().get(journal.all().size() - 1).provenance().operator())
                .isEqualTo("Ines");

        assertThat(hears("undo last entry")).containsExactly(new Prompt.Undone(2));
        assertThat(recorder.herd().byNumber("12").orElseThrow().prints()).hasSize(1);
        assertThat(hears("undo last entry")).containsExactly(new Prompt.NothingToUndo());
    }

    @Test
    void a_print_that_the_record_refuses_is_told_and_counts_nowhere() {
        hasCalf("twelve");
        journal.failNext("The disk is full.");
        NewEvent print = new NewEvent(
                recorder.herd().byNumber("12").orElseThrow().id(),
                new Event.CardPrinted(1, Term.Printout.HUTCH_CARD, Term.CardSize.FOUR_BY_SIX_INCH),
                clock.instant(),
                Provenance.of(Provenance.Source.COMMAND));
        assertThat(recorder.take(List.of(print))).contains("The disk is full.");
        assertThat(recorder.herd().byNumber("12").orElseThrow().prints()).isEmpty();
    }

    @Test
    void a_statement_that_nobody_confirms_goes_to_the_open_ones() {
        hears("new calf twelve heifer");
        assertThat(recorder.tick()).isEmpty();
        clock.moveTo(Recorder.PATIENCE.plus(Duration.ofSeconds(1)));
        assertThat(recorder.tick()).containsExactly(new Prompt.KeptOpen());
        assertThat(journal.openStatements())
                .singleElement()
                .satisfies(open ->
                        assertThat(open.statement().words()).containsExactly("new", "calf", "twelve", "heifer"));
        assertThat(journal.all()).isEmpty();
    }

    @Test
    void a_new_statement_does_not_drop_the_one_that_waits() {
        hears("new calf twelve heifer");
        hears("new calf thirteen bull");
        assertThat(journal.openStatements())
                .singleElement()
                .satisfies(open -> assertThat(open.statement().words()).contains("twelve"));
        hears("confirm entry");
        assertThat(recorder.herd().openNumbers()).containsExactly("13");
    }

    @Test
    void what_the_speaker_adds_after_a_pause_is_the_same_statement() {
        hears("new calf twelve");
        hears("new calf twelve heifer", true);
        assertThat(journal.openStatements()).isEmpty();
        hears("confirm entry");
        assertThat(savedTypes()).containsExactly("CalfOpened", "SexNoted");
    }

    @Test
    void a_full_disk_says_not_saved_and_the_statement_waits_for_room() {
        hears("new calf twelve heifer");
        journal.failNext("the disk is full");
        assertThat(hears("confirm entry")).containsExactly(new Prompt.NotSaved("the disk is full"));
        assertThat(recorder.isPending()).isTrue();
        assertThat(journal.all()).isEmpty();

        assertThat(hears("confirm entry")).contains(new Prompt.Saved(2, "12"));
    }

    @Test
    void a_full_disk_keeps_nothing_open_says_so_and_tries_again() {
        hears("new calf twelve heifer");
        journal.refuseAll("the disk is full");
        assertThat(recorder.stop()).containsExactly(new Prompt.NotKept("the disk is full"));
        assertThat(hears("did you see the game"))
                .containsExactly(new Prompt.NotUnderstood(), new Prompt.NotKept("the disk is full"));
        assertThat(recorder.stop()).as("at the end once more").containsExactly(new Prompt.NotKept("the disk is full"));
        assertThat(journal.openStatements()).isEmpty();

        journal.refuseAll(null);
        assertThat(hears("new calf thirteen bull")).hasExactlyElementsOfTypes(Prompt.ReadBack.class);
        assertThat(journal.openStatements())
                .extracting(open -> open.statement().words().get(1))
                .containsExactly("calf", "you");
        assertThat(hears("confirm entry")).contains(new Prompt.Saved(2, "13"));
        assertThat(recorder.stop()).isEmpty();
    }

    @Test
    void a_button_too_saves_what_waits_for_room() {
        journal.refuseAll("the disk is full");
        hears("did you see the game");
        assertThat(recorder.pressed(Control.REPEAT_ENTRY)).containsExactly(new Prompt.NothingPending());
        assertThat(journal.openStatements()).isEmpty();
        journal.refuseAll(null);
        recorder.pressed(Control.REPEAT_ENTRY);
        assertThat(journal.openStatements())
                .singleElement()
                .satisfies(open -> assertThat(open.statement().words()).contains("game"));
    }

    @Test
    void what_the_speaker_went_on_from_is_settled_when_there_is_room() {
        hears("did you see");
        journal.refuseAll("the disk is full");
        assertThat(hears("new calf twelve heifer", true)).contains(new Prompt.NotKept("the disk is full"));
        journal.refuseAll(null);
        assertThat(hears("confirm entry")).contains(new Prompt.Saved(2, "12"));
        assertThat(journal.openStatements()).isEmpty();
        assertThat(journal.settled()).containsExactly("did you see: the speaker went on");
    }

    @Test
    void a_cancelled_statement_is_settled_when_there_is_room() {
        hears("new calf twelve heifer");
        journal.refuseAll("the disk is full");
        assertThat(hears("cancel entry"))
                .containsExactly(new Prompt.Cancelled(), new Prompt.NotKept("the disk is full"));
        journal.refuseAll(null);
        assertThat(recorder.stop()).isEmpty();
        assertThat(journal.openStatements()).isEmpty();
        assertThat(journal.settled()).containsExactly("new calf twelve heifer: cancelled");
    }

    @Test
    void a_sound_that_cannot_be_written_is_told_and_written_when_it_can() throws Exception {
        Path place = folder.resolve("sounds");
        Files.writeString(place, "a file where the folder should be");
        assertThat(hears("new calf twelve heifer"))
                .hasExactlyElementsOfTypes(Prompt.NotKept.class, Prompt.ReadBack.class);
        assertThat(hears("new calf thirteen bull"))
                .hasExactlyElementsOfTypes(Prompt.NotKept.class, Prompt.ReadBack.class);
        assertThat(journal.openStatements())
                .singleElement()
                .satisfies(open -> assertThat(open.statement().words())
                        .as("the one that waited, and not the one that came")
                        .contains("twelve"));
        Files.delete(place);
        assertThat(hears("confirm entry")).contains(new Prompt.Saved(2, "13"));
        assertThat(hears("did you see the game")).containsExactly(new Prompt.NotUnderstood());
        assertThat(journal.openStatements())
                .hasSize(2)
                .allSatisfy(open ->
                        assertThat(place.resolve(open.statement().sound())).exists());
        assertThat(journal.all().get(0).provenance().sound())
                .as("named only if it is there")
                .isNull();
    }

    @Test
    void more_than_memory_should_hold_lets_the_oldest_go() {
        journal.refuseAll("the disk is full");
        for (int i = 0; i < LeftOpen.MOST + 5; i++) {
            assertThat(hears("did you see the game")).hasSize(2);
        }
        assertThat(hears("did you see the game"))
                .as("said is lost is told")
                .contains(new Prompt.NotKept("the disk is full Memory is full as well: 6 older statements are lost."));
        journal.refuseAll(null);
        recorder.stop();
        assertThat(journal.openStatements()).hasSize(LeftOpen.MOST);
    }

    @Test
    void not_breathing_warns_before_anything_is_confirmed() {
        hasCalf("twelve");
        assertThat(hears("calf twelve not breathing").get(0)).isEqualTo(new Prompt.Warn(Caution.NOT_BREATHING));
        assertThat(hears("calf twelve gasping").get(0)).isEqualTo(new Prompt.Warn(Caution.NOT_BREATHING));
    }

    @Test
    void a_number_that_is_not_on_the_list_is_asked_about_and_opened_by_a_yes() {
        List<Prompt> asked = hears("calf ninety nine heifer");
        assertThat(asked)
                .singleElement()
                .isInstanceOfSatisfying(
                        Prompt.Ask.class,
                        ask -> assertThat(ask.pending().doubts()).containsExactly(new Doubt.NotListed("99")));
        assertThat(journal.all()).isEmpty();
        hears("confirm entry");
        assertThat(recorder.herd().openNumbers()).containsExactly("99");
    }

    @Test
    void a_calf_without_a_number_is_opened_under_its_dam_and_numbered_later() {
        hears("new calf of cow four one seven heifer");
        hears("confirm entry");
        hears("calf of cow four one seven navel dipped");
        hears("confirm entry");
        hears("calf of cow four one seven is calf five twelve");
        hears("confirm entry");
        assertThat(recorder.herd().calves()).hasSize(1);
        assertThat(recorder.herd().byNumber("512").orElseThrow().dips()).hasSize(1);
    }

    @Test
    void twins_of_one_cow_are_first_and_second() {
        hears("new calf of cow four one seven heifer");
        hears("confirm entry");
        hears("new calf of cow four one seven bull");
        hears("confirm entry");
        hears("calf of cow four one seven navel dipped");
        assertThat(hears("confirm entry")).hasExactlyElementsOfTypes(Prompt.CannotConfirm.class);
        hears("second calf of cow four one seven is calf eighty eight");
        hears("confirm entry");
        assertThat(recorder.herd().byNumber("88").orElseThrow().sex()).contains(Term.Sex.MALE);
    }

    @Test
    void same_calf_is_the_one_named_last() {
        assertThat(hears("same calf heifer")).hasExactlyElementsOfTypes(Prompt.Ask.class);
        assertThat(hears("confirm entry")).hasExactlyElementsOfTypes(Prompt.CannotConfirm.class);
        hasCalf("twelve");
        hasCalf("thirteen");
        hears("same calf heifer");
        hears("confirm entry");
        assertThat(recorder.herd().byNumber("13").orElseThrow().sex()).isPresent();
        assertThat(recorder.herd().byNumber("12").orElseThrow().sex()).isEmpty();
    }

    @Test
    void a_left_over_without_a_feed_is_asked_about() {
        hasCalf("twelve");
        assertThat(hears("calf twelve left one quart"))
                .singleElement()
                .isInstanceOfSatisfying(
                        Prompt.Ask.class,
                        ask -> assertThat(ask.pending().doubts()).containsExactly(new Doubt.NoFeedToAmend()));
        hears("cancel entry");
        hears("calf twelve fed three quarts");
        hears("confirm entry");
        assertThat(hears("calf twelve left one quart")).hasExactlyElementsOfTypes(Prompt.ReadBack.class);
    }

    @Test
    void an_implausible_value_is_questioned_and_not_refused() {
        hasCalf("twelve");
        assertThat(hears("calf twelve fed fifteen quarts")).hasExactlyElementsOfTypes(Prompt.Ask.class);
        assertThat(hears("confirm entry")).contains(new Prompt.Saved(1, "12"));
    }

    @Test
    void half_a_sentence_cannot_be_confirmed() {
        hasCalf("twelve");
        assertThat(hears("calf twelve")).hasExactlyElementsOfTypes(Prompt.Ask.class);
        assertThat(hears("confirm entry")).hasExactlyElementsOfTypes(Prompt.CannotConfirm.class);
    }

    @Test
    void speech_that_is_no_statement_is_kept_as_sound() {
        assertThat(hears("did you see the game")).containsExactly(new Prompt.NotUnderstood());
        assertThat(journal.openStatements()).singleElement().satisfies(open -> {
            assertThat(open.statement().verdict()).isEqualTo("nomatch");
            assertThat(folder.resolve("sounds").resolve(open.statement().sound()))
                    .exists();
        });
    }

    @Test
    void a_note_says_where_its_sound_is() {
        hasCalf("twelve");
        hears("calf twelve note");
        hears("confirm entry");
        Event last = journal.all().get(journal.all().size() - 1).event();
        assertThat(last)
                .isInstanceOfSatisfying(
                        Event.VoiceNoteTaken.class,
                        note -> assertThat(folder.resolve("sounds").resolve(String.valueOf(note.sound())))
                                .exists());
    }

    @Test
    void a_paused_recorder_keeps_nothing_until_it_is_woken() {
        hears("pause recorder");
        assertThat(hears("new calf twelve heifer")).isEmpty();
        assertThat(hears("confirm entry")).isEmpty();
        assertThat(folder.resolve("sounds")).doesNotExist();
        assertThat(hears("wake up recorder")).containsExactly(new Prompt.Awake());
        assertThat(hears("new calf twelve heifer")).hasExactlyElementsOfTypes(Prompt.ReadBack.class);
    }

    @Test
    void whatever_is_said_in_whatever_order_saved_is_only_said_of_what_is_in_the_record() {
        List<String> said = List.of(
                "new calf twelve",
                "calf twelve heifer",
                "calf thirteen bull",
                "same calf navel dipped",
                "calf twelve",
                "confirm entry",
                "confirm entry",
                "cancel entry",
                "undo last entry",
                "repeat entry",
                "what is due",
                "how is calf twelve",
                "print card for calf twelve",
                "put it off",
                "hello there",
                "barn forty degrees",
                "new calf of cow seven",
                "calf of cow seven is calf twelve",
                "calf twelve died",
                "pause recorder",
                "wake up recorder");
        for (long seed = 0; seed < 40; seed++) {
            night();
            SplittableRandom random = new SplittableRandom(seed);
            List<String> story = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                String words = said.get(random.nextInt(said.size()));
                story.add(words);
                if (random.nextInt(6) == 0) {
                    journal.failNext("the disk is full");
                }
                int before = journal.all().size();
                List<Prompt> prompts = hears(words, random.nextInt(5) == 0);
                int grown = journal.all().size() - before;
                int told = prompts.stream()
                        .mapToInt(prompt -> prompt instanceof Prompt.Saved saved
                                ? saved.facts()
                                : prompt instanceof Prompt.Undone undone ? undone.facts() : 0)
                        .sum();
                assertThat(told).as("seed %d, %s", seed, story).isEqualTo(grown);
                clock.moveTo(Duration.between(SpokenSentence.SPOKEN_AT, clock.instant())
                        .plusSeconds(random.nextInt(30)));
                recorder.tick();
            }
        }
    }

    @Test
    void the_clock_of_a_replay_goes_with_the_sound() {
        Instant before = clock.instant();
        clock.moveTo(Duration.ofSeconds(90));
        assertThat(clock.instant()).isEqualTo(before.plusSeconds(90));
    }
}
