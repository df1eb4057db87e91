package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.testkit.SpokenSentence;

/** How the bench judges what was heard. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenTest {
    private static final Spoken BORN = new Spoken(
            new SpokenSentence(
                    "calf twelve born now fed three quarts",
                    "12",
                    List.of("CalfBorn at=2026-03-03T12:00:00Z", "ColostrumFed unit=quart, value=3")),
            Path.of("001.wav"));
    private static final String RIGHT = line(
            "understood",
            "12",
            "{\"type\":\"CalfBorn\",\"at\":\"2026-03-03T12:00:00.410Z\"},"
                    + "{\"type\":\"ColostrumFed\",\"value\":3,\"unit\":\"quart\"}");

    private static String line(String verdict, String calf, String events) {
        return "{\"file\":\"001.wav\",\"words\":\"calf twelve\",\"verdict\":\"" + verdict + "\",\"calf\":\"" + calf
                + "\",\"control\":null,\"events\":[" + events + "]}";
    }

    private static Outcome outcome(String... lines) {
        return BORN.outcome(Stream.of(lines).map(HeardLine::of).toList());
    }

    @Test
    void one_understood_line_with_all_of_it_is_wholly_right_and_seconds_do_not_count() {
        assertThat(outcome(RIGHT)).isEqualTo(Outcome.RIGHT);
    }

    @Test
    void another_calf_another_value_another_minute_or_a_missing_event_is_wrong() {
        assertThat(outcome(RIGHT.replace("\"calf\":\"12\"", "\"calf\":\"20\""))).isEqualTo(Outcome.WRONG);
        assertThat(outcome(RIGHT.replace("\"value\":3", "\"value\":3.5"))).isEqualTo(Outcome.WRONG);
        assertThat(outcome(RIGHT.replace("12:00:00.410Z", "12:01:00Z"))).isEqualTo(Outcome.WRONG);
        assertThat(outcome(line("understood", "12", ""))).isEqualTo(Outcome.WRONG);
    }

    @Test
    void a_control_phrase_in_its_place_is_wrong() {
        assertThat(outcome(RIGHT.replace("\"control\":null", "\"control\":\"undo\"")))
                .isEqualTo(Outcome.WRONG);
    }

    @Test
    void a_second_statement_that_nobody_said_is_wrong() {
        assertThat(outcome(RIGHT, line("understood", "12", ""))).isEqualTo(Outcome.WRONG);
        assertThat(outcome(RIGHT, line("unsure", "12", ""))).isEqualTo(Outcome.WRONG);
    }

    @Test
    void noise_beside_a_sentence_that_was_not_understood_changes_no_record() {
        assertThat(outcome(RIGHT, line("nomatch", "-", ""))).isEqualTo(Outcome.RIGHT);
        assertThat(outcome(line("understood", "12", ""), line("nomatch", "-", "")))
                .as("the sentence lost a part")
                .isEqualTo(Outcome.WRONG);
    }

    @Test
    void a_question_is_right_or_wrong_by_what_it_asks() {
        assertThat(outcome(RIGHT.replace("understood", "unsure"))).isEqualTo(Outcome.ASKED_RIGHT);
        assertThat(outcome(line("unsure", "12", ""))).isEqualTo(Outcome.ASKED_WRONG);
    }

    @Test
    void no_match_and_no_line_at_all_are_not_understood() {
        assertThat(outcome(line("nomatch", "12", ""))).isEqualTo(Outcome.NOT_UNDERSTOOD);
        assertThat(outcome()).isEqualTo(Outcome.NOT_UNDERSTOOD);
    }
}
