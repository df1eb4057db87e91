package strawbed.grammar;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Special;
import strawbed.grammar.RuleExpansion.Token;

/** A yes or no about expansions that holds for a sequence when it holds for all parts, for alternatives when for one. */
final class RuleProperty {

    private final Predicate<RuleExpansion> atom;
    private final Set<RuleId> rules = new HashSet<>();

    private RuleProperty(Collection<Rule> all, Predicate<RuleExpansion> atom) {
        this.atom = atom;
        // The least fixed point: a rule gains the property only from what is known already.
        boolean gained = true;
        while (gained) {
            gained = false;
            for (Rule rule : all) {
                gained |= !rules.contains(rule.id()) && holds(rule.expansion()) && rules.add(rule.id());
            }
        }
    }

    /** Whether something can be said without a word. */
    static RuleProperty nullable(Collection<Rule> rules) {
        return new RuleProperty(rules, atom -> !(atom instanceof Token) && atom != Special.VOID);
    }

    /** Whether something can be said at all. */
    static RuleProperty sayable(Collection<Rule> rules) {
        return new RuleProperty(rules, atom -> atom != Special.VOID);
    }

    /** Whether its expansion comes to an end, be it in $VOID. */
    static RuleProperty ending(Collection<Rule> rules) {
        return new RuleProperty(rules, atom -> true);
    }

    boolean holds(RuleId rule) {
        return rules.contains(rule);
    }

    boolean holds(RuleExpansion expansion) {
        if (expansion instanceof Sequence sequence) {
            return sequence.parts().stream().allMatch(this::holds);
        }
        if (expansion instanceof Alternatives alternatives) {
            return alternatives.alternatives().stream().anyMatch(alternative -> holds(alternative.expansion()));
        }
        if (expansion instanceof Repeat repeat) {
            return repeat.min() == 0 || holds(repeat.expansion());
        }
        if (expansion instanceof RuleReference reference) {
            return rules.contains(reference.rule());
        }
        return atom.test(expansion);
    }
}
