package strawbed.grammar;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How a rule matched a span of words.
 *
 * <p>Immutable, and safe for any thread.
 *
 * @param rule the rule's name without the dollar sign
 * @param tag the last literal passed in the rule's own body, or null when there was none
 * @param from index of the first word
 * @param to index after the last word
 * @param words the words of the span
 * @param children how the rules referred to matched, in the order of the words
 */
public record ParseTree(
        String rule, @Nullable String tag, int from, int to, List<String> words, List<ParseTree> children) {

    /** Keeps its own copies and refuses a span that does not fit its words. */
    public ParseTree {
        Objects.requireNonNull(rule, "rule");
        words = List.copyOf(words);
        children = List.copyOf(children);
        if (from < 0 || to - from != words.size()) {
            throw new IllegalArgumentException(words.size() + " words do not fit " + from + " to " + to + ".");
        }
    }

    /** The first child of this rule. */
    public Optional<ParseTree> child(String rule) {
        return children.stream().filter(child -> child.rule.equals(rule)).findFirst();
    }

    /** All children of this rule, in the order of the words. */
    public List<ParseTree> children(String rule) {
        return children.stream().filter(child -> child.rule.equals(rule)).toList();
    }

    /** The first tree of this rule below this one, parents before their children. */
    public Optional<ParseTree> descendant(String rule) {
        return descendants().skip(1).filter(tree -> tree.rule.equals(rule)).findFirst();
    }

    /** What a name that was said is recorded as: its tag, or where it has none the words themselves. */
    public String name() {
        return tag == null ? String.join(" ", words) : tag;
    }

    /** This tree and all below it, parents before their children, in the order of the words. */
    public Stream<ParseTree> descendants() {
        return Stream.concat(Stream.of(this), children.stream().flatMap(ParseTree::descendants));
    }
}
