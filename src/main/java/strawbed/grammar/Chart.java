package strawbed.grammar;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import strawbed.grammar.Step.Accept;
import strawbed.grammar.Step.Branch;
import strawbed.grammar.Step.Call;
import strawbed.grammar.Step.Fork;
import strawbed.grammar.Step.Mark;
import strawbed.grammar.Step.Word;

/**
 * One word list under the network: finds the spans of each rule once, then builds trees only along spans that fit.
 *
 * <p>Not safe for several threads; lives for one match.
 */
final class Chart {

    private record Span(int rule, int from, int to) {}

    /** The rest of a rule's body, to be said from one word to another with the last literal so far. */
    private record Rest(
            int state, int from, int to, @Nullable String tag) {}

    private record Body(List<ParseTree> children, @Nullable String tag) {}

    private final Network network;
    private final List<String> text;
    private final int[] words;
    private final int limit;
    private final Map<Integer, int[]> ends = new HashMap<>();
    private final Map<Span, List<ParseTree>> trees = new HashMap<>();
    private final Map<Rest, List<Body>> bodies = new HashMap<>();
    private int furthest;

    Chart(Network network, List<String> text, int limit) {
        this.network = network;
        this.text = text;
        this.words = text.stream().mapToInt(network::number).toArray();
        this.limit = limit;
    }

    /** The most words that begin some sentence of the rule. */
    int furthest(int rule) {
        if (network.start(rule) != Network.NOWHERE) {
            ends(rule, 0);
        }
        return furthest;
    }

    /** The trees of a rule over all words. */
    List<ParseTree> trees(int rule) {
        if (network.start(rule) == Network.NOWHERE) {
            return List.of();
        }
        for (int end : ends(rule, 0)) {
            if (end == words.length) {
                return trees(rule, 0, end);
            }
        }
        return List.of();
    }

    /** Where the rule may end when it begins at a word, the end of the preferred way first. */
    private int[] ends(int rule, int from) {
        int key = from * network.rules() + rule;
        int[] known = ends.get(key);
        if (known == null) {
            known = explore(rule, from);
            ends.put(key, known);
        }
        return known;
    }

    /** Goes depth first, so that ends are found in the order of preference; sees each state at each word once. */
    private int[] explore(int rule, int from) {
        int width = words.length + 1;
        int base = network.from(rule);
        BitSet seen = new BitSet();
        IntList open = new IntList();
        IntList found = new IntList();
        open.add((network.start(rule) - base) * width + from);
        while (!open.isEmpty()) {
            int place = open.removeLast();
            if (seen.get(place)) {
                continue;
            }
            seen.set(place);
            int at = place % width;
            furthest = Math.max(furthest, at);
            Step step = network.step(place / width + base);
            if (step instanceof Word word) {
                if (fits(word, at)) {
                    open.add((word.next() - base) * width + at + 1);
                }
            } else if (step instanceof Call call) {
                if (mayBegin(call.rule(), at)) {
                    int[] after = ends(call.rule(), at);
                    for (int i = after.length - 1; i >= 0; i--) {
                        open.add((call.next() - base) * width + after[i]);
                    }
                }
            } else if (step instanceof Fork fork) {
                for (int i = fork.branches().size() - 1; i >= 0; i--) {
                    open.add((fork.branches().get(i).next() - base) * width + at);
                }
            } else if (step instanceof Mark mark) {
                open.add((mark.next() - base) * width + at);
            } else {
                found.add(at);
            }
        }
        return found.toArray();
    }

    private boolean fits(Word word, int at) {
        return at < words.length && (word.word() == Network.ANY || word.word() == words[at]);
    }

    private boolean mayBegin(int rule, int at) {
        int start = network.start(rule);
        return network.mayBeEmpty(start)
                || (at < words.length
                        && (network.first(start).get(Network.ANY)
                                || (words[at] >= 0 && network.first(start).get(words[at]))));
    }

    private List<ParseTree> trees(int rule, int from, int to) {
        Span span = new Span(rule, from, to);
        List<ParseTree> known = trees.get(span);
        if (known == null) {
            known = bodies(network.start(rule), from, to, null).stream()
                    .map(body -> new ParseTree(
                            network.name(rule), body.tag(), from, to, text.subList(from, to), body.children()))
                    .toList();
            trees.put(span, known);
        }
        return known;
    }

    private List<Body> bodies(int state, int from, int to, @Nullable String tag) {
        Step step = network.step(state);
        if (step instanceof Word word) {
            return from < to && fits(word, from) ? bodies(word.next(), from + 1, to, tag) : List.of();
        }
        if (step instanceof Mark mark) {
            return bodies(mark.next(), from, to, mark.literal());
        }
        if (step instanceof Accept) {
            return from == to ? List.of(new Body(List.of(), tag)) : List.of();
        }
        Rest rest = new Rest(state, from, to, tag);
        List<Body> known = bodies.get(rest);
        if (known == null) {
            known = step instanceof Fork fork ? afterFork(fork, rest) : afterCall((Call) step, rest);
            bodies.put(rest, known);
        }
        return known;
    }

    private List<Body> afterFork(Fork fork, Rest rest) {
        List<Body> only = List.of();
        Set<Body> several = new LinkedHashSet<>();
        for (Branch branch : fork.branches()) {
            List<Body> more = bodies(branch.next(), rest.from(), rest.to(), rest.tag());
            // One branch fits almost always; comparing whole trees is for the rest.
            if (several.isEmpty() && only.isEmpty()) {
                only = more;
            } else if (!more.isEmpty()) {
                several.addAll(only);
                several.addAll(more);
            }
        }
        return several.isEmpty() ? only : several.stream().limit(limit).toList();
    }

    private List<Body> afterCall(Call call, Rest rest) {
        List<Body> found = new ArrayList<>();
        if (!mayBegin(call.rule(), rest.from())) {
            return found;
        }
        for (int end : ends(call.rule(), rest.from())) {
            List<Body> after = end > rest.to() ? List.of() : bodies(call.next(), end, rest.to(), rest.tag());
            if (!after.isEmpty()) {
                for (ParseTree child : trees(call.rule(), rest.from(), end)) {
                    for (Body body : after) {
                        if (found.size() == limit) {
                            return found;
                        }
                        found.add(new Body(preceded(child, body.children()), body.tag()));
                    }
                }
            }
        }
        return found;
    }

    private static List<ParseTree> preceded(ParseTree child, List<ParseTree> others) {
        List<ParseTree> all = new ArrayList<>(others.size() + 1);
        all.add(child);
        all.addAll(others);
        return all;
    }
}
