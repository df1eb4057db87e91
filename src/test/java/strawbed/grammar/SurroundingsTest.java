package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.hearing.Phrasebook;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SurroundingsTest {
    private static List<List<String>> through(Grammar grammar) {
        return new Surroundings(grammar, grammar.root(), new Phrases(grammar)).throughEveryPart();
    }

    @Test
    void each_is_a_sentence_and_together_they_have_every_word_of_the_farms_grammar() {
        Grammar grammar = Phrasebook.grammar(strawbed.testkit.Grammars.source());
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        Set<String> words = new TreeSet<>();
        for (List<String> sentence : through(grammar)) {
            assertThat(matcher.match(grammar.root(), sentence, 1))
                    .as(sentence.toString())
                    .isNotEmpty();
            words.addAll(sentence);
        }
        assertThat(words).isEqualTo(new TreeSet<>(grammar.tokens(List.of(grammar.root()))));
    }

    @Test
    void every_tag_is_passed() {
        Grammar grammar = Grammars.of(
                "$s = go ($a | $b) now;\n$a = left {l} | right {r} | [far] {f} away;\n$b = stop <2-3> {x};");
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        Set<String> tags = new HashSet<>();
        through(grammar)
                .forEach(sentence -> matcher.match(grammar.root(), sentence, 9).stream()
                        .flatMap(ParseTree::descendants)
                        .forEach(tree -> tags.add(String.valueOf(tree.tag()))));
        assertThat(tags).contains("l", "r", "f", "x");
    }

    @Test
    void what_cannot_be_said_or_reached_has_no_sentence() {
        Grammar grammar = Grammars.of("$s = a | b $VOID;\n$lost = c;");
        assertThat(through(grammar)).containsExactly(List.of("a"));
        assertThat(grammar.reached(List.of(grammar.root()))).containsExactly(grammar.root());
    }
}
