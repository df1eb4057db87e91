package strawbed.report.pdf;

/** The sheets a card is printed on, each with a layout of its own. */
public enum CardPaper {
    /** The 4 by 6 inch label of thermal printers, lying on its long side. */
    FOUR_BY_SIX_INCH(152.4, 101.6),
    /** A6 of ISO 216, lying. */
    A6(148, 105),
    /** The label, standing on its short side. */
    FOUR_BY_SIX_INCH_UPRIGHT(101.6, 152.4),
    /** A6, standing. */
    A6_UPRIGHT(105, 148);

    private final double width;
    private final double height;

    CardPaper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** In millimetres, as it is read. */
    public double width() {
        return width;
    }

    /** In millimetres, as it is read. */
    public double height() {
        return height;
    }

    boolean isUpright() {
        return height > width;
    }
}
