package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Event.SexNoted;
import strawbed.event.Term;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.GrammarReader;
import strawbed.grammar.RuleId;
import strawbed.statement.CalfReference;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.UtteranceInterpreter;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;
import strawbed.testkit.SpokenSentence;

/** Every number from 0 to 9999, in every form. The forms are how people read out numbers; no published source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenFormsTest {
    private static final Grammar GRAMMAR = GrammarReader.read(Grammars.source(), "strawbed.abnf");
    private static final SpeechTime SPEECH = new SpeechTime(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE);

    @Test
    void every_form_of_every_number_is_a_number_of_the_grammar() {
        GrammarMatcher matcher = new GrammarMatcher(GRAMMAR);
        RuleId number = new RuleId("numbers.abnf", "number");
        List<String> strangers = new ArrayList<>();
        for (int value = 0; value <= 9999; value++) {
            for (String form : SpokenForms.of(value)) {
                if (matcher.match(number, words(form), 1).isEmpty()) {
                    strangers.add(value + ": " + form);
                }
            }
        }
        assertThat(strangers).isEmpty();
    }

    @Test
    void every_form_of_every_number_names_exactly_that_calf() {
        UtteranceInterpreter interpreter = new UtteranceInterpreter(GRAMMAR, Listener.THRESHOLDS);
        List<String> wrong = new ArrayList<>();
        for (int value = 0; value <= 9999; value++) {
            String calf = String.valueOf(value);
            Listening listening = new Listening(Set.of(calf), false);
            for (String form : SpokenForms.of(value)) {
                Interpretation meaning = interpreter.interpret(
                        List.of(Grammars.reading("calf " + form + " heifer", 0)), SPEECH, listening);
                if (!isHeifer(meaning, calf)) {
                    wrong.add(calf + ": " + form + " -> " + meaning);
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static boolean isHeifer(Interpretation meaning, String calf) {
        return meaning instanceof Interpretation.Understood understood
                && understood.statement().calf().equals(new CalfReference.Numbered(calf))
                && understood.statement().facts().size() == 1
                && understood.statement().facts().get(0).event().equals(new SexNoted(Term.Sex.FEMALE));
    }

    @Test
    void no_form_stands_for_two_numbers() {
        Map<String, Integer> numbers = new HashMap<>();
        for (int value = 0; value <= 9999; value++) {
            for (String form : SpokenForms.of(value)) {
                assertThat(numbers.put(form, value)).as(form).isNull();
            }
        }
        assertThat(numbers).hasSizeGreaterThan(30_000);
    }

    @Test
    void numbers_have_the_forms_that_people_use() {
        assertThat(SpokenForms.of(0)).containsExactly("zero");
        assertThat(SpokenForms.of(7)).containsExactly("seven");
        assertThat(SpokenForms.of(12)).containsExactlyInAnyOrder("twelve", "one two");
        assertThat(SpokenForms.of(207))
                .containsExactlyInAnyOrder("two hundred seven", "two oh seven", "two zero seven");
        assertThat(SpokenForms.of(417))
                .containsExactlyInAnyOrder("four hundred seventeen", "four seventeen", "four one seven");
        assertThat(SpokenForms.of(1200))
                .containsExactlyInAnyOrder(
                        "one thousand two hundred", "twelve hundred", "one two zero zero", "one two oh oh");
        assertThat(SpokenForms.of(4127))
                .containsExactlyInAnyOrder(
                        "four thousand one hundred twenty seven", "forty one twenty seven", "four one two seven");
    }

    @Test
    void other_numbers_have_none() {
        assertThatThrownBy(() -> SpokenForms.of(-1)).hasMessageContaining("-1");
        assertThatThrownBy(() -> SpokenForms.of(10_000)).hasMessageContaining("10000");
    }

    @Test
    void all_forms_are_made_of_the_number_words() {
        Set<String> used = new TreeSet<>();
        for (int value = 0; value <= 9999; value++) {
            SpokenForms.of(value).forEach(form -> used.addAll(words(form)));
        }
        assertThat(used)
                .isSubsetOf(GRAMMAR.tokens(List.of(new RuleId("numbers.abnf", "number"))))
                .hasSize(31);
    }

    private static List<String> words(String form) {
        return Arrays.asList(form.split(" "));
    }
}
