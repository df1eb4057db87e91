package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import strawbed.report.Chart;

/** Pairs of figures as dots whose area is how many fall there. */
final class PairsPart {
    private static final int STEPS = 5;
    /** The places that dots may have, across and up. */
    private static final int PLACES = 36;

    private static final double LEAST = 0.8;
    private static final double MOST = 3.2;

    private final Sketch sketch;
    private final Chart.Pairs pairs;
    private final Scale across;
    private final Plot plot;

    private PairsPart(Type type, Chart.Pairs pairs, double width, double height) {
        this.sketch = new Sketch(type);
        this.pairs = pairs;
        double least =
                pairs.points().stream().mapToDouble(Chart.Point::across).min().orElse(0);
        double most =
                pairs.points().stream().mapToDouble(Chart.Point::across).max().orElse(0);
        this.across = Scale.around(least, most, STEPS);
        double highest = Math.max(
                pairs.points().stream().mapToDouble(Chart.Point::up).max().orElse(0),
                pairs.lines().stream()
                        .mapToDouble(line -> at(line, across.to()))
                        .max()
                        .orElse(0));
        this.plot = new Plot(sketch, pairs.up(), Scale.around(0, highest, STEPS), width, height);
    }

    static Block lay(Type type, Chart.Pairs pairs, double width, double height) {
        return new PairsPart(type, pairs, width, height).lay();
    }

    private Block lay() {
        Map<Place, Integer> counts = new TreeMap<>();
        pairs.points().forEach(point -> counts.merge(place(point), 1, Integer::sum));
        int most = counts.values().stream().mapToInt(Integer::intValue).max().orElse(1);
        counts.forEach((place, count) -> sketch.sign(
                Form.CIRCLE,
                plot.x(place.across() / (double) PLACES),
                plot.bottom() - (plot.bottom() - plot.top()) * place.up() / PLACES,
                Math.max(LEAST, MOST * Math.sqrt(count / (double) Math.max(most, 4))),
                true));
        List<Box> taken = new ArrayList<>();
        pairs.lines().forEach(slope -> taken.add(line(slope, taken)));
        List<Plot.Label> labels = across.numbers().stream()
                .map(number -> new Plot.Label(across.place(number.doubleValue()), Scale.shown(number)))
                .toList();
        return sketch.block(plot.across(labels, pairs.across()));
    }

    /** Draws a line with its words at its right end: above it, or below where others stand already; gives their place. */
    private Box line(Chart.Slope slope, List<Box> taken) {
        double to = plot.y(at(slope, across.to()));
        sketch.line(plot.x(0), plot.y(at(slope, across.from().doubleValue())), plot.x(1), to, false);
        double height = ChartMeasures.NOTE * Typeface.LINE;
        double above = to - height;
        boolean isTaken = taken.stream().anyMatch(box -> box.y() < to && above < box.bottom());
        return sketch.words(
                slope.label(),
                Weight.REGULAR,
                ChartMeasures.NOTE,
                plot.right(),
                isTaken ? to : above,
                Sketch.Side.RIGHT);
    }

    /** Where a dot may be. */
    private record Place(int across, int up) implements Comparable<Place> {
        @Override
        public int compareTo(Place other) {
            return across == other.across ? Integer.compare(up, other.up) : Integer.compare(across, other.across);
        }
    }

    private Place place(Chart.Point point) {
        double height = (plot.bottom() - plot.y(point.up())) / (plot.bottom() - plot.top());
        return new Place((int) Math.round(across.place(point.across()) * PLACES), (int) Math.round(height * PLACES));
    }

    private static double at(Chart.Slope slope, double across) {
        return slope.start() + slope.rise() * across;
    }
}
