package strawbed.care;

import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;

/**
 * One thing that should be done or seen for a calf.
 *
 * @param state how it stands at the time that was asked for
 * @param settled what settled it
 * @param ground what it rests on
 */
public record DueItem(CalfId calf, DueKind kind, DueTimes times, DueState state, Settled settled, Ground ground) {
    /** When its time begins. */
    public Instant from() {
        return times.from();
    }

    /** When it should be done by. */
    public Instant dueAt() {
        return times.dueAt();
    }

    /** The last acceptable time; null when late is always better than never. */
    public @Nullable Instant hardLimit() {
        return times.hardLimit();
    }

    /** When it was done. */
    public Optional<Instant> doneAt() {
        return settled instanceof Settled.Done done ? Optional.of(done.by().at()) : Optional.empty();
    }

    /** Whether it was done before it was late; empty when it was not done. */
    public Optional<Boolean> wasInTime() {
        return doneAt().map(at -> !at.isAfter(times.lateAfter()));
    }
}
