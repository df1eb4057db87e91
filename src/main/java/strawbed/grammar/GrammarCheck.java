package strawbed.grammar;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;

/** Refuses grammars that are well written but would never come to an end. */
final class GrammarCheck {

    /** More parts of one rule, every repeat counted as often as it may happen, take too much room. */
    private static final long LARGEST = 100_000;

    private final Grammar grammar;
    private final References references;
    private final RuleProperty nullable;
    private final RuleProperty ending;
    private final Set<RuleId> cleared = new HashSet<>();

    GrammarCheck(Grammar grammar, References references) {
        this.grammar = grammar;
        this.references = references;
        this.nullable = RuleProperty.nullable(grammar.rules());
        this.ending = RuleProperty.ending(grammar.rules());
    }

    void run() {
        for (Rule rule : grammar.rules()) {
            Grammar.visit(rule.expansion(), part -> {
                if (part instanceof Repeat repeat) {
                    checkRepeat(repeat);
                }
            });
            checkLeftRecursion(rule, new LinkedHashSet<>());
        }
        for (Rule rule : grammar.rules()) {
            if (!ending.holds(rule.id())) {
                Grammar.visit(rule.expansion(), part -> checkEnding(rule, part));
            }
        }
    }

    private void checkRepeat(Repeat repeat) {
        if (repeat.max() == Repeat.UNBOUNDED && nullable.holds(repeat.expansion())) {
            throw references.mistake(
                    repeat, "this is repeated without end but may be empty; let each time take at least one word.");
        }
        if (size(repeat) > LARGEST) {
            throw references.mistake(
                    repeat, "repeats inside repeats make more than " + LARGEST + " parts; use smaller counts.");
        }
    }

    private static long size(RuleExpansion expansion) {
        long inner = 1;
        for (RuleExpansion part : expansion.parts()) {
            inner = Math.min(LARGEST + 1, inner + size(part));
        }
        if (expansion instanceof Repeat repeat) {
            long times = repeat.max() == Repeat.UNBOUNDED ? repeat.min() + 1 : repeat.max();
            return Math.min(LARGEST + 1, inner * times);
        }
        return inner;
    }

    /** A rule that reaches itself before any word would be tried again and again at the same word. */
    private void checkLeftRecursion(Rule rule, Set<RuleId> path) {
        if (!cleared.contains(rule.id())) {
            path.add(rule.id());
            List<RuleReference> first = new ArrayList<>();
            collectFirst(rule.expansion(), first);
            for (RuleReference reference : first) {
                if (path.contains(reference.rule())) {
                    throw references.mistake(
                            reference,
                            "the rule $" + reference.rule().name() + " begins with itself ("
                                    + circle(path, reference.rule()) + "); let a word come first.");
                }
                checkLeftRecursion(grammar.rule(reference.rule()), path);
            }
            path.remove(rule.id());
            cleared.add(rule.id());
        }
    }

    private static String circle(Set<RuleId> path, RuleId again) {
        return path.stream()
                        .dropWhile(id -> !id.equals(again))
                        .map(id -> "$" + id.name() + " > ")
                        .collect(Collectors.joining())
                + "$" + again.name();
    }

    private void collectFirst(RuleExpansion expansion, List<RuleReference> first) {
        if (expansion instanceof RuleReference reference) {
            first.add(reference);
        } else if (expansion instanceof Sequence sequence) {
            for (RuleExpansion part : sequence.parts()) {
                collectFirst(part, first);
                if (!nullable.holds(part)) {
                    return;
                }
            }
        } else {
            expansion.parts().forEach(part -> collectFirst(part, first));
        }
    }

    private void checkEnding(Rule rule, RuleExpansion part) {
        if (part instanceof RuleReference reference && !ending.holds(reference.rule())) {
            throw references.mistake(
                    reference,
                    "the rule $" + rule.id().name() + " can never come to an end; add an alternative without $"
                            + reference.rule().name() + ".");
        }
    }
}
