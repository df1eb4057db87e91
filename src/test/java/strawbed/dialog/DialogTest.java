package strawbed.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.calf.CalfRecord;
import strawbed.care.Caution;
import strawbed.care.Contradiction;
import strawbed.event.Event.CalfNumbered;
import strawbed.event.Event.CalfOpened;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.VoiceNoteTaken;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.statement.Control;
import strawbed.statement.Doubt;
import strawbed.testkit.Barn;

/** Nights in the barn, told from what is said to what is saved. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DialogTest {
    private static final SexNoted HEIFER = new SexNoted(Term.Sex.FEMALE);
    private static final SexNoted BULL = new SexNoted(Term.Sex.MALE);

    @Test
    void a_feeding_is_saved_only_after_a_yes() {
        Barn barn = Barn.with("12").hears("calf twelve fed two quarts");
        assertThat(barn.asksFor()).containsExactly("ReadBack");
        assertThat(barn.saved()).isEmpty();

        barn.hears("confirm entry");
        assertThat(barn.asks()).containsExactly(new Prompt.Saved(1, "12"));
        assertThat(barn.saved())
                .singleElement()
                .isInstanceOfSatisfying(
                        ColostrumFed.class,
                        fed -> assertThat(fed.volume()).isEqualTo(new Volume(new BigDecimal(2), VolumeUnit.QUART)));
        assertThat(barn.isPending()).isFalse();
    }

    @Test
    void voice_and_button_are_the_same_yes() {
        Barn voice = Barn.with("12").hears("calf twelve heifer").hears("confirm entry");
        Barn button = Barn.with("12").hears("calf twelve heifer").presses(Control.CONFIRM_ENTRY);

        assertThat(button.asks()).isEqualTo(voice.asks());
        assertThat(button.saved()).isEqualTo(voice.saved());
    }

    @Test
    void several_facts_are_saved_together() {
        Barn barn = Barn.with("12").hears("calf twelve heifer navel dipped").hears("confirm entry");

        assertThat(barn.asks()).containsExactly(new Prompt.Saved(2, "12"));
        assertThat(barn.saved())
                .extracting(event -> (Object) event.getClass())
                .containsExactly(SexNoted.class, NavelDipped.class);
    }

    @Test
    void what_was_heard_is_kept_with_the_fact() {
        Barn barn = Barn.with("12").hears("calf twelve note the gate").hears("confirm entry");

        RecordedEvent note = barn.journal().all().get(1);
        assertThat(note.provenance().words()).containsExactly("calf", "twelve", "note", "the", "gate");
        assertThat(note.event()).isEqualTo(new VoiceNoteTaken(note.provenance().sound()));
        assertThat(note.provenance().sound()).isEqualTo("sound-0");
    }

    @Test
    void cancel_throws_away_and_keeps_the_words_as_settled() {
        Barn barn = Barn.with("12").hears("calf twelve heifer").hears("cancel entry");

        assertThat(barn.asksFor()).containsExactly("Cancelled");
        assertThat(barn.saved()).isEmpty();
        assertThat(barn.open()).isEmpty();
        assertThat(barn.journal().settled()).containsExactly("calf twelve heifer: cancelled");
        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("NothingPending");
    }

    @Test
    void repeat_reads_back_again() {
        Barn barn = Barn.with("12").hears("calf twelve heifer");
        List<Prompt> first = barn.asks();

        assertThat(barn.hears("repeat entry").asks()).isEqualTo(first);
        assertThat(barn.hears("confirm entry").saved()).containsExactly(HEIFER);
    }

    @Test
    void repeat_asks_again_what_was_doubtful() {
        Barn barn = Barn.with("12").hears("calf ninety heifer").hears("repeat entry");

        assertThat(barn.doubts()).containsExactly(new Doubt.NotListed("90"));
        assertThat(barn.isPending()).isTrue();
    }

    @Test
    void what_was_done_before_the_birth_is_asked_about() {
        Barn barn = Barn.with("12")
                .hears("calf twelve born ten minutes ago")
                .hears("confirm entry")
                .hears("calf twelve fed two quarts twenty minutes ago");

        assertThat(barn.asksFor()).containsExactly("Ask");
        assertThat(barn.doubts())
                .singleElement()
                .isInstanceOfSatisfying(
                        Doubt.Contradicts.class,
                        doubt -> assertThat(doubt.what()).isInstanceOf(Contradiction.BeforeBirth.class));
        assertThat(barn.hears("confirm entry").saved())
                .as("asked, never refused")
                .hasSize(2);
    }

    @Test
    void a_birth_told_in_the_same_breath_counts_too() {
        Barn barn = Barn.with("12").hears("calf twelve born ten minutes ago fed two quarts twenty minutes ago");

        assertThat(barn.doubts())
                .hasSize(1)
                .allSatisfy(doubt -> assertThat(doubt).isInstanceOf(Doubt.Contradicts.class));
    }

    @Test
    void a_second_birth_is_asked_about() {
        Barn barn = Barn.with("12")
                .hears("calf twelve born ten minutes ago")
                .hears("confirm entry")
                .hears("calf twelve born now");

        assertThat(barn.doubts())
                .singleElement()
                .isInstanceOfSatisfying(
                        Doubt.Contradicts.class,
                        doubt -> assertThat(doubt.what()).isInstanceOf(Contradiction.SecondBirth.class));
    }

    @Test
    void undo_withdraws_the_last_entry_and_removes_nothing() {
        Barn barn = Barn.with("12")
                .hears("calf twelve heifer navel dipped")
                .hears("confirm entry")
                .hears("undo last entry");

        assertThat(barn.asks()).containsExactly(new Prompt.Undone(2));
        assertThat(barn.saved())
                .hasSize(4)
                .endsWith(
                        new EventWithdrawn(barn.journal().all().get(1).id()),
                        new EventWithdrawn(barn.journal().all().get(2).id()));
        assertThat(calf(barn, "12").sex()).isEmpty();
    }

    @Test
    void a_second_undo_finds_nothing() {
        Barn barn = Barn.with("12")
                .hears("calf twelve heifer")
                .hears("confirm entry")
                .hears("undo last entry");

        assertThat(barn.hears("undo last entry").asksFor()).containsExactly("NothingToUndo");
        assertThat(barn.saved()).hasSize(2);
    }

    @Test
    void undo_leaves_the_statement_that_waits() {
        Barn barn = Barn.with("12")
                .hears("calf twelve heifer")
                .hears("confirm entry")
                .hears("calf twelve navel dipped")
                .hears("undo last entry");

        assertThat(barn.isPending()).isTrue();
        assertThat(barn.hears("confirm entry").asks()).containsExactly(new Prompt.Saved(1, "12"));
        assertThat(calf(barn, "12").sex()).isEmpty();
    }

    @Test
    void nothing_can_be_answered_when_nothing_waits() {
        Barn barn = Barn.with("12");

        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("NothingPending");
        assertThat(barn.hears("cancel entry").asksFor()).containsExactly("NothingPending");
        assertThat(barn.hears("repeat entry").asksFor()).containsExactly("NothingPending");
        assertThat(barn.hears("undo last entry").asksFor()).containsExactly("NothingToUndo");
        assertThat(barn.waits().asks()).isEmpty();
        assertThat(barn.saved()).isEmpty();
    }

    @Test
    void a_second_yes_saves_nothing_twice() {
        Barn barn = Barn.with("12")
                .hears("calf twelve heifer")
                .hears("confirm entry")
                .hears("confirm entry");

        assertThat(barn.asksFor()).containsExactly("NothingPending");
        assertThat(barn.saved()).containsExactly(HEIFER);
    }

    @Test
    void silence_leaves_the_statement_among_the_open_ones() {
        Barn barn = Barn.with("12").hears("calf twelve heifer").waits();

        assertThat(barn.asksFor()).containsExactly("KeptOpen");
        assertThat(barn.open()).containsExactly("calf twelve heifer");
        assertThat(barn.saved()).isEmpty();
        assertThat(barn.isPending()).isFalse();
    }

    @Test
    void a_new_statement_moves_the_old_one_to_the_open_ones() {
        Barn barn = Barn.with("12", "13").hears("calf twelve heifer").hears("calf thirteen bull");

        assertThat(barn.open()).containsExactly("calf twelve heifer");
        assertThat(barn.hears("confirm entry").asks()).containsExactly(new Prompt.Saved(1, "13"));
        assertThat(barn.saved()).containsExactly(BULL);
    }

    @Test
    void going_on_takes_the_place_of_what_waits() {
        Barn barn = Barn.with("12").hears("calf twelve heifer").hearsItGoOn("calf twelve heifer navel dipped");

        assertThat(barn.open()).isEmpty();
        assertThat(barn.hears("confirm entry").saved()).hasSize(2);
    }

    @Test
    void a_refused_save_is_told_and_can_be_tried_again() {
        Barn barn = Barn.with("12").hears("calf twelve heifer").hasAFullDisk().hears("confirm entry");

        assertThat(barn.asks()).containsExactly(new Prompt.NotSaved("The disk is full. Free some space."));
        assertThat(barn.saved()).isEmpty();
        assertThat(barn.isPending()).isTrue();

        assertThat(barn.hears("confirm entry").asks()).containsExactly(new Prompt.Saved(1, "12"));
        assertThat(barn.saved()).containsExactly(HEIFER);
    }

    @Test
    void a_refused_undo_can_be_tried_again() {
        Barn barn = Barn.with("12")
                .hears("calf twelve heifer")
                .hears("confirm entry")
                .hasAFullDisk();

        assertThat(barn.hears("undo last entry").asksFor()).containsExactly("NotSaved");
        assertThat(barn.hears("undo last entry").asks()).containsExactly(new Prompt.Undone(1));
    }

    @Test
    void not_breathing_warns_before_anybody_says_yes_and_only_then() {
        Barn barn = Barn.with("12").hears("calf twelve not breathing");
        assertThat(barn.asksFor()).containsExactly("Warn", "ReadBack");
        assertThat(barn.asks()).first().isEqualTo(new Prompt.Warn(Caution.NOT_BREATHING));

        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("Saved");
    }

    @Test
    void a_tube_feed_warns_when_it_is_saved() {
        Barn barn = Barn.with("12").hears("calf twelve fed two quarts by tube");
        assertThat(barn.asksFor()).containsExactly("ReadBack");

        assertThat(barn.hears("confirm entry").asks())
                .containsExactly(new Prompt.Saved(1, "12"), new Prompt.Warn(Caution.TUBE_FEEDING));
    }

    @Test
    void a_yes_to_a_number_that_is_not_listed_opens_the_calf() {
        Barn barn = Barn.with("12").hears("calf ninety heifer");
        assertThat(barn.asksFor()).containsExactly("Ask");
        assertThat(barn.doubts()).containsExactly(new Doubt.NotListed("90"));

        assertThat(barn.hears("confirm entry").asks()).containsExactly(new Prompt.Saved(2, "90"));
        assertThat(calf(barn, "90").sex()).contains(Term.Sex.FEMALE);
        assertThat(barn.hears("calf ninety navel dipped").asksFor()).containsExactly("ReadBack");
    }

    @Test
    void a_cancelled_number_that_is_not_listed_opens_nothing() {
        Barn barn = Barn.with("12").hears("calf ninety heifer").hears("cancel entry");

        assertThat(barn.herd().openNumbers()).containsExactly("12");
        assertThat(barn.hears("same calf heifer").asksFor()).containsExactly("Ask");
        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("CannotConfirm");
    }

    @Test
    void a_new_calf_of_a_cow_gets_its_number_later() {
        Barn barn = Barn.with().hears("new calf of cow four one seven heifer").hears("confirm entry");
        assertThat(barn.saved()).first().isInstanceOfSatisfying(CalfOpened.class, opened -> {
            assertThat(opened.number()).isNull();
            assertThat(opened.dam()).isEqualTo("417");
        });
        assertThat(barn.asks())
                .first()
                .isInstanceOfSatisfying(
                        Prompt.Saved.class, saved -> assertThat(saved.calf()).isNull());

        barn.hears("calf of cow four one seven is calf five one two").hears("confirm entry");
        assertThat(barn.asks()).containsExactly(new Prompt.Saved(1, "512"));
        assertThat(barn.saved()).last().isEqualTo(new CalfNumbered("512"));
        assertThat(calf(barn, "512").sex()).contains(Term.Sex.FEMALE);
        assertThat(barn.herd().calves()).hasSize(1);
    }

    @Test
    void of_twins_it_is_asked_which_one() {
        Barn barn = twins().hears("calf of cow four one seven navel dipped");

        assertThat(barn.asksFor()).containsExactly("Ask");
        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("CannotConfirm");
        assertThat(barn.isPending()).isTrue();
    }

    @Test
    void first_and_second_twin_are_told_apart() {
        Barn barn = twins().hears("first calf of cow four one seven heifer")
                .hears("confirm entry")
                .hears("second calf of cow four one seven bull")
                .hears("confirm entry");

        List<CalfRecord> twins = barn.herd().byDam("417");
        assertThat(twins).hasSize(2);
        assertThat(twins.get(0).sex()).contains(Term.Sex.FEMALE);
        assertThat(twins.get(1).sex()).contains(Term.Sex.MALE);
    }

    @Test
    void there_is_no_third_twin() {
        Barn barn = twins().hears("third calf of cow four one seven heifer");

        assertThat(barn.asksFor()).containsExactly("Ask");
        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("CannotConfirm");
    }

    @Test
    void a_calf_of_a_cow_without_one_is_asked_about_and_opened_by_a_yes() {
        Barn barn = Barn.with("12").hears("calf of cow four one seven heifer");
        assertThat(barn.doubts()).containsExactly(new Doubt.NoCalfOfCow("417"));

        barn.hears("confirm entry");
        assertThat(barn.herd().byDam("417")).hasSize(1);
    }

    @Test
    void the_same_calf_is_the_one_named_last() {
        Barn barn = Barn.with("12", "13")
                .hears("calf twelve heifer")
                .hears("confirm entry")
                .hears("calf thirteen bull")
                .hears("confirm entry")
                .hears("same calf navel dipped");

        assertThat(barn.asksFor()).containsExactly("ReadBack");
        assertThat(barn.hears("confirm entry").asks()).containsExactly(new Prompt.Saved(1, "13"));
    }

    @Test
    void there_is_no_same_calf_at_first() {
        Barn barn = Barn.with("12").hears("same calf heifer");

        assertThat(barn.doubts()).contains(new Doubt.NoSameCalf());
        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("CannotConfirm");
        assertThat(barn.saved()).isEmpty();
    }

    @Test
    void a_left_over_without_a_feed_is_asked_about() {
        Barn barn = Barn.with("12").hears("calf twelve left one quart");
        assertThat(barn.doubts()).containsExactly(new Doubt.NoFeedToAmend());

        barn.hears("calf twelve fed two quarts left one quart");
        assertThat(barn.doubts()).isEmpty();
        barn.hears("confirm entry").hears("calf twelve left half a quart");
        assertThat(barn.doubts()).isEmpty();
    }

    @Test
    void half_a_sentence_cannot_be_confirmed() {
        Barn barn = Barn.with("12").hears("calf twelve weight eighty eight");

        assertThat(barn.asksFor()).containsExactly("Ask");
        assertThat(barn.hears("confirm entry").asksFor()).containsExactly("CannotConfirm");
        assertThat(barn.saved()).isEmpty();
    }

    @Test
    void other_speech_is_kept_and_changes_nothing() {
        Barn barn = Barn.with("12").hears("calf twelve heifer").hears("the gate is open");

        assertThat(barn.asksFor()).containsExactly("NotUnderstood");
        assertThat(barn.open()).containsExactly("the gate is open");
        assertThat(barn.hears("confirm entry").saved()).containsExactly(HEIFER);
    }

    @Test
    void a_calf_is_asked_about_by_name_or_as_the_one_named_last() {
        Barn barn = Barn.with("12").hears("print the card");
        assertThat(barn.asksFor()).containsExactly("NoSuchCalf");

        barn.hears("how is calf twelve");
        assertThat(barn.asks())
                .containsExactly(new Prompt.TellCalf(calf(barn, "12").id()));
        assertThat(barn.hears("how is calf ninety").asksFor()).containsExactly("NoSuchCalf");

        barn.hears("calf twelve heifer").presses(Control.PRINT_CARD);
        assertThat(barn.asks())
                .containsExactly(new Prompt.PrintCard(calf(barn, "12").id()));
    }

    @ParameterizedTest
    @EnumSource(Control.class)
    void no_control_but_yes_and_undo_writes(Control control) {
        Barn barn = Barn.with("12").hears("calf twelve heifer").presses(control);

        assertThat(barn.saved()).hasSize(control == Control.CONFIRM_ENTRY ? 1 : 0);
    }

    /** Seeded nights of anything that can come, a full disk among it. */
    @Test
    void saved_is_said_only_after_the_record_took_it_whatever_comes() {
        List<String> words = List.of(
                "calf twelve heifer",
                "calf ninety bull",
                "calf thirteen fed two quarts by tube",
                "calf thirteen left one quart",
                "same calf navel dipped",
                "new calf of cow four one seven heifer",
                "calf of cow four one seven navel dipped",
                "second calf of cow four one seven bull",
                "calf of cow four one seven is calf five one two",
                "new calf",
                "calf twelve not breathing",
                "calf twelve weight eighty eight",
                "calf twelve note the gate",
                "barn twenty degrees",
                "the gate is open",
                "how is calf twelve",
                "calf twelve died");
        List<Control> controls = List.of(Control.values());
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Barn barn = Barn.with("12", "13");
            for (int i = 0; i < 40; i++) {
                if (random.nextInt(8) == 0) {
                    barn.hasAFullDisk();
                }
                switch (random.nextInt(7)) {
                    case 0, 1, 2 -> barn.hears(words.get(random.nextInt(words.size())));
                    case 3 -> barn.hearsItGoOn(words.get(random.nextInt(words.size())));
                    case 4 -> barn.presses(Control.CONFIRM_ENTRY);
                    case 5 -> barn.presses(controls.get(random.nextInt(controls.size())));
                    default -> barn.waits();
                }
            }
            assertHonest(barn, seed);
        }
    }

    private static void assertHonest(Barn barn, long seed) {
        for (Barn.Step step : barn.steps()) {
            boolean says = step.outcome().prompts().stream().anyMatch(Prompt.Saved.class::isInstance);
            boolean writes = !step.outcome().append().isEmpty();
            assertThat(says).as("seed %d: %s", seed, step).isEqualTo(isSavedEntry(step.input()));
            assertThat(writes && !(step.input() instanceof DialogInput.Ordered))
                    .as("seed %d: %s", seed, step)
                    .isFalse();
        }
        long told = barn.steps().stream()
                .flatMap(step -> step.outcome().prompts().stream())
                .mapToLong(prompt -> prompt instanceof Prompt.Saved saved
                        ? saved.facts()
                        : prompt instanceof Prompt.Undone undone ? undone.facts() : 0)
                .sum();
        assertThat(told).as("seed %d", seed).isEqualTo(barn.saved().size());
    }

    private static boolean isSavedEntry(DialogInput input) {
        return input instanceof DialogInput.Committed committed
                && committed.events().stream().noneMatch(event -> event.event() instanceof EventWithdrawn);
    }

    private static Barn twins() {
        return Barn.with()
                .hears("new calf of cow four one seven")
                .hears("confirm entry")
                .hears("new calf of cow four one seven")
                .hears("confirm entry");
    }

    private static CalfRecord calf(Barn barn, String number) {
        return barn.herd().byNumber(number).orElseThrow();
    }
}
