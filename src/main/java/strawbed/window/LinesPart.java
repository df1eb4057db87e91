package strawbed.window;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import strawbed.station.Body;

/** Lines to be read from near, one below the other. */
final class LinesPart extends Part {
    private static final long serialVersionUID = 1;
    private static final double STEP = 0.96;

    private final transient Body.Lines body;

    LinesPart(Body.Lines body, Paint paint) {
        super(paint, String.join(". ", body.lines()));
        this.body = body;
    }

    /** Each line begins anew; all as large as fits, down to what can still be read. */
    static Fitted laid(List<String> lines, Paint paint, double width, double height) {
        double capitals = paint.px(Measures.NEAR_CAPITALS);
        double least = paint.px(Measures.LEAST_CAPITALS) * 0.8;
        while (true) {
            Font font = paint.face().regular(capitals);
            List<String> all = new ArrayList<>();
            lines.forEach(line -> all.addAll(Typeface.lines(paint.face().known(line), font, width)));
            boolean fits = all.isEmpty() || Fitted.height(all.size(), capitals) <= height;
            if (fits || capitals <= least) {
                return new Fitted(all, font, capitals, fits);
            }
            capitals = Math.max(least, capitals * STEP);
        }
    }

    private Fitted laid() {
        return laid(body.lines(), paint, getWidth(), getHeight());
    }

    @Override
    boolean fits() {
        return laid().fits();
    }

    @Override
    void draw(Graphics2D g) {
        g.setColor(paint.colours().ink());
        Brush.write(g, laid(), 0, 0);
    }
}
