package strawbed.care;

import java.time.Duration;
import java.time.Instant;

/**
 * How much of a record is read for all that is told of the herd now: the calves of which something was recorded within
 * {@link #LENGTH}.
 *
 * <p>The due list shows calves up to 7 days old, the most that the settings allow. The figures of the herd are of 30
 * days, and a twin named by its number is at most 14 days further ({@link strawbed.calf.Herd#NAMED_TWINS_WITHIN}). One day
 * more is for births that were told late. Nothing is recorded before it happens, so that a calf born
 * within this time has a fact recorded within it; only a computer whose clock was behind by weeks breaks that.
 * Colostrum in stock can be older than this: the calves fed from it are read besides.
 */
public final class CareWindow {
    public static final Duration LENGTH = Duration.ofDays(45);

    /** The births whose figures are told. */
    private static final Duration FIGURES = Duration.ofDays(30);

    /** The calves that are called most. */
    private static final Duration FRESH = Duration.ofDays(1);

    private CareWindow() {}

    /** When it begins. */
    public static Instant from(Instant now) {
        return now.minus(LENGTH);
    }

    /** When it begins for the first seconds on a big record, while the rest is read. */
    public static Instant freshFrom(Instant now) {
        return now.minus(FRESH);
    }

    /** The births whose figures are told at this time. */
    public static BirthPeriod figures(Instant now) {
        return new BirthPeriod(now.minus(FIGURES), now.plusNanos(1));
    }
}
