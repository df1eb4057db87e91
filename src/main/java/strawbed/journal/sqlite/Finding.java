package strawbed.journal.sqlite;

import org.jspecify.annotations.Nullable;

/**
 * Something about a record that is not as it should be.
 *
 * @param sequence the place of the fact it is about; null when it is about no one fact
 * @param what what was found, as a sentence
 * @param remedy what to do, as a sentence
 */
public record Finding(@Nullable Long sequence, String what, String remedy) {
    /** Both sentences. */
    public String text() {
        return what + " " + remedy;
    }
}
