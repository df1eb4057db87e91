package strawbed.window;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Painting with smooth edges. */
final class Brush {
    private Brush() {}

    /** A graphics of its own, to be disposed of. */
    static Graphics2D smooth(Graphics graphics) {
        Graphics2D smooth = (Graphics2D) graphics.create();
        smooth.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        smooth.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        smooth.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        smooth.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return smooth;
    }

    /** Writes lines from the left edge, the top of the first capitals at y. */
    static void write(Graphics2D graphics, Fitted text, double x, double y) {
        graphics.setFont(text.font());
        double base = y + text.capitals();
        for (String line : text.lines()) {
            graphics.drawString(line, (float) x, (float) base);
            base += text.capitals() * Typeface.LINE;
        }
    }

    /** Writes lines around a middle. */
    static void writeCentred(Graphics2D graphics, Fitted text, double middle, double y) {
        graphics.setFont(text.font());
        double base = y + text.capitals();
        for (String line : text.lines()) {
            graphics.drawString(line, (float) (middle - Typeface.width(line, text.font()) / 2), (float) base);
            base += text.capitals() * Typeface.LINE;
        }
    }
}
