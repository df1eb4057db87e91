package strawbed.report;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * A calf's first day.
 *
 * @param start the moment the day counts from
 * @param startIsBirth whether that is the birth; otherwise it is the first thing known of the calf
 * @param marks what was done and what is planned, in any order
 */
public record Timeline(Instant start, boolean startIsBirth, List<Mark> marks) {
    /** How long a timeline is. */
    public static final Duration LENGTH = Duration.ofHours(24);

    public Timeline {
        Objects.requireNonNull(start);
        marks = List.copyOf(marks);
    }
}
