package strawbed.app;

import java.util.List;
import strawbed.entry.FarmChoices;
import strawbed.grammar.Grammar;
import strawbed.grammar.Phrase;
import strawbed.grammar.Phrases;

/** Names that the grammar has, a farm's own among them, so that what can be said can be pressed as well. */
final class FarmNames {
    private final Grammar grammar;
    private final Phrases phrases;

    private FarmNames(Grammar grammar) {
        this.grammar = grammar;
        this.phrases = new Phrases(grammar);
    }

    /** @param metric whether liters, kilograms and Celsius come first */
    static FarmChoices of(Grammar grammar, boolean metric) {
        FarmNames names = new FarmNames(grammar);
        return new FarmChoices(names.in("breed_name"), names.in("place_name"), metric);
    }

    /** As they go into the record: what stands in braces behind the words, else the words themselves. */
    private List<String> in(String rule) {
        return grammar.rules().stream()
                .filter(one -> one.id().name().equals(rule))
                .flatMap(one -> phrases.of(one.expansion()).stream())
                .map(FarmNames::recorded)
                .distinct()
                .toList();
    }

    private static String recorded(Phrase phrase) {
        return phrase.tag().orElseGet(() -> String.join(" ", phrase.words()));
    }
}
