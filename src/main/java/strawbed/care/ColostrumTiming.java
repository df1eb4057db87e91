package strawbed.care;

import java.time.Duration;

/**
 * The band in which the first colostrum came, counted from birth. Each band includes its end: 2 h 00 min 00 s is still
 * {@link #TARGET}.
 *
 * <p>Sources: 2 hours from the Dairy Calf and Heifer Association's Gold Standards III; uptake that falls over 1, 6, 12
 * and 24 hours from Fischer 2018, Osaka 2014 and J Dairy Sci 65:1765 (1982). They share no one curve, so there are only
 * bands; the words for the bands are common practice.
 */
public enum ColostrumTiming {
    BEST(1),
    TARGET(2),
    ACCEPTABLE(4),
    LATE(6),
    OVERDUE(12),
    LITTLE_UPTAKE(24),
    HARDLY_ANY(Long.MAX_VALUE / 3600);

    private final Duration end;

    ColostrumTiming(long hours) {
        this.end = Duration.ofHours(hours);
    }

    /** The last moment of this band, after birth. */
    Duration end() {
        return end;
    }

    /** The band for a first feed this long after birth; a feed told as before the birth counts as {@link #BEST}. */
    public static ColostrumTiming of(Duration sinceBirth) {
        for (ColostrumTiming timing : values()) {
            if (sinceBirth.compareTo(timing.end) <= 0) {
                return timing;
            }
        }
        return HARDLY_ANY;
    }
}
