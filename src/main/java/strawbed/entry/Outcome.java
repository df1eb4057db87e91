package strawbed.entry;

import java.util.function.Function;

/**
 * What came of a press.
 *
 * @param <D> what is being made
 */
public sealed interface Outcome<D> {
    /** It counts. */
    record Taken<D>(D next) implements Outcome<D> {}

    /** It does not count, and nothing has changed. */
    record Refused<D>(Refusal why) implements Outcome<D> {}

    /** The same of something that this is a part of. */
    default <E> Outcome<E> map(Function<D, E> whole) {
        if (this instanceof Taken<D> taken) {
            return new Taken<>(whole.apply(taken.next()));
        }
        return new Refused<>(((Refused<D>) this).why());
    }
}
