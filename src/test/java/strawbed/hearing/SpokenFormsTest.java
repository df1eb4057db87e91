package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.grammar.RuleId;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.UtteranceInterpreter;
import strawbed.testkit.Grammars;
import strawbed.testkit.SpokenSentence;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenFormsTest {
    private static final SpeechTime SPEECH = new SpeechTime(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE);

    @Test
    void every_form_of_every_number_is_that_number_in_the_grammar() {
        UtteranceInterpreter interpreter = new UtteranceInterpreter(
                Phrasebook.read(Grammars.source()).with(List.of()).grammar(), 0);
        List<String> wrong = new ArrayList<>();
        for (int number = 0; number <= 9999; number++) {
            for (String form : SpokenForms.of(number)) {
                Interpretation meaning = interpreter.interpret(
                        List.of(Grammars.reading("calf " + form + " heifer", 0)),
                        SPEECH,
                        new Listening(Set.of(String.valueOf(number)), false));
                if (!(meaning instanceof Interpretation.Understood understood
                        && SpokenSentence.calfOf(understood.statement()).equals(String.valueOf(number)))) {
                    wrong.add(number + " as " + form);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void a_number_is_said_in_full_in_pairs_and_digit_by_digit() {
        assertThat(SpokenForms.of(1207))
                .containsExactly(
                        "one thousand two hundred seven", "twelve oh seven", "one two zero seven", "one two oh seven");
        assertThat(SpokenForms.of(417)).containsExactly("four hundred seventeen", "four seventeen", "four one seven");
    }

    @Test
    void no_other_number_can_be_said() {
        assertThatThrownBy(() -> SpokenForms.of(10_000)).hasMessageContaining("10000");
    }

    @Test
    void the_same_list_gives_the_same_sentences() {
        Phrasebook book = Phrasebook.read(Grammars.source());
        assertThat(book.with(Set.of("12", "207")).vocabulary().spokenSentences())
                .isEqualTo(Phrasebook.read(Grammars.source())
                        .with(Set.of("207", "12"))
                        .vocabulary()
                        .spokenSentences());
    }

    @Test
    void a_number_that_cannot_be_said_is_left_out_of_the_list() {
        FarmGrammar farm = Phrasebook.read(Grammars.source()).with(List.of("12", "123456", "A7"));
        assertThat(farm.grammar().rule(new RuleId("calves.abnf", "listed")).toString())
                .contains("twelve")
                .doesNotContain("A7");
    }

    @Test
    void each_way_of_saying_a_listed_number_is_in_the_sentences() {
        List<List<String>> sentences = Phrasebook.read(Grammars.source())
                .with(List.of("417"))
                .vocabulary()
                .spokenSentences();
        for (String form : SpokenForms.of(417)) {
            List<String> words = Arrays.asList(("calf " + form).split(" "));
            assertThat(sentences)
                    .as(form)
                    .anyMatch(sentence -> sentence.size() > words.size()
                            && sentence.subList(0, words.size()).equals(words));
        }
    }
}
