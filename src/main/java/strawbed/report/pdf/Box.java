package strawbed.report.pdf;

/**
 * A rectangle on the card.
 *
 * @param x its left edge in millimetres from the left
 * @param y its upper edge in millimetres from the top
 * @param width in millimetres
 * @param height in millimetres
 */
record Box(double x, double y, double width, double height) {
    double right() {
        return x + width;
    }

    double bottom() {
        return y + height;
    }

    Box moved(double dx, double dy) {
        return new Box(x + dx, y + dy, width, height);
    }
}
