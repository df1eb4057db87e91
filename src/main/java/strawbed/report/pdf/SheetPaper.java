package strawbed.report.pdf;

/** The sheets of an office printer, standing on their short side. */
public enum SheetPaper {
    /** US letter, 8.5 by 11 inch. */
    LETTER(215.9, 279.4),
    /** A4 of ISO 216. */
    A4(210, 297);

    private final double width;
    private final double height;

    SheetPaper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** The short side in millimetres. */
    public double width() {
        return width;
    }

    /** The long side in millimetres. */
    public double height() {
        return height;
    }
}
