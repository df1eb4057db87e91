package strawbed.window;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import strawbed.report.Mark;
import strawbed.report.MarkKind;
import strawbed.report.Timeline;
import strawbed.station.Body;

/**
 * One calf: number, who it is, its first day as a line from birth on, and what must be known. What was done is filled,
 * what is planned is an outline; feeds are rings, dips squares, looks at the calf triangles.
 */
final class CalfPart extends Part {
    private static final long serialVersionUID = 1;
    private static final double HEAD = 20;
    private static final double LANE = 8;
    private static final double DAY = 3 * LANE + 9;
    private static final int HOURS = (int) Timeline.LENGTH.toHours();

    private final transient Body.OneCalf calf;

    CalfPart(Body.OneCalf calf, Paint paint) {
        super(paint, String.join(". ", spoken(calf)));
        this.calf = calf;
    }

    private static List<String> spoken(Body.OneCalf calf) {
        List<String> spoken = new ArrayList<>(List.of(calf.number(), calf.facts()));
        spoken.addAll(calf.lines());
        return spoken;
    }

    private Fitted number() {
        return paint.bold(
                calf.number(), getWidth() * 0.4, paint.px(HEAD), Measures.FAR_CAPITALS, Measures.FAR_CAPITALS * 0.7);
    }

    private Fitted facts() {
        double left = Typeface.width(number().lines().get(0), number().font()) + paint.px(Measures.GAP);
        return paint.regular(
                calf.facts(), getWidth() - left, paint.px(HEAD), Measures.NEAR_CAPITALS, Measures.LEAST_CAPITALS * 0.8);
    }

    private double linesTop() {
        return paint.px(HEAD + DAY + 2);
    }

    private Fitted lines() {
        return LinesPart.laid(calf.lines(), paint, getWidth(), getHeight() - linesTop());
    }

    @Override
    boolean fits() {
        return number().fits() && facts().fits() && lines().fits();
    }

    @Override
    void draw(Graphics2D g) {
        g.setColor(paint.colours().ink());
        Brush.write(g, number(), 0, paint.px(0.5));
        double left = Typeface.width(number().lines().get(0), number().font()) + paint.px(Measures.GAP);
        Brush.write(g, facts(), left, paint.px(1));
        day(g, paint.px(HEAD));
        g.setColor(paint.colours().ink());
        Brush.write(g, lines(), 0, linesTop());
    }

    private void day(Graphics2D g, double top) {
        double lane = paint.px(LANE);
        double inset = paint.px(4) + lanes(g, top);
        double width = getWidth() - inset - paint.px(4);
        double axis = top + 3 * lane + paint.px(1);
        g.setColor(paint.colours().ink());
        g.setStroke(new BasicStroke((float) Math.max(1, paint.px(0.5))));
        g.draw(new Line2D.Double(inset, axis, inset + width, axis));
        for (int hour = 0; hour <= HOURS; hour++) {
            double x = inset + width * hour / HOURS;
            boolean named = hour % 6 == 0;
            g.setColor(named ? paint.colours().ink() : paint.colours().line());
            g.draw(new Line2D.Double(x, axis, x, axis + paint.px(named ? 2.4 : 1.2)));
            if (named) {
                Fitted word = paint.regular(hour + " h", width, paint.px(6), 3.4, 3.4);
                double half = Typeface.width(word.lines().get(0), word.font()) / 2;
                double at = Math.max(half, Math.min(getWidth() - half, x));
                Brush.writeCentred(g, word, at, axis + paint.px(3));
            }
        }
        for (Mark mark : calf.day().marks()) {
            mark(g, mark, inset, width, top);
        }
    }

    /** Writes what each line of marks is; gives how wide that is. */
    private double lanes(Graphics2D g, double top) {
        double widest = 0;
        for (int i = 0; i < calf.lanes().size(); i++) {
            Fitted word =
                    paint.regular(calf.lanes().get(i), getWidth(), paint.px(LANE), Measures.LEAST_CAPITALS * 0.8, 3);
            Brush.write(g, word, 0, top + paint.px(LANE) * (i + 0.5) - word.capitals() / 2);
            widest = Math.max(widest, Typeface.width(word.lines().get(0), word.font()));
        }
        return widest;
    }

    private void mark(Graphics2D g, Mark mark, double inset, double width, double top) {
        double share = Math.max(0, Math.min(1, share(mark.afterStart())));
        double x = inset + width * share;
        double y = top + paint.px(LANE) * (lane(mark.kind()) + 0.5);
        double half = paint.px(2.4);
        Path2D form = new Path2D.Double();
        switch (mark.kind()) {
            case FEED -> form.append(new Ellipse2D.Double(x - half, y - half, 2 * half, 2 * half), false);
            case DIP -> form.append(new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half), false);
            case CHECK -> {
                form.moveTo(x, y - half);
                form.lineTo(x + half, y + half);
                form.lineTo(x - half, y + half);
                form.closePath();
            }
        }
        g.setColor(paint.colours().ink());
        g.setStroke(new BasicStroke((float) Math.max(1, paint.px(0.6))));
        if (mark.done()) {
            g.fill(form);
        } else {
            g.setColor(paint.colours().paper());
            g.fill(form);
            g.setColor(paint.colours().ink());
            g.draw(form);
        }
    }

    private static double share(Duration afterStart) {
        return (double) afterStart.toMinutes() / Timeline.LENGTH.toMinutes();
    }

    private static int lane(MarkKind kind) {
        return switch (kind) {
            case FEED -> 0;
            case DIP -> 1;
            case CHECK -> 2;
        };
    }
}
