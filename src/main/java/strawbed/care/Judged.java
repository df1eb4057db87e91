package strawbed.care;

import java.util.Optional;
import java.util.function.Function;

/** A verdict, or why there is none. What is not known is never judged as if it were. */
public sealed interface Judged<T> {
    /** What was judged. */
    record Verdict<T>(T verdict) implements Judged<T> {}

    /** Why nothing was judged. */
    record NotJudged<T>(WhyNot reason) implements Judged<T> {}

    static <T> Judged<T> of(T value) {
        return new Verdict<>(value);
    }

    static <T> Judged<T> not(WhyNot why) {
        return new NotJudged<>(why);
    }

    /** The verdict, where there is one. */
    default Optional<T> value() {
        return this instanceof Verdict<T> verdict ? Optional.of(verdict.verdict()) : Optional.empty();
    }

    /** Why there is no verdict. */
    default Optional<WhyNot> whyNot() {
        return this instanceof NotJudged<T> not ? Optional.of(not.reason()) : Optional.empty();
    }

    /** The next step of a judgement; why there is none is carried along. */
    default <U> Judged<U> then(Function<T, Judged<U>> next) {
        return this instanceof Verdict<T> verdict ? next.apply(verdict.verdict()) : not(((NotJudged<T>) this).reason());
    }
}
