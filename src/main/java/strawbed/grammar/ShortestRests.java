package strawbed.grammar;

import java.util.Arrays;

/** The fewest words from each state of a network to the end of its rule. */
final class ShortestRests {

    /** As good as endless; sums of it do not overflow. */
    private static final long FAR = Long.MAX_VALUE / 4;

    private final Network network;
    private final long[] words;

    ShortestRests(Network network) {
        this.network = network;
        this.words = new long[network.states()];
        Arrays.fill(words, FAR);
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int state = 0; state < words.length; state++) {
                long now = Math.min(FAR, from(network.step(state)));
                changed |= now < words[state];
                words[state] = Math.min(words[state], now);
            }
        }
    }

    long from(int state) {
        return words[state];
    }

    private long from(Step step) {
        if (step instanceof Step.Word word) {
            return 1 + words[word.next()];
        }
        if (step instanceof Step.Call call) {
            return words[network.start(call.rule())] + words[call.next()];
        }
        if (step instanceof Step.Mark mark) {
            return words[mark.next()];
        }
        if (step instanceof Step.Fork fork) {
            return words[shortest(fork)];
        }
        return 0;
    }

    /** The state after the branch with the fewest words; of equals the first. */
    int shortest(Step.Fork fork) {
        int best = fork.branches().get(0).next();
        for (Step.Branch branch : fork.branches()) {
            if (words[branch.next()] < words[best]) {
                best = branch.next();
            }
        }
        return best;
    }
}
