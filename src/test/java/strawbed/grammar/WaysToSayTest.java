package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaysToSayTest {
    private static WaysToSay ways(String rules) {
        Grammar grammar = Grammars.of(rules);
        return WaysToSay.of(grammar, grammar.root());
    }

    /** Where no words can be said in two ways, there are as many ways as sentences; those are listed one by one. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '!',
            value = {
                "$s = a",
                "$s = a | b | c",
                "$s = (a | b) (c | d | e)",
                "$s = [a] b [c]",
                "$s = a <2-4>",
                "$s = (a | b) <0-3>",
                "$s = $VOID | a",
                "$s = $NULL | a [b]",
                "$s = $a x $a; $a = p | q [r]"
            })
    void of_an_unambiguous_grammar_they_are_its_sentences(String rules) {
        Grammar grammar = Grammars.of(rules + ";");
        long sentences = new SentenceMaker(grammar).all(grammar.root()).count();
        assertThat(ways(rules + ";")).isEqualTo(new WaysToSay(BigInteger.valueOf(sentences), false));
    }

    @Test
    void the_same_words_in_two_ways_count_twice() {
        assertThat(ways("$s = a | a;").count()).isEqualTo(BigInteger.TWO);
    }

    @Test
    void a_repeat_without_end_is_told_and_counted_for_two_more_times() {
        assertThat(ways("$s = (a | b) <1->;")).isEqualTo(new WaysToSay(BigInteger.valueOf(2 + 4 + 8), true));
        assertThat(ways("$s = a [$s];")).isEqualTo(new WaysToSay(BigInteger.ONE, true));
        assertThat(ways("$s = note $GARBAGE;")).isEqualTo(new WaysToSay(BigInteger.ONE, true));
        assertThat(ways("$s = a | $VOID <0->;").endless()).isFalse();
    }

    @Test
    void numbers_beyond_any_machine_word_are_counted() {
        assertThat(ways("$s = (a | b) <100>;").count()).isEqualTo(BigInteger.TWO.pow(100));
    }
}
