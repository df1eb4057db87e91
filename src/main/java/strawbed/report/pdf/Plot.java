package strawbed.report.pdf;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The frame of a picture: its axes with numbers and titles, and the room between them. */
final class Plot {
    private static final double GAP = 1;

    private final Sketch sketch;
    private final double left;
    private final double top;
    private final double width;
    private final double all;
    private final double height;
    private final Scale up;

    /**
     * Draws the upward axis with its title above.
     *
     * @param width of all, the axis' numbers too
     * @param height of the room between the axes
     */
    Plot(Sketch sketch, String upTitle, Scale up, double width, double height) {
        this.sketch = sketch;
        this.up = up;
        this.all = width;
        this.left = GAP
                + ChartMeasures.TICK
                + up.numbers().stream()
                        .mapToDouble(number -> sketch.width(Scale.shown(number), Weight.REGULAR, ChartMeasures.NOTE))
                        .max()
                        .orElse(0);
        this.top = ChartMeasures.NOTE * Typeface.LINE + 2 * GAP;
        this.width = width - left - ChartMeasures.DOT;
        this.height = height;
        sketch.wordsWithin(upTitle, Weight.REGULAR, ChartMeasures.NOTE, 0, 0, width);
        for (BigDecimal number : up.numbers()) {
            double y = y(number.doubleValue());
            sketch.line(left - ChartMeasures.TICK, y, left, y, false);
            sketch.words(
                    Scale.shown(number),
                    Weight.REGULAR,
                    ChartMeasures.NOTE,
                    left - ChartMeasures.TICK - GAP,
                    y - ChartMeasures.NOTE * (Typeface.ABOVE - 0.5),
                    Sketch.Side.RIGHT);
        }
        sketch.line(left, top, left, top + height, false);
        sketch.line(left, top + height, left + this.width, top + height, false);
    }

    double x(double share) {
        return left + width * share;
    }

    double y(double figure) {
        return top + height * (1 - up.place(figure));
    }

    double top() {
        return top;
    }

    double bottom() {
        return top + height;
    }

    double width() {
        return width;
    }

    double right() {
        return left + width;
    }

    /** Numbers below the axis, those left out that there is no room for; then the title. Gives the lower edge of all. */
    double across(List<Label> labels, String title) {
        double y = bottom() + ChartMeasures.TICK + GAP;
        int every = every(labels);
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            sketch.line(x(label.share()), bottom(), x(label.share()), bottom() + ChartMeasures.TICK, false);
            if (i % every == 0) {
                sketch.words(label.text(), Weight.REGULAR, ChartMeasures.NOTE, middle(label), y, Sketch.Side.MIDDLE);
            }
        }
        double line = ChartMeasures.NOTE * Typeface.LINE;
        if (title.isBlank()) {
            return y + line;
        }
        sketch.words(title, Weight.REGULAR, ChartMeasures.NOTE, right(), y + line, Sketch.Side.RIGHT);
        return y + 2 * line;
    }

    /** Words at the upper end of upright lines, on as many levels as they need; gives how far up they go. */
    void tops(List<Label> labels) {
        double level = ChartMeasures.NOTE * Typeface.LINE;
        List<Double> ends = new ArrayList<>();
        for (Label label : labels) {
            double x = x(label.share()) + GAP;
            double end = x + sketch.width(label.text(), Weight.REGULAR, ChartMeasures.NOTE);
            int row = 0;
            while (row < ends.size() && ends.get(row) > x) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(end);
            } else {
                ends.set(row, end);
            }
            // A line begins at its words, so that it goes through no others.
            sketch.line(x(label.share()), top + row * level, x(label.share()), bottom(), false);
            sketch.words(label.text(), Weight.REGULAR, ChartMeasures.NOTE, x, top + row * level, Sketch.Side.LEFT);
        }
    }

    /** Words in their place along the axis, from 0 to 1. */
    record Label(double share, String text) {}

    private int every(List<Label> labels) {
        for (int every = 1; every < labels.size(); every++) {
            if (fits(labels, every)) {
                return every;
            }
        }
        return Math.max(1, labels.size());
    }

    private boolean fits(List<Label> labels, int every) {
        double end = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < labels.size(); i += every) {
            double half = halfOf(labels.get(i));
            double x = middle(labels.get(i));
            if (x - half < end) {
                return false;
            }
            end = x + half + GAP;
        }
        return true;
    }

    /** Where the middle of a label's words is: below its place, or as near to it as they stay on the picture. */
    private double middle(Label label) {
        return Math.min(x(label.share()), all - halfOf(label));
    }

    private double halfOf(Label label) {
        return sketch.width(label.text(), Weight.REGULAR, ChartMeasures.NOTE) / 2;
    }
}
