package strawbed.journal.sqlite;

import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a text read to the last time. Facts of one statement follow each other with the same times, and reading a time
 * takes as long as all the rest of a fact. Owned by one thread.
 */
final class LastRead<T> {
    private @Nullable String text;
    private @Nullable T value;

    T of(String next, Function<String, T> read) {
        T known = value;
        if (known == null || !next.equals(text)) {
            known = read.apply(next);
            text = next;
            value = known;
        }
        return known;
    }
}
