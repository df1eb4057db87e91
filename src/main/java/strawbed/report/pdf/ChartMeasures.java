package strawbed.report.pdf;

/**
 * The herd report's sizes in millimetres, beside those of {@link SheetMeasures}. It is read at a desk: capitals of 2.2 mm
 * are 16 arc-minutes at 0.47 m (ISO 9241-3 as quoted in ergonomics guides). Our own choice, judged on printed pictures.
 */
final class ChartMeasures {
    static final double CHAPTER = 4.1;
    static final double LABEL = 2.8;
    static final double NOTE = 2.2;
    static final double COLUMN_GAP = 9;
    static final double DOT = 2.4;
    static final double SMALL_DOT = 1.7;
    static final double TRIANGLE = 2.2;
    static final double RING = 2.2;
    static final double TICK = 1.1;
    static final double WHISKER = 0.7;

    private ChartMeasures() {}
}
