package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.speech.Hypothesis;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;

/** Several hearings of one sound, the plain one first. In each the readings are parted by bars, each 3 behind the last. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WeighingTest {
    private static final Listener LISTENER = Listener.onTheTablesFarm();
    private static final double STEP = 3;

    @Test
    void the_meaning_that_lags_least_over_all_hearings_is_taken() {
        assertThat(weighed(
                        "calf thirteen heifer",
                        "calf thirty heifer | calf thirteen heifer",
                        "calf thirty heifer | calf thirteen heifer",
                        "calf thirteen heifer"))
                .isEqualTo(LISTENER.hears("calf thirteen heifer"));
    }

    @Test
    void other_words_of_the_same_meaning_agree() {
        assertThat(weighed("calf two oh seven bull", "calf two hundred seven bull", "calf two oh seven bull"))
                .isEqualTo(LISTENER.hears("calf two oh seven bull"));
    }

    @Test
    void what_hearings_dispute_is_asked_about() {
        assertThat(weighed("calf thirteen heifer", "calf thirty heifer"))
                .isInstanceOfSatisfying(Interpretation.Unsure.class, unsure -> {
                    assertThat(unsure.best().calf()).isEqualTo(new CalfReference.Numbered("13"));
                    assertThat(unsure.doubts())
                            .containsExactly(new Doubt.SoundsLike(List.of("calf", "thirty", "heifer")));
                });
    }

    @Test
    void what_few_hearings_found_is_asked_about() {
        assertThat(weighed(
                        "calf twelve heifer",
                        "calf well heifer | calf twelve heifer",
                        "calf well heifer | calf twelve heifer",
                        "calf well heifer | calf twelve heifer"))
                .as("the others had it second, as their first does not parse")
                .isEqualTo(LISTENER.hears("calf twelve heifer"));
        assertThat(weighed("calf twelve heifer", "[unk]", "[unk]", "[unk]")).isInstanceOf(Interpretation.Unsure.class);
    }

    @Test
    void what_lags_far_behind_is_not_understood() {
        String[] hearings = Stream.generate(() -> "[unk]").limit(14).toArray(String[]::new);
        hearings[0] = "calf twelve heifer";
        assertThat(weighed(hearings)).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void what_wavers_with_no_other_words_was_hard_to_hear() {
        assertThat(weighed("calf twelve heifer", "[unk]", "[unk]", "[unk]"))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.doubts()).containsExactly(new Doubt.Unclear()));
    }

    @Test
    void a_calf_on_the_list_comes_before_one_that_is_not_if_it_is_near() {
        assertThat(weighed("calf nineteen heifer | calf ninety heifer"))
                .isEqualTo(LISTENER.hears("calf ninety heifer"));
        Thresholds strict = new Thresholds(8, 20, 10, 16, 0.3, 1, 4, 2, STEP - 1, 0.5, 30, 1, 2, 360);
        assertThat(weighed(strict, OptionalDouble.empty(), "calf nineteen heifer | calf ninety heifer"))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.best().calf()).isEqualTo(new CalfReference.Numbered("19")));
    }

    @Test
    void free_speech_that_fits_better_makes_it_doubtful_and_then_refuses_it() {
        String three = "calf twelve heifer";
        assertThat(free(0.4 * 3, three)).isEqualTo(LISTENER.hears(three));
        assertThat(free(0.6 * 3, three)).isInstanceOf(Interpretation.Unsure.class);
        assertThat(free(2.1 * 3, three)).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void free_speech_is_held_against_the_meaning_that_is_taken_and_not_the_best_reading() {
        assertThat(free(0.4 * 3, "[unk] | calf twelve heifer")).isInstanceOf(Interpretation.Unsure.class);
    }

    @Test
    void a_control_is_plain_english_so_that_free_speech_may_fit_it_better() {
        assertThat(free(1.9 * 2, "confirm entry")).isInstanceOf(Interpretation.ControlHeard.class);
        assertThat(free(2.1 * 2, "confirm entry")).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void a_half_sentence_that_free_speech_fits_far_better_is_none() {
        assertThat(free(1.9 * 2, "calf twelve")).isInstanceOf(Interpretation.Unsure.class);
        assertThat(free(2.1 * 2, "calf twelve")).isEqualTo(new Interpretation.NoMatch(List.of("calf", "twelve")));
        assertThat(misgivings(2.5 * 2, "calf twelve"))
                .containsExactly(new Misgiving.FreeSpeechFits(2.5, Listener.THRESHOLDS.rejectFree()));
        assertThat(misgivings(0, "calf twelve")).isEmpty();
    }

    @Test
    void the_number_of_a_new_calf_is_doubted_from_as_far_away_as_that_of_any_other() {
        assertThat(weighed("new calf five one three heifer | new calf five one four heifer"))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.doubts())
                                .containsExactly(
                                        new Doubt.SoundsLike(List.of("new", "calf", "five", "one", "four", "heifer"))));
        assertThat(weighed("new calf five one three heifer | calf five one two heifer"))
                .as("opening a calf is not naming another")
                .isInstanceOf(Interpretation.Understood.class);
    }

    @Test
    void another_value_of_the_same_fact_is_doubted_from_further_away_than_another_fact() {
        assertThat(disputed("calf twelve weight eighty pounds", "calf twelve weight ninety pounds"))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        unsure -> assertThat(unsure.doubts())
                                .containsExactly(
                                        new Doubt.SoundsLike(List.of("calf", "twelve", "weight", "ninety", "pounds"))));
        assertThat(disputed("calf twelve standing", "calf twelve licked"))
                .isInstanceOf(Interpretation.Understood.class);
    }

    /** One of four hearings has the other first. */
    private static Interpretation disputed(String one, String other) {
        String most = one + " | " + other;
        return weighed(most, most, most, other + " | " + one);
    }

    @Test
    void a_control_that_hearings_dispute_is_not_obeyed() {
        assertThat(weighed("confirm entry", "cancel entry")).isInstanceOf(Interpretation.NoMatch.class);
        assertThat(weighed("confirm entry", "confirm entry | cancel entry"))
                .isInstanceOf(Interpretation.ControlHeard.class);
    }

    @Test
    void what_nobody_understands_stays_not_understood() {
        assertThat(weighed("[unk]", "the gate", "[unk] open")).isEqualTo(new Interpretation.NoMatch(List.of("[unk]")));
    }

    @Test
    void what_speaks_against_a_meaning_is_told_with_the_limit_that_it_broke() {
        assertThat(misgivings(0, "calf twelve heifer")).isEmpty();
        assertThat(misgivings(0.6 * 3, "calf twelve heifer"))
                .containsExactly(new Misgiving.FreeSpeechFits(0.6, Listener.THRESHOLDS.free()));
        assertThat(misgivings(0, "calf thirteen heifer", "calf thirty heifer"))
                .containsExactly(
                        new Misgiving.Rival(List.of("calf", "thirty", "heifer"), 0, Listener.THRESHOLDS.otherCalf()));
        assertThat(misgivings(0, "calf twelve heifer", "[unk]", "[unk]", "[unk]"))
                .containsExactly(
                        new Misgiving.LagsBehind(Listener.THRESHOLDS.missing() * 3 / 4, Listener.THRESHOLDS.lag()),
                        new Misgiving.FewHearings(1, 4));
        assertThat(misgivings(0, "the gate"))
                .as("nothing that means anything was heard")
                .isEmpty();
    }

    private static List<Misgiving> misgivings(double free, String... hearings) {
        return Listener.INTERPRETER.misgivings(
                evidence(OptionalDouble.of(free), hearings), LISTENER.speech(), LISTENER.listening());
    }

    private static Evidence evidence(OptionalDouble free, String... hearings) {
        return new Evidence(Stream.of(hearings).map(WeighingTest::readings).toList(), free, Optional.empty());
    }

    private static Interpretation weighed(String... hearings) {
        return weighed(Listener.THRESHOLDS, OptionalDouble.empty(), hearings);
    }

    private static Interpretation free(double better, String hearing) {
        return weighed(Listener.THRESHOLDS, OptionalDouble.of(better), hearing);
    }

    private static Interpretation weighed(Thresholds thresholds, OptionalDouble free, String... hearings) {
        return (thresholds.equals(Listener.THRESHOLDS)
                        ? Listener.INTERPRETER
                        : new UtteranceInterpreter(Grammars.ofTheTable().grammar(), thresholds))
                .interpret(evidence(free, hearings), LISTENER.speech(), LISTENER.listening());
    }

    private static List<Hypothesis> readings(String hearing) {
        List<String> readings = Arrays.asList(hearing.split(" \\| "));
        return readings.stream()
                .map(words -> Grammars.reading(words, -STEP * readings.indexOf(words)))
                .toList();
    }
}
