package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static strawbed.grammar.Grammars.words;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SentenceMakerTest {

    @Test
    void a_small_grammar_lists_all_its_sentences_in_its_order_each_once() {
        Grammar grammar = Grammars.of("$s = (a | b) [c] | a;");
        assertThat(new SentenceMaker(grammar).all(grammar.root()))
                .containsExactly(words("a c"), words("a"), words("b c"), words("b"));
    }

    @Test
    void an_endless_grammar_lists_sentences_of_up_to_twelve_words() {
        Grammar grammar = Grammars.of("$s = a $s | b;");
        assertThat(new SentenceMaker(grammar).all(grammar.root()))
                .hasSize(12)
                .allMatch(sentence -> sentence.size() <= 12);
    }

    @Test
    void a_list_too_long_to_keep_can_be_begun() {
        Grammar grammar = Grammars.of("$s = (a | b)<50>;");
        assertThat(new SentenceMaker(grammar).all(grammar.root()).limit(3)).hasSize(3);
    }

    @Test
    void the_pairs_are_those_of_the_grammar_with_its_edges() {
        Grammar grammar = Grammars.of("$s = a [$b] c | d; $b = x y | y;");
        assertThat(new SentenceMaker(grammar).pairs(grammar.root()))
                .containsExactlyInAnyOrder(
                        new WordPair("", "a"),
                        new WordPair("", "d"),
                        new WordPair("a", "x"),
                        new WordPair("a", "y"),
                        new WordPair("a", "c"),
                        new WordPair("x", "y"),
                        new WordPair("y", "c"),
                        new WordPair("c", ""),
                        new WordPair("d", ""));
    }

    @Test
    void a_cover_is_smaller_than_the_list_of_all() {
        Grammar grammar = Grammars.of("$s = (a | b | c)<1-6>;");
        SentenceMaker maker = new SentenceMaker(grammar);
        assertThat(maker.all(grammar.root())).hasSize(3 + 9 + 27 + 81 + 243 + 729);
        assertThat(maker.cover(grammar.root())).hasSizeLessThan(10);
    }

    @Test
    void the_same_seed_gives_the_same_sentences_and_another_seed_others() {
        Grammar grammar = Grammars.of("$s = (a | b | c)<1-> [d];");
        SentenceMaker maker = new SentenceMaker(grammar);
        List<List<String>> sentences = maker.sample(grammar.root(), 50, 7);
        assertThat(new SentenceMaker(grammar).sample(grammar.root(), 50, 7)).isEqualTo(sentences);
        assertThat(maker.sample(grammar.root(), 50, 8)).isNotEqualTo(sentences);
    }

    /** The bounds lie over five standard deviations (44 each) around the expected 7500 and 2000 of 10000. */
    @Test
    void weights_and_probabilities_show_in_the_sentences() {
        Grammar grammar = Grammars.of("$s = (/3/ a | b) d<0-1 /0.2/>;");
        List<List<String>> sentences = new SentenceMaker(grammar).sample(grammar.root(), 10_000, 11);
        assertThat(sentences.stream().filter(words -> words.contains("a")).count())
                .isBetween(7280L, 7720L);
        assertThat(sentences.stream().filter(words -> words.contains("d")).count())
                .isBetween(1780L, 2220L);
    }

    @Test
    void recursion_that_mostly_goes_on_still_comes_to_an_end() {
        Grammar grammar = Grammars.of("$s = /99/ a $s $s b | c;");
        assertThat(new SentenceMaker(grammar).sample(grammar.root(), 100, 3)).allMatch(words -> words.size() < 400);
    }

    @Test
    void garbage_is_said_as_the_word_for_anything() {
        Grammar grammar = Grammars.of("$s = a $GARBAGE;");
        assertThat(new SentenceMaker(grammar).pairs(grammar.root()))
                .contains(new WordPair("a", SentenceMaker.ANYTHING), new WordPair("a", WordPair.EDGE));
    }
}
