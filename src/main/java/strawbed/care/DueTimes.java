package strawbed.care;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * When something should be done.
 *
 * @param from when its time begins
 * @param dueAt when it should be done by
 * @param lateAfter from when on it is late; mostly {@code dueAt}
 * @param hardLimit the last acceptable time; null when late is always better than never
 */
public record DueTimes(
        Instant from,
        Instant dueAt,
        Instant lateAfter,
        @Nullable Instant hardLimit) {
    /** Late as soon as it is no longer due. */
    static DueTimes of(Instant from, Instant dueAt, @Nullable Instant hardLimit) {
        return new DueTimes(from, dueAt, dueAt, hardLimit);
    }

    /** How an item stands at a time when nothing has settled it: late to the hard limit, then missed. */
    DueState stateAt(Instant now) {
        if (now.isBefore(from)) {
            return DueState.AHEAD;
        }
        if (hardLimit != null && now.isAfter(hardLimit)) {
            return DueState.MISSED;
        }
        return now.isAfter(lateAfter) ? DueState.LATE : DueState.DUE;
    }
}
