package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static strawbed.grammar.Grammars.HEADER;

import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GrammarMistakesTest {

    private static GrammarException mistake(String text) {
        Map<String, String> files = Map.of(
                "test.abnf", text, "other.abnf", "#ABNF 1.0;\nlanguage en-US;\n$hidden = a;\npublic $shown = b;");
        return catchThrowableOfType(GrammarException.class, () -> Grammars.read(files));
    }

    @Test
    void a_message_shows_the_line_with_a_caret_under_the_place() {
        assertThat(mistake(HEADER + "\t$calf = a $sexx;\n$sex = bull;"))
                .hasMessage("test.abnf, line 3, column 12: there is no rule named $sexx. Did you mean $sex?\n"
                        + "\t$calf = a $sexx;\n\t          ^");
    }

    /** The rules begin in line 3. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '~',
            value = {
                "$s = a~3~7~does not end with a semicolon",
                "$s = a $b = c;~3~8~the rule $s before $b does not end with a semicolon",
                "$s = ;~3~6~something to say must stand here",
                "$s = a | ;~3~10~something to say must stand here",
                "$s = a | | b;~3~10~something to say must stand here",
                "$s = [];~3~7~something to say must stand here",
                "$s = (a;~3~6~this ( is never closed with )",
                "$s = [a;~3~6~this [ is never closed with ]",
                "$s = a);~3~7~nothing open that this ) could close",
                "$s = a];~3~7~nothing open that this ] could close",
                "$s = {a;~3~6~this tag is never closed",
                "$s = \"a;~3~6~this quote is never closed",
                "$s = \"\";~3~6~no word between these quotes",
                "$s = a /* b;~3~8~comment is never closed",
                "$s = a<x>;~3~7~a repeat is written <3>, <1-5> or <0->",
                "$s = a<3;~3~7~a repeat is written",
                "$s = a<3-1>;~3~7~goes from 3 down to 1",
                "$s = a<1001>;~3~7~more than 1000 repeats are not supported",
                "$s = a<2><3>;~3~10~only one repeat may follow",
                "$s = a<1-2 /1.5/>;~3~12~a probability is a number from 0 to 1",
                "$s = <3>;~3~6~nothing before this repeat",
                "$s = ((a<1000>)<1000>);~3~7~make more than 100000 parts",
                "$s = /0/ a | b;~3~6~a weight is a number above 0",
                "$s = /x/ a | b;~3~6~a weight is a number above 0",
                "$s = a/b;~3~7~a weight stands at the beginning",
                "$s = a*;~3~7~* is not supported; repeat with <0->",
                "$s = a+;~3~7~+ is not supported; repeat with <1->",
                "$s = a!de-DE;~3~7~only the language of the whole grammar, en-US",
                "$s = $;~3~6~a rule name is $ and a letter",
                "$s a;~3~4~\"=\" must stand after $s",
                "s = a;~3~1~a declaration or a rule",
                "$s = a; b;~3~9~a rule such as",
                "$s = a; $s = b;~3~9~$s is already defined in line 3",
                "$NULL = a;~3~1~$NULL has its meaning already",
                "$s = $t;~3~6~there is no rule named $t.",
                "$s = $<missing.abnf>;~3~6~the file missing.abnf cannot be used",
                "$s = $<other.abnf>;~3~6~other.abnf declares no root rule",
                "$s = $<other.abnf#show>;~3~6~in other.abnf there is no rule named $show. Did you mean $shown?",
                "$s = $<other.abnf#hidden>;~3~6~$hidden of other.abnf is private",
                "$s = $<../other.abnf>;~3~6~leaves the directory",
                "$s = $</other.abnf>;~3~6~is not a name of a file beside this one",
                "$s = $<http://example.com/a.abnf>;~3~6~only files beside this one",
                "$s = $s a | b;~3~6~begins with itself ($s > $s)",
                "$s = [a] $t; $t = {x} $s b | c;~3~23~begins with itself ($s > $t > $s)",
                "$s = [a]<0->;~3~6~repeated without end but may be empty",
                "$s = $GARBAGE<1->;~3~6~repeated without end but may be empty",
                "$s = a $t; $t = b $s;~3~8~can never come to an end"
            },
            quoteCharacter = '\u0001')
    void a_mistake_in_the_rules_is_named_with_its_place(String rules, int line, int column, String problem) {
        GrammarException mistake = mistake(HEADER + rules);
        assertThat(mistake).isNotNull().hasMessageContaining(problem);
        assertThat(mistake.line()).isEqualTo(line);
        assertThat(mistake.column()).isEqualTo(column);
        assertThat(mistake.lineText()).isEqualTo(rules);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '~',
            value = {
                "$s = a;~1~1~a grammar begins with \"#ABNF 1.0;\"",
                "<?xml version=\"1.0\"?>~1~1~the XML form",
                "#ABNF 2.0;~1~7~only version 1.0",
                "#ABNF 1.0 UTF-8 $s = a;~1~17~must end with a semicolon",
                "#ABNF 1.0; $s = a;~1~1~no language is declared",
                "#ABNF 1.0; language en $s = a;~1~24~the declaration of language must end with a semicolon",
                "#ABNF 1.0; language en; language fr;~1~25~\"language\" is declared twice",
                "#ABNF 1.0; language ;~1~21~a language such as en-US",
                "#ABNF 1.0; mode dtmf;~1~17~the mode dtmf (touch tones) is not supported",
                "#ABNF 1.0; base <x>;~1~12~\"base\" is not supported",
                "#ABNF 1.0; lexicon <x>;~1~12~\"lexicon\" is not supported",
                "#ABNF 1.0; {x};~1~12~tags before the rules are not supported",
                "#ABNF 1.0; meta \"a\" \"b\";~1~21~\"is\" must stand here",
                "#ABNF 1.0; language en; root $x; $s = a;~1~30~there is no rule named $x. Did you mean $s?",
                "#ABNF 1.0; language en; tag-format <semantics/1.0>; $s = a {x};~1~60~<semantics/1.0> are not supported"
            },
            quoteCharacter = '\u0001')
    void a_mistake_before_the_rules_is_named_with_its_place(String text, int line, int column, String problem) {
        GrammarException mistake = mistake(text);
        assertThat(mistake).isNotNull().hasMessageContaining(problem);
        assertThat(mistake.line()).isEqualTo(line);
        assertThat(mistake.column()).isEqualTo(column);
    }

    @Test
    void a_media_type_is_not_supported() {
        GrammarException mistake = mistake(HEADER + "$s = $<other.abnf#shown>~<text/plain>;");
        assertThat(mistake).hasMessageContaining("a media type after ~ is not supported");
        assertThat(mistake.column()).isEqualTo(25);
    }

    @Test
    void another_tag_format_does_no_harm_without_tags() {
        assertThat(Grammars.read(Map.of("test.abnf", "#ABNF 1.0; language en; tag-format <semantics/1.0>; $s = a;"))
                        .tokens())
                .containsExactly("a");
    }

    @Test
    void brackets_without_end_are_refused_and_not_a_crash() {
        assertThat(mistake(HEADER + "$s = " + "(".repeat(100_000)))
                .hasMessageContaining("go deeper than 100; use more rules");
    }

    @Test
    void a_grammar_without_root_says_so_only_when_asked() {
        Grammar grammar = Grammars.read(Map.of("test.abnf", HEADER + "$s = a;"));
        assertThat(catchThrowableOfType(GrammarException.class, grammar::root))
                .hasMessageStartingWith("test.abnf: no root rule is declared");
        assertThat(catchThrowableOfType(GrammarException.class, () -> grammar.ruleNamed("t")))
                .hasMessage("test.abnf: there is no rule named $t. Did you mean $s?");
    }

    @Test
    void a_rule_that_is_switched_off_is_no_mistake() {
        Grammar grammar = Grammars.of("$s = $none | a; $none = $VOID;");
        assertThat(Grammars.accepts(grammar, "a")).isTrue();
        assertThat(new GrammarMatcher(grammar).match(grammar.ruleNamed("none"), Grammars.words("a"), 1))
                .isEmpty();
        assertThat(new SentenceMaker(grammar).cover(grammar.ruleNamed("none"))).isEmpty();
    }
}
