package strawbed.grammar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Makes sentences that a grammar allows: by chance, in full, or so that every pair of neighbouring words occurs.
 *
 * <p>The same grammar gives the same sentences on every machine. A rule that can never be said has no sentences.
 * Immutable, and safe for any thread.
 */
public final class SentenceMaker {

    /** Stands in a sentence for any word, where the grammar has {@code $GARBAGE}. */
    public static final String ANYTHING = "[unk]";

    /** Beyond these, a sentence by chance takes the shortest way to its end; recursion would not come to one else. */
    private static final int DEEP = 20;

    private static final int LONG = 60;

    /** The most words of the sentences listed of a grammar with endlessly many. */
    private static final long LISTED = 12;

    private final Network network;
    private final ShortestRests rests;

    /** A sentence maker for a grammar; make it once and keep it. */
    public SentenceMaker(Grammar grammar) {
        this.network = new Network(grammar);
        this.rests = new ShortestRests(network);
    }

    /**
     * Sentences by chance, as likely as the grammar's weights and repeat probabilities make them.
     *
     * <p>Where the grammar gives none: an optional part is said half the time, and each further repeat is as likely as
     * not, or 0.4 in a repeat without end (our own choice).
     *
     * @param count how many, not below 0; equal ones may occur
     * @param seed the same seed gives the same sentences
     * @throws IllegalArgumentException when the grammar does not have the rule or the count is below 0
     */
    public List<List<String>> sample(RuleId start, int count, long seed) {
        if (count < 0) {
            throw new IllegalArgumentException("Nobody can make " + count + " sentences.");
        }
        int state = network.start(network.rule(start));
        if (state == Network.NOWHERE) {
            return List.of();
        }
        SplittableRandom random = new SplittableRandom(seed);
        return Stream.generate(() -> walk(state, random)).limit(count).toList();
    }

    /**
     * Few sentences in which every one of {@link #pairs} occurs at least once.
     *
     * @throws IllegalArgumentException when the grammar does not have the rule
     */
    public List<List<String>> cover(RuleId start) {
        int rule = network.rule(start);
        if (network.start(rule) == Network.NOWHERE) {
            return List.of();
        }
        return new PairCover(network, new Routes(network, rests, rule), new Neighbours(network, rule)).sentences();
    }

    /**
     * Every pair of words that stand next to each other in some sentence, first and last words with the edge.
     *
     * @throws IllegalArgumentException when the grammar does not have the rule
     */
    public Set<WordPair> pairs(RuleId start) {
        int width = network.words() + 1;
        Set<WordPair> pairs = new LinkedHashSet<>();
        new Neighbours(network, network.rule(start))
                .pairs().stream().forEach(pair -> pairs.add(new WordPair(word(pair / width), word(pair % width))));
        return Collections.unmodifiableSet(pairs);
    }

    /**
     * Every different sentence, one at a time, in the order of the grammar.
     *
     * <p>Of a rule with endlessly many sentences, those of up to 12 words, or as many as its shortest has.
     *
     * @throws IllegalArgumentException when the grammar does not have the rule
     */
    public Stream<List<String>> all(RuleId start) {
        int rule = network.rule(start);
        if (network.start(rule) == Network.NOWHERE) {
            return Stream.empty();
        }
        Routes routes = new Routes(network, rests, rule);
        long longest = new Loops(network).reachableFrom(rule)
                ? Math.max(LISTED, routes.start().rest())
                : Long.MAX_VALUE;
        return StreamSupport.stream(
                        Spliterators.spliteratorUnknownSize(
                                new SentenceIterator(network, routes, longest), Spliterator.ORDERED),
                        false)
                .distinct();
    }

    private String word(int number) {
        return number == Neighbours.edge(network) ? WordPair.EDGE : network.word(number);
    }

    private List<String> walk(int start, SplittableRandom random) {
        List<String> words = new ArrayList<>();
        IntList returns = new IntList();
        int state = start;
        while (true) {
            Step step = network.step(state);
            if (step instanceof Step.Word word) {
                words.add(network.word(word.word()));
                state = word.next();
            } else if (step instanceof Step.Call call) {
                returns.add(call.next());
                state = network.start(call.rule());
            } else if (step instanceof Step.Mark mark) {
                state = mark.next();
            } else if (step instanceof Step.Fork fork) {
                boolean home = returns.size() > DEEP || words.size() > LONG;
                state = home ? rests.shortest(fork) : choose(fork, random);
            } else if (returns.isEmpty()) {
                return List.copyOf(words);
            } else {
                state = returns.removeLast();
            }
        }
    }

    private static int choose(Step.Fork fork, SplittableRandom random) {
        List<Step.Branch> branches = fork.branches();
        double left = random.nextDouble()
                * branches.stream().mapToDouble(Step.Branch::weight).sum();
        for (Step.Branch branch : branches) {
            left -= branch.weight();
            if (left < 0) {
                return branch.next();
            }
        }
        // Rounding may leave a crumb; it belongs to the last branch that can be chosen.
        return branches.stream()
                .filter(branch -> branch.weight() > 0)
                .reduce((a, b) -> b)
                .orElseThrow()
                .next();
    }
}
