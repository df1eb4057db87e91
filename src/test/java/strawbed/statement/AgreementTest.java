package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.testkit.Listener;

/** Three hearings of one sound, the plain one first. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AgreementTest {
    private static final Listener LISTENER = Listener.onTheTablesFarm();

    @Test
    void what_two_of_three_hear_is_taken() {
        assertThat(agreed("calf thirteen heifer", "calf thirty heifer", "calf thirty heifer"))
                .isEqualTo(LISTENER.hears("calf thirty heifer"));
        assertThat(agreed("calf thirty heifer", "calf thirteen heifer", "calf thirty heifer"))
                .isEqualTo(LISTENER.hears("calf thirty heifer"));
    }

    @Test
    void other_words_of_the_same_meaning_agree() {
        assertThat(agreed("calf two oh seven bull", "calf two hundred seven bull", "[unk]"))
                .isEqualTo(LISTENER.hears("calf two oh seven bull"));
    }

    @Test
    void three_different_hearings_are_asked_about() {
        assertThat(agreed("calf thirteen heifer", "calf thirty heifer", "calf fifty heifer"))
                .isInstanceOfSatisfying(Interpretation.Unsure.class, unsure -> {
                    assertThat(unsure.best().calf()).isEqualTo(new CalfReference.Numbered("13"));
                    assertThat(unsure.doubts())
                            .containsExactly(new Doubt.SoundsLike(List.of("calf", "thirty", "heifer")));
                });
    }

    @Test
    void one_hearing_that_another_disputes_is_asked_about() {
        assertThat(agreed("calf thirteen heifer", "calf thirty heifer", "[unk]"))
                .isInstanceOf(Interpretation.Unsure.class);
    }

    @Test
    void one_hearing_that_nothing_disputes_is_taken() {
        assertThat(agreed("[unk]", "calf thirteen heifer", "the gate is open"))
                .isEqualTo(LISTENER.hears("calf thirteen heifer"));
    }

    @Test
    void a_whole_sentence_comes_before_a_doubtful_one() {
        assertThat(agreed("calf nineteen heifer", "calf nineteen heifer", "calf ninety heifer"))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.best().calf()).isEqualTo(new CalfReference.Numbered("90")));
    }

    @Test
    void free_speech_needs_two_hearings() {
        assertThat(agreed("calf twelve note the gate", "[unk]", "[unk]")).isInstanceOf(Interpretation.Unsure.class);
        assertThat(agreed("calf twelve note the gate", "calf twelve note [unk]", "[unk]"))
                .isInstanceOf(Interpretation.Understood.class);
    }

    @Test
    void a_control_that_hearings_dispute_is_not_obeyed() {
        assertThat(agreed("confirm entry", "cancel entry", "[unk]")).isInstanceOf(Interpretation.NoMatch.class);
        assertThat(agreed("confirm entry", "confirm entry", "cancel entry"))
                .isInstanceOf(Interpretation.ControlHeard.class);
    }

    @Test
    void what_nobody_understands_stays_not_understood() {
        assertThat(agreed("[unk]", "the gate", "[unk] open")).isEqualTo(new Interpretation.NoMatch(List.of("[unk]")));
    }

    private static Interpretation agreed(String... hearings) {
        return Listener.INTERPRETER.agreed(
                Stream.of(hearings).map(words -> LISTENER.hears(words)).toList());
    }
}
