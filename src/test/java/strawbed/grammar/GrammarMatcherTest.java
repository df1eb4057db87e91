package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static strawbed.grammar.Grammars.words;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GrammarMatcherTest {

    private static List<ParseTree> match(Grammar grammar, String sentence, int limit) {
        return new GrammarMatcher(grammar).match(grammar.root(), words(sentence), limit);
    }

    @Test
    void a_tree_knows_its_words_and_its_children_theirs() {
        Grammar grammar = Grammars.of("$s = fed $n quarts [of $n]; $n = two {2} | twenty two {22};");
        ParseTree tree = match(grammar, "fed twenty two quarts of two", 5).get(0);
        assertThat(tree.children("n"))
                .containsExactly(
                        new ParseTree("n", "22", 1, 3, words("twenty two"), List.of()),
                        new ParseTree("n", "2", 5, 6, words("two"), List.of()));
        assertThat(tree.descendants().map(ParseTree::rule)).containsExactly("s", "n", "n");
        assertThat(tree.descendant("n")).isEqualTo(tree.child("n")).isPresent();
        assertThat(tree.descendant("s")).isEmpty();
    }

    @Test
    void earlier_alternatives_come_first() {
        Grammar grammar = Grammars.of("$s = $b | $a; $a = x; $b = x;");
        assertThat(match(grammar, "x", 5))
                .extracting(tree -> tree.children().get(0).rule())
                .containsExactly("b", "a");
    }

    @Test
    void more_repeats_come_before_fewer() {
        Grammar grammar = Grammars.of("$s = $many $rest; $many = x<1->; $rest = [x] [x];");
        assertThat(match(grammar, "x x x", 5))
                .extracting(tree -> tree.children().get(0).to())
                .containsExactly(3, 2, 1);
    }

    @Test
    void equal_trees_are_told_once_however_many_ways_lead_to_them() {
        Grammar grammar = Grammars.of("$s = [a]<40> {t} | a<20>;");
        assertThat(match(grammar, "a ".repeat(20).strip(), 10))
                .extracting(ParseTree::tag)
                .containsExactly("t", null);
    }

    @Test
    void a_limit_of_two_still_tells_two_readings_apart_when_tags_overwrite_each_other() {
        Grammar grammar = Grammars.of("$s = {y} ($a | {y} $a | {z} $a); $a = w;");
        assertThat(match(grammar, "w", 2)).extracting(ParseTree::tag).containsExactly("y", "z");
    }

    @Test
    void an_endlessly_ambiguous_grammar_is_cut_at_the_limit() {
        Grammar grammar = Grammars.of("$s = ($a | $b)<1->; $a = x | x x; $b = x;");
        assertThat(match(grammar, "x ".repeat(60).strip(), 7)).hasSize(7).doesNotHaveDuplicates();
    }

    @Test
    void recursion_on_the_right_and_in_the_middle_goes_two_hundred_words_deep() {
        Grammar right = Grammars.of("$s = x $s | y;");
        assertThat(match(right, "x ".repeat(199) + "y", 2)).hasSize(1);
        Grammar middle = Grammars.of("$s = $o $s $c | m; $o = x; $c = y;");
        assertThat(match(middle, "x ".repeat(100) + "m" + " y".repeat(100), 2)).hasSize(1);
        assertThat(match(middle, "x ".repeat(100) + "m" + " y".repeat(99), 2)).isEmpty();
    }

    @Test
    void the_longest_prefix_ends_before_the_first_word_that_cannot_follow() {
        Grammar grammar = Grammars.of("$s = navel (dipped | looks (good | swollen)) | navel never $VOID;");
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        assertThat(matcher.longestPrefix(grammar.root(), words("navel looks red")))
                .isEqualTo(2);
        assertThat(matcher.longestPrefix(grammar.root(), words("navel never"))).isEqualTo(1);
        assertThat(matcher.longestPrefix(grammar.root(), words("dipped"))).isZero();
        assertThat(matcher.isPrefix(grammar.root(), words("navel looks"))).isTrue();
        assertThat(matcher.isPrefix(grammar.root(), words("navel looks good"))).isTrue();
        assertThat(matcher.isPrefix(grammar.root(), words("navel looks good good")))
                .isFalse();
    }

    @Test
    void garbage_leaves_as_much_as_it_can_to_what_follows() {
        Grammar grammar = Grammars.of("$s = $GARBAGE $a $GARBAGE; $a = x | x x;");
        assertThat(match(grammar, "u x x", 1).get(0).children().get(0).from()).isEqualTo(1);
    }

    @Test
    void a_limit_below_one_and_a_foreign_rule_are_mistakes_of_the_program() {
        Grammar grammar = Grammars.of("$s = a;");
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        assertThatThrownBy(() -> matcher.match(grammar.root(), Collections.emptyList(), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not 0");
        assertThatThrownBy(() -> matcher.isPrefix(new RuleId("test.abnf", "t"), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("$<test.abnf#t>");
    }
}
