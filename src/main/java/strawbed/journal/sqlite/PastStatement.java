package strawbed.journal.sqlite;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import strawbed.journal.OpenStatement;

/**
 * A statement of another record.
 *
 * @param end null if it is still open
 */
record PastStatement(OpenStatement kept, @Nullable End end) {
    /**
     * How a statement came to its end.
     *
     * @param how in a word or two
     */
    record End(Instant at, String how) {}
}
