package strawbed.window;

import java.awt.Graphics2D;

/** Something that must be known, across the whole width. */
final class NoteBand extends Part {
    static final double HEIGHT = 11;
    private static final long serialVersionUID = 1;
    private final String note;

    NoteBand(String note, Paint paint) {
        super(paint, note);
        this.note = note;
    }

    private Fitted text() {
        double edge = paint.px(Measures.BETWEEN);
        return paint.bold(
                note, getWidth() - 2 * edge, getHeight(), Measures.LEAST_CAPITALS, Measures.DETAIL_CAPITALS * 0.95);
    }

    @Override
    boolean fits() {
        return text().fits();
    }

    @Override
    void draw(Graphics2D g) {
        g.setColor(paint.colours().pressing().on());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(paint.colours().pressing().ink());
        Fitted text = text();
        Brush.write(
                g,
                text,
                paint.px(Measures.BETWEEN),
                (getHeight() - text.height()) / 2 + text.capitals() * Typeface.BELOW / 2);
    }
}
