package strawbed.care;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;

/**
 * One thing that should be done or seen for a calf.
 *
 * @param from when its time begins; null when it has no beginning
 * @param dueAt when it should be done by
 * @param hardLimit the last acceptable time; null when late is always better than never
 * @param state how it stands at the time that was asked for
 * @param rule the rule with its source, and what the age is counted from where the birth was not seen
 */
public record DueItem(
        CalfId calf,
        DueKind kind,
        @Nullable Instant from,
        Instant dueAt,
        @Nullable Instant hardLimit,
        DueState state,
        String rule) {}
