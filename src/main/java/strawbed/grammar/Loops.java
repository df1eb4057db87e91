package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/** Finds out whether a rule has endlessly many sentences. */
final class Loops {

    private final Network network;

    Loops(Network network) {
        this.network = network;
    }

    /** Whether a repeat without end or a recursion can be reached; both take words each time around. */
    boolean reachableFrom(int rule) {
        BitSet reached = new BitSet();
        int[] entries = new int[network.states()];
        Deque<Integer> open = new ArrayDeque<>(List.of(network.start(rule)));
        reached.set(network.start(rule));
        while (!open.isEmpty()) {
            for (int next : after(open.remove())) {
                entries[next]++;
                if (!reached.get(next)) {
                    reached.set(next);
                    open.add(next);
                }
            }
        }
        // Takes away states that nothing leads to any more; what cannot be taken away is a circle (Kahn 1962).
        open.add(network.start(rule));
        int removed = 0;
        while (!open.isEmpty()) {
            int state = open.remove();
            if (entries[state] == 0) {
                removed++;
                for (int next : after(state)) {
                    if (--entries[next] == 0) {
                        open.add(next);
                    }
                }
            }
        }
        return removed < reached.cardinality();
    }

    private List<Integer> after(int state) {
        Step step = network.step(state);
        if (step instanceof Step.Word word) {
            return List.of(word.next());
        }
        if (step instanceof Step.Call call) {
            return List.of(network.start(call.rule()), call.next());
        }
        if (step instanceof Step.Mark mark) {
            return List.of(mark.next());
        }
        if (step instanceof Step.Fork fork) {
            return fork.branches().stream().map(Step.Branch::next).toList();
        }
        return List.of();
    }
}
