package strawbed.grammar;

import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A grammar as states: one small machine per rule, which may call the machines of other rules.
 *
 * <p>Parts that can never be said are left out, so that every state can be reached and left. The words have numbers; 0
 * stands for any word at all.
 */
final class Network {

    /** The number of "any word". */
    static final int ANY = 0;

    /** The state of a rule that can never be said. */
    static final int NOWHERE = -1;

    private final Map<RuleId, Integer> rules = new HashMap<>();
    private final List<String> names;
    private final List<String> words;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<Step> steps;
    private final int[] starts;
    private final int[] bounds;
    private final boolean[] empty;
    private final BitSet[] first;

    Network(Grammar grammar) {
        List<RuleId> ids = grammar.ids();
        for (RuleId id : ids) {
            rules.put(id, rules.size());
        }
        names = ids.stream().map(RuleId::name).toList();
        NetworkBuilder builder = new NetworkBuilder(grammar, rules);
        starts = builder.starts();
        bounds = builder.bounds();
        steps = builder.steps();
        words = builder.words();
        for (int i = 1; i < words.size(); i++) {
            numbers.put(words.get(i), i);
        }
        empty = new boolean[steps.size()];
        first = new BitSet[steps.size()];
        for (int i = 0; i < first.length; i++) {
            first[i] = new BitSet();
        }
        settleFirst();
    }

    /**
     * The rule's number.
     *
     * @throws IllegalArgumentException when the grammar has no such rule
     */
    int rule(RuleId id) {
        Integer rule = rules.get(id);
        if (rule == null) {
            throw new IllegalArgumentException("The grammar has no rule " + id + ".");
        }
        return rule;
    }

    int rules() {
        return starts.length;
    }

    String name(int rule) {
        return names.get(rule);
    }

    /** The rule's first state, or {@link #NOWHERE}. */
    int start(int rule) {
        return starts[rule];
    }

    /** The smallest of the rule's states. */
    int from(int rule) {
        return bounds[rule];
    }

    /** The state after the largest of the rule's states. */
    int to(int rule) {
        return bounds[rule + 1];
    }

    int states() {
        return steps.size();
    }

    Step step(int state) {
        return steps.get(state);
    }

    int words() {
        return words.size();
    }

    String word(int number) {
        return words.get(number);
    }

    /** The word's number, or -1 when the grammar does not know it. */
    int number(String word) {
        return numbers.getOrDefault(word, -1);
    }

    /** Whether the rest of a rule from a state may be said without a word. */
    boolean mayBeEmpty(int state) {
        return empty[state];
    }

    /** The words that the rest of a rule from a state may begin with. */
    BitSet first(int state) {
        return first[state];
    }

    private void settleFirst() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int state = 0; state < steps.size(); state++) {
                changed |= settleFirst(state);
            }
        }
    }

    private boolean settleFirst(int state) {
        Step step = steps.get(state);
        BitSet words = first[state];
        int before = words.cardinality();
        boolean wasEmpty = empty[state];
        if (step instanceof Step.Word word) {
            words.set(word.word());
        } else if (step instanceof Step.Call call) {
            int start = starts[call.rule()];
            words.or(first[start]);
            if (empty[start]) {
                words.or(first[call.next()]);
                empty[state] = empty[call.next()];
            }
        } else if (step instanceof Step.Mark mark) {
            words.or(first[mark.next()]);
            empty[state] = empty[mark.next()];
        } else if (step instanceof Step.Fork fork) {
            for (Step.Branch branch : fork.branches()) {
                words.or(first[branch.next()]);
                empty[state] |= empty[branch.next()];
            }
        } else {
            empty[state] = true;
        }
        return words.cardinality() != before || empty[state] != wasEmpty;
    }
}
