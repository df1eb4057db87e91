package strawbed.journal.sqlite;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * A backup as the data folder remembers it.
 *
 * @param madeAt when
 * @param file where it was put, as its whole path
 * @param facts how many it holds
 * @param last the place of its newest fact with a link; 0 when it has none
 * @param head that link's hash; null when it has none
 */
public record Backup(
        Instant madeAt,
        String file,
        long facts,
        long last,
        @Nullable String head) {
    /**
     * Whether the record no longer holds what the backup holds: a chain that was cut at its end, or made anew, is whole
     * in itself and shows only here.
     */
    Optional<Finding> missingFrom(Handle handle) {
        if (head == null) {
            return Optional.empty();
        }
        Optional<String> there = handle.createQuery("SELECT hash FROM event_chain WHERE sequence = ?")
                .bind(0, last)
                .mapTo(String.class)
                .findOne();
        if (there.isPresent() && there.get().equals(head)) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                last,
                "The backup " + file + ", made at " + madeAt + ", ends with number " + last + " of the record, which "
                        + (there.isPresent() ? "is another one here." : "is gone here."),
                RecordVerification.COMPARE));
    }
}
