package strawbed.station;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.event.CalfId;

/**
 * Which late task is announced, and when again. A task that is late when the station starts is announced as well. Owned
 * by one thread.
 */
public final class Announcer {
    private final Duration again;
    private final Duration putOff;
    private final Map<Task, Instant> quietUntil = new HashMap<>();
    private Optional<Task> last = Optional.empty();

    /** A task, whatever its times are now. */
    private record Task(CalfId calf, DueKind kind) {
        static Task of(DueItem item) {
            return new Task(item.calf(), item.kind());
        }
    }

    /**
     * @param again after what time a task that is still late is announced again
     * @param putOff how long one that was put off stays quiet
     */
    public Announcer(Duration again, Duration putOff) {
        this.again = again;
        this.putOff = putOff;
    }

    /** The gravest late task that is not quiet now; it is quiet afterwards for a while. One at a time. */
    public Optional<DueItem> next(List<DueItem> open, Instant now) {
        List<DueItem> late =
                open.stream().filter(item -> item.state() == DueState.LATE).toList();
        // What is late no more is forgotten, so that it is announced at once when it is late anew.
        quietUntil.keySet().retainAll(late.stream().map(Task::of).toList());
        Optional<DueItem> next = late.stream()
                .filter(item ->
                        !quietUntil.getOrDefault(Task.of(item), Instant.MIN).isAfter(now))
                .findFirst();
        next.ifPresent(item -> {
            quietUntil.put(Task.of(item), now.plus(again));
            last = Optional.of(Task.of(item));
        });
        return next;
    }

    /** Puts off what was announced last, if that is still late; tells whether there was something to put off. */
    public boolean putOff(Instant now) {
        boolean isLate = last.isPresent() && quietUntil.containsKey(last.get());
        if (isLate) {
            quietUntil.put(last.get(), now.plus(putOff));
            last = Optional.empty();
        }
        return isLate;
    }

    /** Whether there is something to put off. */
    public boolean hasAnnounced() {
        return last.isPresent() && quietUntil.containsKey(last.get());
    }
}
