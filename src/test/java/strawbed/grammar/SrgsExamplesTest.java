package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static strawbed.grammar.Grammars.accepts;
import static strawbed.grammar.Grammars.words;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Grammars after those of the W3C Recommendation SRGS 1.0 (16 March 2004); the section is named, the text from memory. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SrgsExamplesTest {

    @Test
    void section_2_1_a_quoted_token_is_its_words_with_blanks_made_one() {
        Grammar grammar = Grammars.of("$s = \"San   Francisco\" | \"New\tYork\";");
        assertThat(accepts(grammar, "san francisco")).isTrue();
        assertThat(accepts(grammar, "new york")).isTrue();
        assertThat(accepts(grammar, "san")).isFalse();
        assertThat(accepts(grammar, "san york")).isFalse();
    }

    @Test
    void section_2_2_references_go_to_this_file_to_a_rule_of_another_and_to_the_root_of_another() {
        Map<String, String> files = Map.of(
                "test.abnf",
                "#ABNF 1.0;\nlanguage en;\nroot $s;\n$s = $<polite.abnf#start> $own $<#own> $<polite.abnf>;\n$own = go;",
                "polite.abnf",
                "#ABNF 1.0;\nlanguage en;\nroot $end;\npublic $start = please;\n$end = thanks;");
        Grammar grammar = Grammars.read(files);
        assertThat(accepts(grammar, "please go go thanks")).isTrue();
        assertThat(accepts(grammar, "please go thanks")).isFalse();
        assertThat(grammar.rules())
                .extracting(rule -> rule.id().toString())
                .containsExactly("$<test.abnf#s>", "$<test.abnf#own>", "$<polite.abnf#start>", "$<polite.abnf#end>");
    }

    @Test
    void section_2_2_3_null_is_nothing_void_is_never_and_garbage_is_anything() {
        Grammar grammar = Grammars.of("$s = a $NULL b | c $VOID | d $GARBAGE e;");
        assertThat(accepts(grammar, "a b")).isTrue();
        assertThat(accepts(grammar, "c")).isFalse();
        assertThat(accepts(grammar, "d e")).isTrue();
        assertThat(accepts(grammar, "d [unk] whatever e e")).isTrue();
        assertThat(accepts(grammar, "d whatever")).isFalse();
    }

    @Test
    void section_2_3_a_sequence_is_said_in_order_and_parentheses_may_be_empty() {
        Grammar grammar = Grammars.of("$s = this is () (a test);");
        assertThat(accepts(grammar, "this is a test")).isTrue();
        assertThat(accepts(grammar, "this a is test")).isFalse();
    }

    @Test
    void section_2_4_weights_are_written_in_four_ways_and_do_not_change_what_matches() {
        Grammar grammar = Grammars.of("$s = /10/ small | /2./ medium | /.25/ large | /3.1415/ pie | plain;");
        for (String size : List.of("small", "medium", "large", "pie", "plain")) {
            assertThat(accepts(grammar, size)).as(size).isTrue();
        }
        assertThat(accepts(grammar, "small medium")).isFalse();
        RuleExpansion.Alternatives sizes =
                (RuleExpansion.Alternatives) grammar.rule(grammar.root()).expansion();
        assertThat(sizes.alternatives())
                .extracting(RuleExpansion.Alternative::weight)
                .containsExactly(10.0, 2.0, 0.25, 3.1415, 1.0);
    }

    @Test
    void section_2_5_repeats_count_what_stands_before_them() {
        Grammar exact = Grammars.of("$s = $digit<3>; $digit = one | two;");
        assertThat(accepts(exact, "one two one")).isTrue();
        assertThat(accepts(exact, "one two")).isFalse();
        assertThat(accepts(exact, "one two one two")).isFalse();
        Grammar range = Grammars.of("$s = very<1-2 /0.6/> [much];");
        assertThat(accepts(range, "very very much")).isTrue();
        assertThat(accepts(range, "very")).isTrue();
        assertThat(accepts(range, "much")).isFalse();
        assertThat(accepts(range, "very very very")).isFalse();
        Grammar open = Grammars.of("$s = (big | large)<0->;");
        assertThat(accepts(open, "")).isTrue();
        assertThat(accepts(open, "big large big big")).isTrue();
        Grammar never = Grammars.of("$s = a b<0> c;");
        assertThat(accepts(never, "a c")).isTrue();
        assertThat(accepts(never, "a b c")).isFalse();
    }

    @Test
    void section_2_7_a_language_after_a_word_or_group_may_be_the_grammars_own() {
        Grammar grammar = Grammars.of("$s = yes!en-US | (of course)!EN-us;");
        assertThat(accepts(grammar, "yes")).isTrue();
        assertThat(accepts(grammar, "of course")).isTrue();
    }

    @Test
    void section_2_8_a_repeat_binds_tighter_than_a_sequence_and_a_sequence_tighter_than_alternatives() {
        Grammar grammar = Grammars.of("$s = a b<2> | c d;");
        assertThat(accepts(grammar, "a b b")).isTrue();
        assertThat(accepts(grammar, "c d")).isTrue();
        assertThat(accepts(grammar, "a b a b")).isFalse();
        assertThat(accepts(grammar, "a b b d")).isFalse();
    }

    @Test
    void section_3_3_documentation_comments_and_the_other_comments_say_nothing() {
        Grammar grammar = Grammars.of("/** Says yes.\n * @example yes */\npublic $s = yes // no\n /* never */ sir;");
        assertThat(accepts(grammar, "yes sir")).isTrue();
        assertThat(grammar.rule(grammar.root()).isPublic()).isTrue();
    }

    @Test
    void section_4_every_declaration_that_does_not_change_what_matches_is_read() {
        Grammar grammar = Grammars.read(Map.of(
                "test.abnf",
                String.join(
                        "\r\n",
                        "\uFEFF#ABNF 1.0 ISO-8859-1;",
                        "language en-US;",
                        "mode voice;",
                        "root $s;",
                        "tag-format <semantics/1.0-literals>;",
                        "meta \"description\" is \"a test\";",
                        "http-equiv \"Date\" is 'today';",
                        "$s = yes {y};")));
        assertThat(accepts(grammar, "yes")).isTrue();
    }

    @Test
    void appendix_examples_in_other_scripts_are_read() {
        Grammar korean = Grammars.of("$s = $도시; $도시 = 서울 | 부산;");
        assertThat(accepts(korean, "서울")).isTrue();
        assertThat(accepts(korean, "도쿄")).isFalse();
        Grammar chinese = Grammars.of("$s = 北京 | 上海;");
        assertThat(accepts(chinese, "上海")).isTrue();
        Grammar swedish = Grammars.of("$s = Åsa | \"Göran Öst\";");
        assertThat(accepts(swedish, "åsa")).isTrue();
        assertThat(accepts(swedish, "göran öst")).isTrue();
    }

    /** SISR 1.0 (W3C Recommendation, 5 April 2007), literal tags: the last one passed is the rule's value. */
    @Test
    void a_rule_has_the_last_literal_of_its_own_body() {
        Grammar grammar = Grammars.of("$s = {first} $drink {!{ a } b }!} [please {polite}]; $drink = cola {coke};");
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        ParseTree plain = matcher.match(grammar.root(), words("cola"), 2).get(0);
        assertThat(plain.tag()).isEqualTo("a } b");
        assertThat(plain.child("drink").orElseThrow().tag()).isEqualTo("coke");
        assertThat(matcher.match(grammar.root(), words("cola please"), 2).get(0).tag())
                .isEqualTo("polite");
    }

    @Test
    void apostrophes_and_hyphens_belong_to_words() {
        assertThat(Grammars.of("$s = can't | \"won't\" | twenty-two;").tokens())
                .containsExactly("can't", "twenty-two", "won't");
    }
}
