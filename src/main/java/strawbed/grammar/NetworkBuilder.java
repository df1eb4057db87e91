package strawbed.grammar;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import strawbed.grammar.RuleExpansion.Alternative;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Special;
import strawbed.grammar.RuleExpansion.Tag;
import strawbed.grammar.RuleExpansion.Token;

/** Lays out the states of a {@link Network}, each expansion from its end to its beginning. */
final class NetworkBuilder {

    private final Map<RuleId, Integer> rules;
    private final RuleProperty sayable;
    private final List<Step> steps = new ArrayList<>();
    private final List<String> words = new ArrayList<>(List.of(SentenceMaker.ANYTHING));
    private final Map<String, Integer> numbers = new HashMap<>();
    private final int[] starts;
    private final int[] bounds;

    NetworkBuilder(Grammar grammar, Map<RuleId, Integer> rules) {
        this.rules = rules;
        this.sayable = RuleProperty.sayable(grammar.rules());
        this.starts = new int[rules.size()];
        this.bounds = new int[rules.size() + 1];
        int i = 0;
        for (Rule rule : grammar.rules()) {
            starts[i] = sayable.holds(rule.id()) ? before(rule.expansion(), add(new Step.Accept())) : Network.NOWHERE;
            bounds[++i] = steps.size();
        }
    }

    int[] starts() {
        return starts;
    }

    /** Where the states of each rule begin, and after the last where they end. */
    int[] bounds() {
        return bounds;
    }

    List<Step> steps() {
        return steps;
    }

    List<String> words() {
        return words;
    }

    private int add(Step step) {
        steps.add(step);
        return steps.size() - 1;
    }

    /** The state from which the expansion leads to the next state; the expansion can be said. */
    private int before(RuleExpansion expansion, int next) {
        if (expansion instanceof Token token) {
            return add(new Step.Word(number(token.text()), next));
        }
        if (expansion instanceof RuleReference reference) {
            return add(new Step.Call(Objects.requireNonNull(rules.get(reference.rule())), next));
        }
        if (expansion instanceof Tag tag) {
            return add(new Step.Mark(tag.literal(), next));
        }
        if (expansion instanceof Sequence sequence) {
            int state = next;
            for (int i = sequence.parts().size() - 1; i >= 0; i--) {
                state = before(sequence.parts().get(i), state);
            }
            return state;
        }
        if (expansion instanceof Alternatives alternatives) {
            return beforeOneOf(alternatives.alternatives(), next);
        }
        if (expansion instanceof Repeat repeat) {
            return sayable.holds(repeat.expansion()) ? beforeRepeat(repeat, next) : next;
        }
        return expansion == Special.GARBAGE ? beforeGarbage(next) : next;
    }

    private int beforeOneOf(List<Alternative> alternatives, int next) {
        List<Step.Branch> branches = new ArrayList<>();
        for (Alternative alternative : alternatives) {
            if (sayable.holds(alternative.expansion())) {
                branches.add(new Step.Branch(alternative.weight(), before(alternative.expansion(), next)));
            }
        }
        return branches.size() == 1 ? branches.get(0).next() : add(new Step.Fork(List.copyOf(branches)));
    }

    private int beforeRepeat(Repeat repeat, int next) {
        int state = next;
        if (repeat.max() == Repeat.UNBOUNDED) {
            state = add(new Step.Accept());
            steps.set(state, moreOrNot(repeat, before(repeat.expansion(), state), next));
        } else {
            for (int i = repeat.min(); i < repeat.max(); i++) {
                state = add(moreOrNot(repeat, before(repeat.expansion(), state), next));
            }
        }
        for (int i = 0; i < repeat.min(); i++) {
            state = before(repeat.expansion(), state);
        }
        return state;
    }

    private static Step moreOrNot(Repeat repeat, int more, int next) {
        return new Step.Fork(
                List.of(new Step.Branch(repeat.probability(), more), new Step.Branch(1 - repeat.probability(), next)));
    }

    /** Garbage ends as soon as it can, so that it leaves the words that mean something to the rules after it. */
    private int beforeGarbage(int next) {
        int state = add(new Step.Accept());
        int more = add(new Step.Word(Network.ANY, state));
        steps.set(state, new Step.Fork(List.of(new Step.Branch(1, next), new Step.Branch(1, more))));
        return state;
    }

    private int number(String word) {
        return numbers.computeIfAbsent(word, added -> {
            words.add(added);
            return words.size() - 1;
        });
    }
}
