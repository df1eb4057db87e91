package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** SRGS 1.0, section 3.3 (from memory): documentation comments with {@code @example}, and metadata of section 4. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DocumentationTest {
    private static Grammar read(String rules) {
        String text = "#ABNF 1.0;\nlanguage en-US;\nmeta \"order\" is \"a; b\";\n" + rules;
        return GrammarReader.read(file -> text, "a.abnf");
    }

    @Test
    void a_comment_before_a_rule_is_its_text_and_its_tags() {
        Documentation found = read("""
                        /**
                         * To act.
                         *
                         * @example open the
                         *   window
                         * @group Acts
                         */
                        public $a = open the window;
                        """).rule(new RuleId("a.abnf", "a")).documentation();
        assertThat(found.text()).isEqualTo("To act.");
        assertThat(found.tags("example")).extracting(Documentation.Tag::text).containsExactly("open the window");
        assertThat(found.tags("example").get(0).position().line()).isEqualTo(7);
        assertThat(found.tags("group")).extracting(Documentation.Tag::text).containsExactly("Acts");
    }

    @Test
    void only_the_comment_right_before_a_rule_is_its_own() {
        Grammar grammar = read("""
                /** @example one */ $a = one; /* plain */ // plain
                /**/ $b = two;
                $c = three /** @example four */ | four; $d = five;
                """);
        assertThat(grammar.rule(new RuleId("a.abnf", "a")).documentation().tags("example"))
                .hasSize(1);
        for (String rule : new String[] {"b", "c", "d"}) {
            assertThat(grammar.rule(new RuleId("a.abnf", rule)).documentation()).isEqualTo(Documentation.NONE);
        }
    }

    @Test
    void metadata_and_language_are_kept() {
        Grammar grammar = read("$a = one;");
        assertThat(grammar.meta("order")).contains("a; b");
        assertThat(grammar.meta("other")).isEmpty();
        assertThat(grammar.language()).isEqualTo("en-US");
    }
}
