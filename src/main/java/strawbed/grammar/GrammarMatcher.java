package strawbed.grammar;

import java.util.List;

/**
 * Matches word lists with the rules of a grammar, word for word.
 *
 * <p>Words are compared as they are, so they must be in lower case. The work grows with a small power of the number of
 * words, however ambiguous the grammar is. Immutable, and safe for any thread.
 */
public final class GrammarMatcher {

    private final Network network;

    /** A matcher for a grammar; make it once and keep it. */
    public GrammarMatcher(Grammar grammar) {
        this.network = new Network(grammar);
    }

    /**
     * The different ways in which all words can be said under a rule.
     *
     * <p>The first tree is the preferred one: earlier alternatives before later ones, more repeats before fewer. The order
     * is always the same.
     *
     * @param limit the most trees wanted, at least 1; the search ends there
     * @return no tree when the words do not match
     * @throws IllegalArgumentException when the grammar does not have the rule or the limit is below 1
     */
    public List<ParseTree> match(RuleId start, List<String> words, int limit) {
        if (limit < 1) {
            throw new IllegalArgumentException("At least one tree must be wanted, not " + limit + ".");
        }
        return new Chart(network, List.copyOf(words), limit).trees(network.rule(start));
    }

    /**
     * The largest number of words, from the first on, with which some sentence of the rule begins.
     *
     * @throws IllegalArgumentException when the grammar does not have the rule
     */
    public int longestPrefix(RuleId start, List<String> words) {
        return new Chart(network, List.copyOf(words), 1).furthest(network.rule(start));
    }

    /**
     * Whether some sentence of the rule begins with all these words, or is them.
     *
     * @throws IllegalArgumentException when the grammar does not have the rule
     */
    public boolean isPrefix(RuleId start, List<String> words) {
        return longestPrefix(start, words) == words.size();
    }
}
