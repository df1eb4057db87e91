package strawbed.care;

import java.time.Instant;
import java.util.List;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;

/**
 * The stretch of time whose births are counted together. Whoever means days takes their beginnings in the farm's zone.
 *
 * @param from the first instant in it
 * @param until the first instant after it; not before {@code from}
 */
public record BirthPeriod(Instant from, Instant until) {
    public BirthPeriod {
        if (until.isBefore(from)) {
            throw new IllegalArgumentException("a period cannot end at " + until + ", before it begins at " + from);
        }
    }

    /**
     * The calves born in it, the dead ones too, in the order in which they were opened. A birth in a window counts by
     * its middle, one that nobody timed by the finding or the opening.
     */
    public List<CalfRecord> bornIn(Herd herd) {
        return herd.calves().stream()
                .filter(calf -> calf.bornAbout().filter(this::contains).isPresent())
                .toList();
    }

    /** Whether a time lies in it. */
    public boolean contains(Instant at) {
        return !at.isBefore(from) && at.isBefore(until);
    }
}
