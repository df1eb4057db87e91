package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Numbers of the record that follow each other.
 *
 * @param first the lowest, from 1
 * @param last the highest; the same where it is one
 */
public record Places(long first, long last) {
    /** A page of an index names at most some hundred rows, and a whole index is lost seldom. */
    private static final long FAR = 10_000;

    public Places {
        if (last < first) {
            throw new IllegalArgumentException("places cannot run from " + first + " to " + last);
        }
    }

    public long count() {
        return last - first + 1;
    }

    public boolean holds(long number) {
        return number >= first && number <= last;
    }

    /** "17" or "23 to 25". */
    @Override
    public String toString() {
        return first == last ? Long.toString(first) : first + " to " + last;
    }

    /** As few runs as these numbers make. */
    static List<Places> of(Collection<Long> numbers) {
        List<Places> runs = new ArrayList<>();
        long first = 0;
        long last = -1;
        for (long number : new TreeSet<>(numbers)) {
            if (last >= first && number == last + 1) {
                last = number;
            } else {
                if (last >= first) {
                    runs.add(new Places(first, last));
                }
                first = number;
                last = number;
            }
        }
        if (last >= first) {
            runs.add(new Places(first, last));
        }
        return List.copyOf(runs);
    }

    /** The numbers from 1 to the last that are not among these. */
    static List<Places> gaps(Collection<Long> there, long last) {
        List<Places> gaps = new ArrayList<>();
        long next = 1;
        for (long number : new TreeSet<>(there).tailSet(1L)) {
            if (number > last) {
                break;
            }
            if (number > next) {
                gaps.add(new Places(next, number - 1));
            }
            next = number + 1;
        }
        if (next <= last) {
            gaps.add(new Places(next, last));
        }
        return List.copyOf(gaps);
    }

    /** The highest of the numbers that can be reached from the last without a leap: one far behind is damaged itself. */
    static long reach(long last, Collection<Long> numbers) {
        long reached = last;
        for (long number : new TreeSet<>(numbers)) {
            if (number > reached && number - reached <= FAR) {
                reached = number;
            }
        }
        return reached;
    }

    static long count(List<Places> runs) {
        return runs.stream().mapToLong(Places::count).sum();
    }

    /** "17, 23 to 25". */
    public static String text(List<Places> runs) {
        return runs.stream().map(Places::toString).collect(Collectors.joining(", "));
    }
}
