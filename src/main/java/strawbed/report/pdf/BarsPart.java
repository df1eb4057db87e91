package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.Chart;

/** Counts side by side as black bars; lines run through the white between them. */
final class BarsPart {
    private static final double WHITE = 0.5;
    private static final int STEPS = 5;
    private static final double HEADROOM = 1.25;

    private BarsPart() {}

    static Block lay(Type type, Chart.Bars bars, double width, double height) {
        Sketch sketch = new Sketch(type);
        int most = bars.counts().stream().mapToInt(Integer::intValue).max().orElse(0);
        double room = bars.lines().isEmpty() ? most : most * HEADROOM;
        // Calves are whole.
        Plot plot = new Plot(sketch, bars.up(), Scale.around(0, Math.max(room, STEPS), STEPS), width, height);
        double step = 1.0 / bars.counts().size();
        for (int i = 0; i < bars.counts().size(); i++) {
            int count = bars.counts().get(i);
            if (count > 0) {
                double left = plot.x(i * step) + WHITE;
                double top = plot.y(count);
                sketch.bar(left, top, plot.x((i + 1) * step) - WHITE - left, plot.bottom() - top);
            }
        }
        plot.tops(bars.lines().stream()
                .map(line -> new Plot.Label(line.at() * step, line.label()))
                .toList());
        List<Plot.Label> edges = new ArrayList<>();
        for (int i = 0; i < bars.edges().size(); i++) {
            edges.add(new Plot.Label(i * step, bars.edges().get(i)));
        }
        return sketch.block(plot.across(edges, bars.across()));
    }
}
