package strawbed.app;

import java.util.List;
import strawbed.entry.FarmChoices;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.ParseTree;
import strawbed.grammar.Phrases;
import strawbed.grammar.RuleId;

/**
 * Names that the grammar has, a farm's own among them, so that what can be said can be pressed as well. Of names that are
 * made with a long list, such as all numbers, there is one key only.
 */
final class FarmNames {
    private static final RuleId BREEDS = new RuleId("birth.abnf", "breed_name");
    private static final RuleId PLACES = new RuleId("farm.abnf", "place_name");

    private final Grammar grammar;
    private final Phrases phrases;
    private final GrammarMatcher matcher;

    private FarmNames(Grammar grammar) {
        this.grammar = grammar;
        this.phrases = new Phrases(grammar);
        this.matcher = new GrammarMatcher(grammar);
    }

    /**
     * What a farm has on its keys.
     *
     * @param metric whether liters, kilograms and Celsius come first
     * @throws strawbed.grammar.GrammarException if the grammar has no such names
     */
    static FarmChoices of(Grammar grammar, boolean metric) {
        FarmNames names = new FarmNames(grammar);
        return new FarmChoices(names.in(BREEDS), names.in(PLACES), metric);
    }

    /** As they go into the record when they are said. */
    private List<String> in(RuleId rule) {
        return phrases.of(grammar.rule(rule).expansion()).stream()
                .flatMap(phrase -> matcher.match(rule, phrase.words(), 1).stream())
                .map(ParseTree::name)
                .distinct()
                .toList();
    }
}
