package strawbed.crib;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarSource;
import strawbed.grammar.Rule;
import strawbed.hearing.Phrasebook;
import strawbed.report.CribSheet;
import strawbed.statement.Control;
import strawbed.statement.StatementReader;
import strawbed.testkit.Grammars;
import strawbed.text.Messages;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CribContentsTest {
    private static final Grammar OURS = Phrasebook.grammar(Grammars.source());

    static List<Example> examples() {
        return shownRules().stream().flatMap(rule -> Example.of(rule).stream()).toList();
    }

    private static List<Rule> shownRules() {
        return OURS.rules().stream()
                .filter(rule -> !rule.documentation().tags("group").isEmpty())
                .toList();
    }

    private static List<List<String>> words(Set<String> rules) {
        return examples().stream()
                .filter(example -> rules.contains(example.rule().id().name()))
                .map(Example::words)
                .toList();
    }

    private static CribSheet sheet(GrammarSource source) {
        return CribContents.of(Phrasebook.grammar(source), "1234", new Messages(Locale.US));
    }

    private static List<String> lines(CribSheet sheet, String group) {
        return sheet.groups().stream()
                .filter(one -> one.title().equals(group))
                .flatMap(one -> one.lines().stream())
                .toList();
    }

    private static GrammarSource edited(String file, String before, String after) {
        String text = Grammars.source().text(file);
        assertThat(text).contains(before);
        return Grammars.source().with(file, text.replace(before, after));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_is_understood_as_its_rule(Example example) {
        Understanding understanding =
                new Understanding(OURS, words(Set.of("calf")), words(StatementReader.factRules()));
        assertThat(understanding.of(example)).isPresent();
    }

    @Test
    void words_of_another_rule_are_not_taken_for_an_example() {
        Understanding understanding =
                new Understanding(OURS, words(Set.of("calf")), words(StatementReader.factRules()));
        Rule dipped = shownRules().stream()
                .filter(rule -> rule.id().name().equals("navel_dipped"))
                .findFirst()
                .orElseThrow();
        for (String words : List.of("navel clean", "navel dipped heifer", "navel dipped with", "confirm entry")) {
            Example wrong = new Example(dipped, Arrays.asList(words.split(" ")), dipped.position(), false);
            assertThat(understanding.of(wrong)).as(words).isEmpty();
        }
    }

    @Test
    void every_fact_that_can_be_said_is_on_the_sheet() {
        Set<String> told = new HashSet<>();
        examples().forEach(example -> told.add(example.rule().id().name()));
        assertThat(told).containsAll(StatementReader.factRules()).contains("calf", "opening", "when");
    }

    @Test
    void every_control_is_on_the_sheet() {
        List<String> lines = lines(sheet(Grammars.source()), "Steer the recorder");
        for (Control control : Control.values()) {
            String begins = control == Control.HOW_IS_CALF
                    ? "how is"
                    : control.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            assertThat(lines).anyMatch(line -> line.startsWith(begins));
        }
    }

    @Test
    void the_groups_stand_in_the_order_of_the_work() {
        assertThat(sheet(Grammars.source()).groups())
                .extracting(CribSheet.Group::title)
                .containsExactly(
                        "Call the calf",
                        "When",
                        "Birth",
                        "First minutes",
                        "Navel",
                        "Colostrum",
                        "Weigh, tag, move",
                        "Later checks",
                        "Barn and stock",
                        "Steer the recorder");
    }

    @Test
    void what_can_be_left_out_or_chosen_is_marked() {
        CribSheet sheet = sheet(Grammars.source());
        assertThat(lines(sheet, "Navel"))
                .containsExactly(
                        "navel dipped (with iodine / chlorhexidine)", "navel clean / wet / swollen / bleeding");
        assertThat(lines(sheet, "Call the calf")).contains("(first) calf of cow nine");
        assertThat(lines(sheet, "Later checks")).contains("note …", "treatment given …");
    }

    @Test
    void a_product_that_the_farm_adds_is_on_the_sheet() {
        GrammarSource farm =
                edited("navel.abnf", "$agent = iodine {iodine}", "$agent = iodine {iodine} | red dip {iodine}");
        assertThat(lines(sheet(farm), "Navel")).contains("navel dipped (with iodine / red dip / chlorhexidine)");
    }

    @Test
    void a_name_from_the_farms_own_file_is_on_the_sheet() {
        GrammarSource farm = edited(
                "farm.abnf", "public $dip_name = $VOID", "public $dip_name = red dip {iodine} | blue cap {iodine}");
        assertThat(lines(sheet(farm), "Navel"))
                .contains("navel dipped (with iodine / chlorhexidine / red dip / blue cap)");
    }

    @Test
    void an_example_that_no_longer_fits_is_named_with_its_line() {
        GrammarSource farm = edited("controls.abnf", "/4/ confirm entry {", "/4/ confirm that {");
        assertThatThrownBy(() -> sheet(farm))
                .isInstanceOf(CribException.class)
                .hasMessageContaining("controls.abnf, line ")
                .hasMessageContaining("\"confirm entry\" cannot be said by the rule $control: \"entry\" does not fit")
                .hasMessageContaining("none was written");
    }

    @Test
    void an_example_that_means_another_thing_is_refused() {
        GrammarSource farm = edited("navel.abnf", "@example navel clean", "@example navel dipped");
        assertThatThrownBy(() -> sheet(farm))
                .isInstanceOf(CribException.class)
                .hasMessageContaining("\"navel dipped\" cannot be said by the rule $navel_checked");
    }

    @Test
    void an_example_that_would_be_asked_about_is_refused() {
        GrammarSource farm =
                edited("measures.abnf", "@example weight seventy pounds\n", "@example weight one pounds\n");
        assertThatThrownBy(() -> sheet(farm))
                .isInstanceOf(CribException.class)
                .hasMessageContaining("\"weight one pounds\" is not understood without a question");
    }

    @Test
    void a_fact_without_an_example_is_named() {
        GrammarSource farm = edited("measures.abnf", " * @example vet called\n", "");
        assertThatThrownBy(() -> sheet(farm)).isInstanceOf(CribException.class).hasMessageContaining("$vet_called");
    }
}
