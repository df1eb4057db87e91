package strawbed.crib;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import strawbed.grammar.Documentation;
import strawbed.grammar.Rule;
import strawbed.grammar.RuleExpansion;
import strawbed.grammar.RuleId;

/** The words to choose from in a rule whose documentation says {@code @choices}. */
final class Choices {
    private static final String TAG = "choices";
    private static final String EVERY_WORDING = "all";

    private Choices() {}

    /** Each choice as its words: of those with the same meaning the first, or all. Empty where nothing is asked for. */
    static List<List<String>> of(Rule rule) {
        return of(rule, alternatives(rule));
    }

    /** The same with the choices of the rules that its alternatives refer to, such as the farm's own names. */
    static List<List<String>> of(Rule rule, Function<RuleId, Rule> others) {
        return of(
                rule,
                alternatives(rule).stream()
                        .flatMap(alternative -> alternative instanceof RuleExpansion.RuleReference reference
                                ? alternatives(others.apply(reference.rule())).stream()
                                : Stream.of(alternative))
                        .toList());
    }

    private static List<RuleExpansion> alternatives(Rule rule) {
        return rule.expansion() instanceof RuleExpansion.Alternatives several
                ? several.parts()
                : List.of(rule.expansion());
    }

    private static List<List<String>> of(Rule rule, List<RuleExpansion> alternatives) {
        List<Documentation.Tag> tags = rule.documentation().tags(TAG);
        if (tags.isEmpty()) {
            return List.of();
        }
        boolean every = tags.stream().anyMatch(tag -> tag.text().equals(EVERY_WORDING));
        Set<String> meanings = new HashSet<>();
        List<List<String>> choices = new ArrayList<>();
        for (RuleExpansion alternative : alternatives) {
            List<String> words = words(alternative);
            if (!words.isEmpty() && (meanings.add(meaning(alternative, words)) || every)) {
                choices.add(words);
            }
        }
        return choices;
    }

    /** The words of an alternative of nothing but words; of another one none, as it is shown by examples. */
    private static List<String> words(RuleExpansion alternative) {
        List<String> words = new ArrayList<>();
        for (RuleExpansion part : flat(alternative)) {
            if (part instanceof RuleExpansion.Token token) {
                words.add(token.text());
            } else if (!(part instanceof RuleExpansion.Tag)) {
                return List.of();
            }
        }
        return words;
    }

    private static String meaning(RuleExpansion alternative, List<String> words) {
        Optional<String> tag = flat(alternative).stream()
                .filter(RuleExpansion.Tag.class::isInstance)
                .map(part -> ((RuleExpansion.Tag) part).literal())
                .reduce((first, last) -> last);
        return tag.orElseGet(() -> String.join(" ", words));
    }

    private static List<RuleExpansion> flat(RuleExpansion expansion) {
        return expansion instanceof RuleExpansion.Sequence sequence ? sequence.parts() : List.of(expansion);
    }
}
