package strawbed.window;

import java.awt.Graphics2D;
import strawbed.station.Body;

/** A bar that must be as long on a ruler as it says. */
final class RulerPart extends Part {
    private static final long serialVersionUID = 1;
    private final transient Body.Ruler ruler;

    RulerPart(Body.Ruler ruler, Paint paint) {
        super(paint, ruler.text());
        this.ruler = ruler;
    }

    private Fitted text() {
        return paint.regular(
                ruler.text(), getWidth(), getHeight() * 0.5, Measures.NEAR_CAPITALS, Measures.LEAST_CAPITALS);
    }

    @Override
    boolean fits() {
        return text().fits();
    }

    /** How long the bar is, in dots. */
    int bar() {
        return (int) Math.round(ruler.millimetres() * paint.units().dotsPerMillimetre());
    }

    @Override
    void draw(Graphics2D g) {
        g.setColor(paint.colours().ink());
        Brush.write(g, text(), 0, 0);
        int left = (getWidth() - bar()) / 2;
        int top = (int) (getHeight() * 0.6);
        g.fillRect(left, top, bar(), paint.px(8));
        int post = Math.max(1, paint.px(0.5));
        g.fillRect(left, top - paint.px(6), post, paint.px(20));
        g.fillRect(left + bar() - post, top - paint.px(6), post, paint.px(20));
    }
}
