package strawbed.report.pdf;

import strawbed.report.Chart;

/** Draws a chart of any kind. */
final class ChartPart {
    private static final double HEIGHT = 46;
    private static final double WEEKS_HEIGHT = 30;

    private ChartPart() {}

    /** @param width of all of it, in millimetres */
    static Block lay(Type type, Chart chart, double width) {
        if (chart instanceof Chart.Bars bars) {
            return BarsPart.lay(type, bars, width, HEIGHT);
        }
        if (chart instanceof Chart.Pairs pairs) {
            return PairsPart.lay(type, pairs, width, HEIGHT);
        }
        if (chart instanceof Chart.Weeks weeks) {
            return WeeksPart.lay(type, weeks, width, WEEKS_HEIGHT);
        }
        throw new AssertionError(chart);
    }
}
