package strawbed.statement;

import org.jspecify.annotations.Nullable;
import strawbed.event.Term;
import strawbed.grammar.ParseTree;

/** Reads the literal tags of the grammar as values. */
final class Tags {
    private Tags() {}

    /**
     * The tag of a rule.
     *
     * @throws IllegalStateException if the grammar gives this rule none
     */
    static String tag(ParseTree tree) {
        if (tree.tag() == null) {
            throw new IllegalStateException("the rule $" + tree.rule() + " needs a tag in braces for \""
                    + String.join(" ", tree.words()) + "\"");
        }
        return tree.tag();
    }

    /**
     * The tag as one word of a list.
     *
     * @throws IllegalStateException if the list has no such word
     */
    static <T extends Enum<T> & Term> T term(Class<T> list, ParseTree tree) {
        String tag = tag(tree);
        return Term.find(list, tag)
                .orElseThrow(() -> new IllegalStateException(
                        "the tag {" + tag + "} of the rule $" + tree.rule() + " is none that the record knows"));
    }

    /** The term in a child rule, or null when it was not said. */
    static <T extends Enum<T> & Term> @Nullable T termIn(Class<T> list, ParseTree tree, String child) {
        return tree.descendant(child).map(found -> term(list, found)).orElse(null);
    }

    /** An animal's number, without zeros in front. */
    static String number(ParseTree tree) {
        return String.valueOf(SpokenNumber.whole(tree));
    }
}
