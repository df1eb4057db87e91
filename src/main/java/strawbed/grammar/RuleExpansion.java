package strawbed.grammar;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * What a rule, or a part of one, lets a speaker say (SRGS 1.0, section 2).
 *
 * <p>Immutable, and safe for any thread.
 */
public sealed interface RuleExpansion {

    /** The expansions directly inside this one, in the order they are written. */
    default List<RuleExpansion> parts() {
        return List.of();
    }

    /**
     * One word.
     *
     * @param text the word in lower case, without blanks
     */
    record Token(String text) implements RuleExpansion {

        /** Refuses anything but one word in lower case. */
        public Token {
            if (text.isEmpty()
                    || text.chars().anyMatch(Character::isWhitespace)
                    || !text.equals(text.toLowerCase(Locale.ROOT))) {
                throw new IllegalArgumentException("A token is one word in lower case, not \"" + text + "\".");
            }
        }
    }

    /**
     * Whatever another rule lets a speaker say.
     *
     * @param rule the rule that is meant
     */
    record RuleReference(RuleId rule) implements RuleExpansion {

        /** Refuses a missing rule. */
        public RuleReference {
            Objects.requireNonNull(rule, "rule");
        }
    }

    /**
     * All parts, one after the other.
     *
     * @param parts the parts in order
     */
    record Sequence(List<RuleExpansion> parts) implements RuleExpansion {

        /** Keeps its own copy of the list. */
        public Sequence {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Exactly one of several.
     *
     * @param alternatives at least one, in the order of preference
     */
    record Alternatives(List<Alternative> alternatives) implements RuleExpansion {

        /** Keeps its own copy of the list and refuses an empty one. */
        public Alternatives {
            alternatives = List.copyOf(alternatives);
            if (alternatives.isEmpty()) {
                throw new IllegalArgumentException("Alternatives need at least one to choose.");
            }
        }

        @Override
        public List<RuleExpansion> parts() {
            return alternatives.stream().map(Alternative::expansion).toList();
        }
    }

    /**
     * One of several, and how likely it is beside the others.
     *
     * @param weight above 0; 1 when none is written
     * @param expansion what may be said
     */
    record Alternative(double weight, RuleExpansion expansion) {

        /** Refuses a weight that weighs nothing. */
        public Alternative {
            Objects.requireNonNull(expansion, "expansion");
            if (!(weight > 0) || Double.isInfinite(weight)) {
                throw new IllegalArgumentException("A weight is a number above 0, not " + weight + ".");
            }
        }
    }

    /**
     * The same thing several times; an optional thing is repeated 0 to 1 times.
     *
     * @param expansion what is repeated
     * @param min the fewest times
     * @param max the most times, or {@link #UNBOUNDED}
     * @param probability of each further time beyond the fewest, 0 to 1
     */
    record Repeat(RuleExpansion expansion, int min, int max, double probability) implements RuleExpansion {

        /** The {@link #max} of a repeat without end. */
        public static final int UNBOUNDED = Integer.MAX_VALUE;

        /** Refuses counts and probabilities that contradict themselves. */
        public Repeat {
            Objects.requireNonNull(expansion, "expansion");
            if (min < 0 || max < min || min == UNBOUNDED) {
                throw new IllegalArgumentException("Nothing can be repeated " + min + " to " + max + " times.");
            }
            if (!(probability >= 0 && probability <= 1)) {
                throw new IllegalArgumentException("A probability is 0 to 1, not " + probability + ".");
            }
        }

        @Override
        public List<RuleExpansion> parts() {
            return List.of(expansion);
        }
    }

    /**
     * A semantic literal: says what was meant, takes no words (SISR 1.0, tag format {@code semantics/1.0-literals}).
     *
     * @param literal the text between the braces, without blanks around it
     */
    record Tag(String literal) implements RuleExpansion {

        /** Refuses a missing literal. */
        public Tag {
            Objects.requireNonNull(literal, "literal");
        }
    }

    /** The rules every grammar has (SRGS 1.0, section 2.2.3). */
    enum Special implements RuleExpansion {
        /** Matches without a word. */
        NULL,
        /** Never matches. */
        VOID,
        /** Matches any words, also none. */
        GARBAGE
    }
}
