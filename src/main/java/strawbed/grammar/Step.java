package strawbed.grammar;

import java.util.List;

/** One state of a {@link Network}: what may happen there, and the states after it. */
sealed interface Step {

    /** A word is said. */
    record Word(int word, int next) implements Step {}

    /** Another rule is said. */
    record Call(int rule, int next) implements Step {}

    /** A literal is passed. */
    record Mark(String literal, int next) implements Step {}

    /** One of several ways is taken; the first is preferred. */
    record Fork(List<Branch> branches) implements Step {}

    /** The rule has been said. */
    record Accept() implements Step {}

    /** A way and how likely it is beside the others of its fork. */
    record Branch(double weight, int next) {}
}
