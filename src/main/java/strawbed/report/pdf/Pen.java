package strawbed.report.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** Draws black paths given in millimetres from the sheet's upper left corner. */
final class Pen {
    private static final double POINTS_PER_INCH = 72;
    private static final double MILLIMETRES_PER_INCH = 25.4;
    /** The handles of four Bézier curves that look like a circle of radius one. */
    private static final double CIRCLE_HANDLE = 4 * (Math.sqrt(2) - 1) / 3;

    /** The dashes of a broken line and the white between them, in millimetres. */
    static final double DASH = 1;

    private static final int ROUND = 1;
    private static final int POINTED = 0;

    private final PDPageContentStream page;
    private final double sheetHeight;

    Pen(PDPageContentStream page, double sheetHeight) {
        this.page = page;
        this.sheetHeight = sheetHeight;
    }

    static float points(double millimetres) {
        return (float) (millimetres * POINTS_PER_INCH / MILLIMETRES_PER_INCH);
    }

    float x(double x) {
        return points(x);
    }

    float y(double y) {
        return points(sheetHeight - y);
    }

    void rectangle(Box box) throws IOException {
        page.addRect(x(box.x()), y(box.bottom()), points(box.width()), points(box.height()));
    }

    void triangle(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        page.moveTo(x(x1), y(y1));
        page.lineTo(x(x2), y(y2));
        page.lineTo(x(x3), y(y3));
        page.closePath();
    }

    void circle(Box box) throws IOException {
        double r = box.width() / 2;
        double h = r * CIRCLE_HANDLE;
        double cx = box.x() + r;
        double cy = box.y() + r;
        page.moveTo(x(cx + r), y(cy));
        curve(cx + r, cy + h, cx + h, cy + r, cx, cy + r);
        curve(cx - h, cy + r, cx - r, cy + h, cx - r, cy);
        curve(cx - r, cy - h, cx - h, cy - r, cx, cy - r);
        curve(cx + h, cy - r, cx + r, cy - h, cx + r, cy);
        page.closePath();
    }

    /** A line of the thinnest kind. */
    void line(Drawn.Line line) throws IOException {
        Box box = line.box();
        double left = line.isFalling() ? box.y() : box.bottom();
        page.saveGraphicsState();
        page.setLineWidth(points(Measures.THIN_LINE));
        if (line.isBroken()) {
            page.setLineDashPattern(new float[] {points(DASH), points(DASH)}, 0);
        }
        page.moveTo(x(box.x()), y(left));
        page.lineTo(x(box.right()), y(box.y() + box.bottom() - left));
        page.stroke();
        page.restoreGraphicsState();
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        page.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
    }

    void fill() throws IOException {
        page.fillEvenOdd();
    }

    void outline(double line, boolean round) throws IOException {
        page.setLineWidth(points(line));
        page.setLineJoinStyle(round ? ROUND : POINTED);
        page.stroke();
    }
}
