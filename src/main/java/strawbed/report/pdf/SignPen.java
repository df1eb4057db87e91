package strawbed.report.pdf;

import java.io.IOException;

/** Draws the signs, each inside its box. */
final class SignPen {
    static final double OUTLINE = 0.5;

    private final Pen pen;

    SignPen(Pen pen) {
        this.pen = pen;
    }

    void draw(Drawn.Sign sign) throws IOException {
        Box box = sign.filled() ? sign.box() : inset(sign.box());
        switch (sign.form()) {
            case CIRCLE -> pen.circle(box);
            case SQUARE, TICK_BOX -> pen.rectangle(box);
            case TRIANGLE -> upward(box);
            case WARNING -> warning(box);
            case ARROW_LEFT -> arrow(box.right(), box.x(), box);
            case ARROW_RIGHT -> arrow(box.x(), box.right(), box);
        }
        if (sign.filled()) {
            pen.fill();
        } else {
            pen.outline(OUTLINE, sign.form() == Form.TRIANGLE);
        }
    }

    private static Box inset(Box box) {
        return new Box(box.x() + OUTLINE / 2, box.y() + OUTLINE / 2, box.width() - OUTLINE, box.height() - OUTLINE);
    }

    private void upward(Box box) throws IOException {
        pen.triangle(box.x(), box.bottom(), box.right(), box.bottom(), box.x() + box.width() / 2, box.y());
    }

    /** A triangle with an exclamation mark left white. */
    private void warning(Box box) throws IOException {
        upward(box);
        double side = box.width();
        double stroke = side * 0.13;
        double left = box.x() + (side - stroke) / 2;
        pen.rectangle(new Box(left, box.y() + side * 0.36, stroke, side * 0.3));
        pen.rectangle(new Box(left, box.y() + side * 0.75, stroke, stroke));
    }

    private void arrow(double from, double to, Box box) throws IOException {
        pen.triangle(from, box.y(), from, box.bottom(), to, box.y() + box.height() / 2);
    }
}
