package strawbed.report.pdf;

/**
 * The card's sizes in millimetres; text is measured by the height of its capitals.
 *
 * <p>ISO 9241-3 as quoted in ergonomics guides: letters of 20 arc-minutes are comfortable, 16 the least for reading. At
 * 0.7 m that is 4.07 mm and 3.26 mm. The other sizes are our own choice, judged on printed pictures.
 */
final class Measures {
    static final double MARGIN = 5;
    static final double RULE = 0.4;
    static final double THIN_LINE = 0.3;

    static final double NUMBER = 35;
    static final double NUMBER_LEAST = 8;
    static final double SEX = 5;
    static final double READ = 3.3;
    static final double NOTE = 2.8;
    static final double NOTE_LEAST = 2.6;

    static final double TICK_BOX = 6.2;
    static final double MARK = 3.4;

    private Measures() {}
}
