package strawbed.report.pdf;

import strawbed.report.Range;

/** A share between 0 and 100 percent: its dot on the line where it may well lie, and what it is held against. */
final class RangePart {
    /** How high it is, in millimetres. */
    static final double HEIGHT = 7;

    /** From the line to the middle of a ring, and to that of a triangle, so that no sign hides another. */
    private static final double ABOVE = 2.1;

    private static final double BELOW = 1.9;

    private static final int QUARTERS = 4;
    private static final double ALL = 100;

    private final Type type;
    private final double width;

    /** @param width of the line from 0 to 100 percent; half a sign lies beside it on either hand */
    RangePart(Type type, double width) {
        this.type = type;
        this.width = width;
    }

    Block lay(Range range) {
        Sketch sketch = new Sketch(type);
        double middle = HEIGHT / 2;
        sketch.line(0, middle, width, middle, false);
        for (int quarter = 0; quarter <= QUARTERS; quarter++) {
            double x = width * quarter / QUARTERS;
            sketch.line(x, middle - ChartMeasures.TICK, x, middle + ChartMeasures.TICK, false);
        }
        double low = at(range.low());
        sketch.bar(low, middle - ChartMeasures.WHISKER, at(range.high()) - low, 2 * ChartMeasures.WHISKER);
        range.before()
                .ifPresent(share -> sketch.sign(Form.CIRCLE, at(share), middle - ABOVE, ChartMeasures.RING, false));
        range.compared()
                .ifPresent(
                        share -> sketch.sign(Form.TRIANGLE, at(share), middle + BELOW, ChartMeasures.TRIANGLE, true));
        sketch.sign(Form.CIRCLE, at(range.share()), middle, ChartMeasures.DOT, true);
        return sketch.block(HEIGHT);
    }

    /** The numbers above the lines. */
    Block numbers() {
        Sketch sketch = new Sketch(type);
        for (int quarter = 0; quarter <= QUARTERS; quarter++) {
            sketch.words(
                    String.valueOf(100 * quarter / QUARTERS),
                    Weight.REGULAR,
                    ChartMeasures.NOTE,
                    width * quarter / QUARTERS,
                    0,
                    Sketch.Side.MIDDLE);
        }
        return sketch.block(ChartMeasures.NOTE * Typeface.LINE);
    }

    private double at(double percent) {
        return width * percent / ALL;
    }
}
