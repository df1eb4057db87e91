package strawbed.report;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/** A picture of figures, without any thought of paper. Labels are finished words. */
public sealed interface Chart {
    /** What a person who cannot see the picture is told. */
    String inWords();

    /**
     * Counts side by side.
     *
     * @param across what is counted by, with its unit
     * @param up what a bar's height is
     * @param edges the labels of the bars' edges, one more than bars; a blank is no label
     * @param counts at least one
     * @param lines where something begins or ends
     */
    record Bars(String across, String up, List<String> edges, List<Integer> counts, List<Line> lines, String inWords)
            implements Chart {
        public Bars {
            edges = List.copyOf(edges);
            counts = List.copyOf(counts);
            lines = List.copyOf(lines);
            if (counts.isEmpty() || edges.size() != counts.size() + 1) {
                throw new IllegalArgumentException(
                        counts.size() + " bars need one edge more than that, and have " + edges.size());
            }
        }
    }

    /**
     * A line from the lower to the upper edge.
     *
     * @param at in bars from the left edge of the first
     */
    record Line(double at, String label) {}

    /**
     * Pairs of figures; where many fall on one place they make a larger dot.
     *
     * @param across what lies to the right, with its unit
     * @param up what lies upwards, with its unit
     * @param points at least one, of figures that are not negative
     */
    record Pairs(String across, String up, List<Point> points, List<Slope> lines, String inWords) implements Chart {
        public Pairs {
            points = List.copyOf(points);
            lines = List.copyOf(lines);
            if (points.isEmpty()) {
                throw new IllegalArgumentException("a picture of pairs needs one");
            }
        }
    }

    /** One pair. */
    record Point(double across, double up) {}

    /** A straight line through {@code start} at 0, that rises by so much with each step to the right. */
    record Slope(double start, double rise, String label) {}

    /**
     * Shares over time, each with the limits of chance, all in percent.
     *
     * @param centre the share of all
     */
    record Weeks(List<Week> weeks, double centre, String centreLabel, String inWords) implements Chart {
        public Weeks {
            weeks = List.copyOf(weeks);
            if (weeks.isEmpty()) {
                throw new IllegalArgumentException("a picture of weeks needs one");
            }
        }
    }

    /**
     * One stretch of time.
     *
     * @param share empty where there was nothing to count
     * @param isOutside whether the share lies beyond the limits
     */
    record Week(String label, OptionalDouble share, double low, double high, boolean isOutside) {
        public Week {
            Objects.requireNonNull(label);
        }
    }
}
