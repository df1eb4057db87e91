package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.Chart;

/** Shares over time with their centre line and the limits of chance; those outside are squares. */
final class WeeksPart {
    private static final int STEPS = 4;
    private static final double ALL = 100;
    /** Weeks that are all alike are drawn in this much room above and below, in percent. */
    private static final double LEAST_SPAN = 5;

    private final Sketch sketch;
    private final Chart.Weeks chart;
    private final double step;
    private final Plot plot;

    private WeeksPart(Type type, Chart.Weeks chart, double width, double height) {
        this.sketch = new Sketch(type);
        this.chart = chart;
        this.step = 1.0 / chart.weeks().size();
        double least = chart.centre();
        double most = chart.centre();
        for (Chart.Week week : known()) {
            double share = week.share().orElseThrow();
            least = Math.min(least, Math.min(share, week.low()));
            most = Math.max(most, Math.max(share, week.high()));
        }
        if (most - least < LEAST_SPAN) {
            least -= LEAST_SPAN;
            most += LEAST_SPAN;
        }
        Scale scale = Scale.around(Math.max(0, least), Math.min(ALL, most), STEPS);
        this.plot = new Plot(sketch, "%", scale, width, height);
    }

    static Block lay(Type type, Chart.Weeks chart, double width, double height) {
        return new WeeksPart(type, chart, width, height).lay();
    }

    private Block lay() {
        double centre = plot.y(chart.centre());
        sketch.line(plot.x(0), centre, plot.right(), centre, false);
        List<Plot.Label> labels = new ArrayList<>();
        double beforeX = Double.NaN;
        double beforeY = Double.NaN;
        for (int i = 0; i < chart.weeks().size(); i++) {
            Chart.Week week = chart.weeks().get(i);
            double x = plot.x((i + 0.5) * step);
            labels.add(new Plot.Label((i + 0.5) * step, week.label()));
            if (week.share().isEmpty()) {
                continue;
            }
            double y = plot.y(week.share().getAsDouble());
            limit(i, week.low());
            limit(i, week.high());
            if (!Double.isNaN(beforeX)) {
                sketch.line(beforeX, beforeY, x, y, false);
            }
            if (week.isOutside()) {
                sketch.sign(Form.SQUARE, x, y, ChartMeasures.DOT, true);
            } else {
                sketch.sign(Form.CIRCLE, x, y, ChartMeasures.SMALL_DOT, true);
            }
            beforeX = x;
            beforeY = y;
        }
        return sketch.block(plot.across(labels, ""));
    }

    private void limit(int place, double percent) {
        double y = plot.y(percent);
        sketch.line(plot.x(place * step), y, plot.x((place + 1) * step), y, true);
    }

    private List<Chart.Week> known() {
        return chart.weeks().stream().filter(week -> week.share().isPresent()).toList();
    }
}
