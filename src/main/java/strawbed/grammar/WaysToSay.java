package strawbed.grammar;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Special;

/**
 * In how many ways a rule can be said. Ways, not sentences: where a grammar allows the same words twice, both count.
 *
 * @param count with each repeat without end said at most {@value #FURTHER} times beyond its fewest, a rule inside itself
 *     not at all, and free speech as one way
 * @param endless whether there is such a repeat, such a rule or free speech
 */
public record WaysToSay(BigInteger count, boolean endless) {
    /** How often a repeat without end is counted beyond its fewest times. */
    public static final int FURTHER = 2;

    /**
     * Counts the ways to say a rule.
     *
     * @throws GrammarException when the grammar does not have it
     */
    public static WaysToSay of(Grammar grammar, RuleId rule) {
        Counter counter = new Counter(grammar);
        BigInteger count = counter.count(rule);
        return new WaysToSay(count, counter.endless);
    }

    private static final class Counter {
        private final Grammar grammar;
        private final Map<RuleId, BigInteger> known = new HashMap<>();
        private final Set<RuleId> open = new HashSet<>();
        private boolean endless;

        Counter(Grammar grammar) {
            this.grammar = grammar;
        }

        BigInteger count(RuleId id) {
            BigInteger before = known.get(id);
            if (before != null) {
                return before;
            }
            if (!open.add(id)) {
                endless = true;
                return BigInteger.ZERO;
            }
            BigInteger count = count(grammar.rule(id).expansion());
            open.remove(id);
            known.put(id, count);
            return count;
        }

        private BigInteger count(RuleExpansion expansion) {
            if (expansion instanceof RuleReference reference) {
                return count(reference.rule());
            }
            if (expansion instanceof Sequence sequence) {
                return sequence.parts().stream().map(this::count).reduce(BigInteger.ONE, BigInteger::multiply);
            }
            if (expansion instanceof Alternatives alternatives) {
                return alternatives.parts().stream().map(this::count).reduce(BigInteger.ZERO, BigInteger::add);
            }
            if (expansion instanceof Repeat repeat) {
                return count(repeat);
            }
            endless |= expansion == Special.GARBAGE;
            return expansion == Special.VOID ? BigInteger.ZERO : BigInteger.ONE;
        }

        private BigInteger count(Repeat repeat) {
            BigInteger once = count(repeat.expansion());
            boolean unbounded = repeat.max() == Repeat.UNBOUNDED;
            endless |= unbounded && once.signum() > 0;
            int most = unbounded ? repeat.min() + FURTHER : repeat.max();
            BigInteger times = once.pow(repeat.min());
            BigInteger count = times;
            for (int i = repeat.min(); i < most; i++) {
                times = times.multiply(once);
                count = count.add(times);
            }
            return count;
        }
    }
}
