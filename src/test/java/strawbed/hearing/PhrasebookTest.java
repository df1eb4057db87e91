package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.grammar.RuleId;
import strawbed.testkit.Grammars;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PhrasebookTest {
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
