package strawbed.report.pdf;

/** The sheets a card is printed on, lying on their long side. */
public enum CardPaper {
    /** The 4 by 6 inch label of thermal printers. */
    FOUR_BY_SIX_INCH(152.4, 101.6),
    /** A6 of ISO 216. */
    A6(148, 105);

    private final double width;
    private final double height;

    CardPaper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** The long side in millimetres. */
    public double width() {
        return width;
    }

    /** The short side in millimetres. */
    public double height() {
        return height;
    }
}
