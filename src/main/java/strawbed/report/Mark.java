package strawbed.report;

import java.time.Duration;
import java.util.Objects;

/**
 * One mark on the timeline.
 *
 * @param kind what was done or is planned
 * @param afterStart how long after the timeline's start; may be negative or longer than the timeline
 * @param clock the clock time, such as "04:55"; may be blank
 * @param label a short addition, such as "3 qt", printed where there is room; may be blank
 * @param done whether it was done; otherwise it is planned
 */
public record Mark(MarkKind kind, Duration afterStart, String clock, String label, boolean done) {
    public Mark {
        Objects.requireNonNull(kind);
        Objects.requireNonNull(afterStart);
        Objects.requireNonNull(clock);
        Objects.requireNonNull(label);
    }
}
