package strawbed.journal;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something said, or entered by keys, that waits for an answer.
 *
 * @param from when its first word began
 * @param length how long it was
 * @param verdict how sure the hearing was
 * @param words what was heard
 * @param reading the best reading of it, as JSON or text; null when it could not be read
 * @param sound the file name of the sound in the record's sound folder; {@link #NO_SOUND} for what was entered by keys
 */
public record NewOpenStatement(
        Instant from,
        Duration length,
        String verdict,
        List<String> words,
        @Nullable String reading,
        String sound) {
    /** In the place of a file name: nobody spoke. */
    public static final String NO_SOUND = "";

    public NewOpenStatement {
        if (length.isNegative()) {
            throw new IllegalArgumentException("a statement cannot last " + length);
        }
        words = List.copyOf(words);
    }

    /** Whether it was spoken. */
    public boolean hasSound() {
        return !sound.equals(NO_SOUND);
    }
}
