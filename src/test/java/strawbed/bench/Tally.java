package strawbed.bench;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How many sentences came out how.
 *
 * @param counts one for each outcome that occurred
 */
public record Tally(Map<Outcome, Integer> counts) {
    public Tally {
        counts = Map.copyOf(counts);
    }

    /** Counts them. */
    public static Tally of(List<Outcome> outcomes) {
        Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
        outcomes.forEach(outcome -> counts.merge(outcome, 1, Integer::sum));
        return new Tally(counts);
    }

    /** All of them. */
    public int total() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Those of one kind. */
    public int count(Outcome outcome) {
        return counts.getOrDefault(outcome, 0);
    }

    /** The part of one kind, 0 to 1. */
    public double share(Outcome outcome) {
        return (double) count(outcome) / total();
    }

    /** The part with its interval, such as "96.2% (92.6-98.1)". */
    String written(Outcome outcome) {
        return written(count(outcome), total());
    }

    /**
     * A part of a whole in percent, with its 95% interval after E. B. Wilson, "Probable inference, the law of
     * succession, and statistical inference", Journal of the American Statistical Association 22 (1927).
     */
    static String written(int count, int total) {
        if (total == 0) {
            return "-";
        }
        double z = 1.96;
        double p = (double) count / total;
        double middle = p + z * z / (2 * total);
        double half = z * Math.sqrt(p * (1 - p) / total + z * z / (4.0 * total * total));
        double scale = 1 + z * z / total;
        return String.format(
                Locale.ROOT,
                "%.1f%% (%.1f-%.1f)",
                100 * p,
                100 * Math.max(0, (middle - half) / scale),
                100 * Math.min(1, (middle + half) / scale));
    }
}
