package strawbed.grammar;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/** Which words may stand next to each other in the sentences of one rule, as numbers; exact, without making sentences. */
final class Neighbours {

    private final Network network;
    private final BitSet[] last;
    private final BitSet pairs = new BitSet();

    Neighbours(Network network, int start) {
        this.network = network;
        this.last = new BitSet[network.rules()];
        for (int rule = 0; rule < last.length; rule++) {
            last[rule] = new BitSet();
        }
        settleLast();
        if (network.start(start) != Network.NOWHERE) {
            collect(start);
        }
    }

    /** The number that stands for the beginning and the end of a sentence. */
    static int edge(Network network) {
        return network.words();
    }

    /** The pair as one number. */
    static int pair(Network network, int left, int right) {
        return left * (network.words() + 1) + right;
    }

    /** All pairs, each as one number; a copy. */
    BitSet pairs() {
        return (BitSet) pairs.clone();
    }

    private void settleLast() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int rule = 0; rule < last.length; rule++) {
                int before = last[rule].cardinality();
                for (int state = network.from(rule); state < network.to(rule); state++) {
                    Step step = network.step(state);
                    if (step instanceof Step.Word word && network.mayBeEmpty(word.next())) {
                        last[rule].set(word.word());
                    } else if (step instanceof Step.Call call && network.mayBeEmpty(call.next())) {
                        last[rule].or(last[call.rule()]);
                    }
                }
                changed |= last[rule].cardinality() != before;
            }
        }
    }

    private void collect(int start) {
        int edge = edge(network);
        BitSet edges = new BitSet();
        edges.set(edge);
        int first = network.start(start);
        join(edges, network.first(first));
        join(last[start], edges);
        if (network.mayBeEmpty(first)) {
            join(edges, edges);
        }
        BitSet seen = new BitSet();
        Deque<Integer> open = new ArrayDeque<>();
        open.add(start);
        while (!open.isEmpty()) {
            int rule = open.remove();
            if (!seen.get(rule)) {
                seen.set(rule);
                for (int state = network.from(rule); state < network.to(rule); state++) {
                    Step step = network.step(state);
                    if (step instanceof Step.Word word) {
                        BitSet left = new BitSet();
                        left.set(word.word());
                        join(left, network.first(word.next()));
                    } else if (step instanceof Step.Call call) {
                        join(last[call.rule()], network.first(call.next()));
                        open.add(call.rule());
                    }
                }
            }
        }
    }

    private void join(BitSet lefts, BitSet rights) {
        lefts.stream().forEach(left -> rights.stream().forEach(right -> pairs.set(pair(network, left, right))));
    }
}
