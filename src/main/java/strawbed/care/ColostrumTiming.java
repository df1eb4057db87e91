package strawbed.care;

import java.time.Duration;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/**
 * The band in which the first colostrum came, counted from birth. Each band includes its end: with the usual protocol
 * 2 h 00 min 00 s is still {@link #TARGET}.
 *
 * <p>The first four ends are the farm's. Sources of the usual ones: 2 hours from the Dairy Calf and Heifer Association's
 * Gold Standards III; uptake that falls over 1, 6, 12 and 24 hours from Fischer 2018, Osaka 2014 and J Dairy Sci 65:1765
 * (1982). They share no one curve, so there are only bands; the words for the bands are common practice.
 */
public enum ColostrumTiming {
    BEST,
    TARGET,
    ACCEPTABLE,
    LATE,
    OVERDUE,
    LITTLE_UPTAKE,
    HARDLY_ANY;

    private static final Duration LITTLE_AFTER = Duration.ofHours(12);

    /** Hardly any antibody passes the gut later. */
    static final Duration UPTAKE_ENDS = Duration.ofHours(24);

    /** The band for a first feed at this age. */
    public static ColostrumTiming of(Duration age, Protocol protocol) {
        for (ColostrumTiming timing : values()) {
            if (timing == HARDLY_ANY || age.compareTo(timing.end(protocol)) <= 0) {
                return timing;
            }
        }
        throw new AssertionError(age);
    }

    private Duration end(Protocol protocol) {
        return switch (this) {
            case BEST -> protocol.time(Setting.BEST_WITHIN_HOURS);
            case TARGET -> protocol.time(Setting.TARGET_WITHIN_HOURS);
            case ACCEPTABLE -> protocol.time(Setting.ACCEPTABLE_WITHIN_HOURS);
            case LATE -> protocol.time(Setting.LATE_WITHIN_HOURS);
            case OVERDUE -> LITTLE_AFTER;
            case LITTLE_UPTAKE -> UPTAKE_ENDS;
            case HARDLY_ANY -> throw new IllegalStateException("the last band has no end");
        };
    }
}
