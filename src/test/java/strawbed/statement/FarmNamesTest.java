package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.GrammarSource;
import strawbed.hearing.Phrasebook;
import strawbed.testkit.Grammars;

/** One line of farm.abnf is all that a farm edits for its names. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FarmNamesTest {
    private static final SpeechTime NOW = new SpeechTime(Instant.parse("2026-03-03T05:30:00Z"), ZoneOffset.UTC);

    private static Grammar with(String before, String after) {
        GrammarSource source = Grammars.source();
        String text = source.text("farm.abnf");
        assertThat(text).contains(before);
        return Phrasebook.grammar(source.with("farm.abnf", text.replace(before, after)));
    }

    private static List<Event> said(Grammar grammar, String words) {
        Interpretation meaning = new UtteranceInterpreter(grammar, Thresholds.set())
                .interpret(List.of(Grammars.reading(words, 0)), NOW, new Listening(Set.of("12"), false));
        assertThat(meaning).as(words).isInstanceOf(Interpretation.Understood.class);
        return ((Interpretation.Understood) meaning)
                .statement().facts().stream().map(SaidFact::event).toList();
    }

    @Test
    void a_place_with_a_name_is_recorded_by_its_words() {
        Grammar grammar = with("$place_name = $VOID", "$place_name = sick pen | red barn {barn two}");
        assertThat(said(grammar, "calf twelve moved to sick pen")).containsExactly(new Event.CalfMoved("sick pen"));
        assertThat(said(grammar, "calf twelve in red barn")).containsExactly(new Event.CalfMoved("barn two"));
        assertThat(said(grammar, "calf twelve moved to hutch four")).containsExactly(new Event.CalfMoved("hutch 4"));
    }

    @Test
    void a_navel_dip_by_the_name_on_its_bottle_is_recorded_as_what_is_in_it() {
        Grammar grammar = with("$dip_name = $VOID", "$dip_name = red dip {iodine} | blue cap {chlorhexidine}");
        assertThat(said(grammar, "calf twelve navel dipped with red dip"))
                .containsExactly(new Event.NavelDipped(Term.NavelAgent.IODINE, null));
        assertThat(said(grammar, "calf twelve navel dipped with blue cap two percent"))
                .containsExactly(new Event.NavelDipped(Term.NavelAgent.CHLORHEXIDINE, new BigDecimal("2")));
        assertThat(said(grammar, "calf twelve navel dipped with iodine"))
                .containsExactly(new Event.NavelDipped(Term.NavelAgent.IODINE, null));
    }

    @Test
    void without_names_nothing_else_can_be_said_than_before() {
        Grammar grammar = Phrasebook.grammar(Grammars.source());
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        assertThat(matcher.match(grammar.root(), List.of("calf", "twelve", "moved", "to", "sick", "pen"), 1))
                .isEmpty();
    }

    @Test
    void every_part_of_the_programs_grammar_means_something() {
        assertThat(GrammarTrial.run(Phrasebook.grammar(Grammars.source()), NOW)).isEmpty();
    }

    @Test
    void a_tag_that_the_record_does_not_know_is_found_before_anybody_says_it() {
        assertThat(GrammarTrial.run(with("$dip_name = $VOID", "$dip_name = red dip {iodin} | blue cap"), NOW))
                .anySatisfy(fault -> {
                    assertThat(fault.sentence()).contains("red dip");
                    assertThat(fault.problem()).contains("{iodin}", "$dip_name");
                })
                .anySatisfy(fault -> {
                    assertThat(fault.sentence()).contains("blue cap");
                    assertThat(fault.problem()).contains("$dip_name needs a tag in braces");
                })
                .hasSize(2);
    }
}
