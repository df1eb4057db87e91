package strawbed.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something said that waits for an answer.
 *
 * @param from when its first word began
 * @param length how long it was
 * @param verdict how sure the hearing was
 * @param words what was heard
 * @param reading the best reading of it, as JSON or text; null when it could not be read
 * @param sound the file name of the sound in the record's sound folder
 */
public record NewOpenStatement(
        Instant from,
        Duration length,
        String verdict,
        List<String> words,
        @Nullable String reading,
        String sound) {
    public NewOpenStatement {
        if (length.isNegative()) {
            throw new IllegalArgumentException("a statement cannot last " + length);
        }
        words = List.copyOf(words);
    }
}
