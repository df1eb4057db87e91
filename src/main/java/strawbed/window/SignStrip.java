package strawbed.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import strawbed.station.Screen;
import strawbed.station.Sign;

/**
 * The upper edge: whether anybody listens, as a form, a word and a colour, and how loud it is. On a page for work from
 * near it is lower and has that page's heading.
 */
final class SignStrip extends Part {
    private static final long serialVersionUID = 1;

    /** Steps of the level meter, of 5 dB each. */
    private static final int STEPS = 12;

    private static final double LOUDEST = 0;
    static final double QUIETEST = -60;
    private static final double METER = 26;

    private final transient Screen screen;
    private double level = QUIETEST;

    SignStrip(Screen screen, Paint paint) {
        super(
                paint,
                String.join(". ", screen.signWord(), screen.heading(), screen.operator())
                        .replace(". . ", ". "));
        this.screen = screen;
        setOpaque(true);
    }

    /** Shows another level, in dB of full scale. */
    void level(double decibel) {
        int before = steps();
        level = decibel;
        if (steps() != before) {
            repaint();
        }
    }

    private int steps() {
        double share = (level - QUIETEST) / (LOUDEST - QUIETEST);
        return (int) Math.round(Math.max(0, Math.min(1, share)) * STEPS);
    }

    private Palette.Pair pair() {
        Palette colours = paint.colours();
        return switch (screen.sign()) {
            case LISTENING -> new Palette.Pair(colours.strip(), colours.onStrip());
            case PAUSED, NO_SOUND, KEYS_ONLY, STOPPED -> colours.deaf();
            case STARTING, HOLD_TO_TALK, SPEAKING -> colours.usual();
        };
    }

    @Override
    void draw(Graphics2D g) {
        Palette.Pair pair = pair();
        g.setColor(pair.on());
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(pair.ink());
        double row = screen.isNear() || !isStacked() ? getHeight() : getHeight() / 2.0;
        double side = screen.isNear() ? paint.px(Measures.NEAR_STRIP) * 0.8 : row * 0.8;
        double left = paint.px(Measures.BETWEEN);
        sign(g, left, (row - side) / 2, side, pair.on());
        g.setColor(pair.ink());
        double meter = paint.px(METER);
        double meterLeft = getWidth() - meter - left;
        meter(g, meterLeft, row, meter);
        write(g, left + side + paint.px(Measures.BETWEEN), meterLeft - paint.px(Measures.BETWEEN), row);
    }

    /** Upright, the word stands below sign and meter. */
    private boolean isStacked() {
        return paint.isUpright();
    }

    private void write(Graphics2D g, double left, double right, double row) {
        if (screen.isNear()) {
            Fitted heading = heading(right - left);
            Brush.write(
                    g, heading, left, (getHeight() - heading.height()) / 2 + heading.capitals() * Typeface.BELOW / 2);
            return;
        }
        Fitted word = word();
        double top = isStacked() ? row : 0;
        double x = isStacked() ? paint.px(Measures.EDGE) : left;
        Brush.write(g, word, x, top + (row - word.capitals()) / 2);
    }

    private Fitted heading(String text, double width) {
        return paint.bold(text, width, getHeight() * 0.98, Measures.NEAR_CAPITALS, Measures.DETAIL_CAPITALS);
    }

    /** That there is no sound is told by the sign; anything else is told here. */
    private String headingAndNote() {
        return screen.note().isEmpty() || screen.sign().isDeaf()
                ? screen.heading()
                : screen.heading() + " " + screen.note();
    }

    /** Where both have no room, the note alone: a person has read the heading. */
    private Fitted heading(double width) {
        Fitted both = heading(headingAndNote(), width);
        return both.fits() ? both : heading(screen.note().isEmpty() ? screen.heading() : screen.note(), width);
    }

    /** The word for two metres. */
    Fitted word() {
        double side = (isStacked() ? getHeight() / 2.0 : getHeight()) * 0.8;
        double width = isStacked()
                ? getWidth() - 2.0 * paint.px(Measures.EDGE)
                : getWidth() - side - paint.px(METER) - 4.0 * paint.px(Measures.BETWEEN);
        return paint.bold(
                screen.signWord(),
                width,
                paint.px(Measures.FAR_STRIP) * 2.0,
                Measures.FAR_CAPITALS,
                Measures.NEAR_CAPITALS);
    }

    @Override
    List<Double> farCapitals() {
        return screen.isNear() ? List.of() : List.of(word().capitals());
    }

    @Override
    boolean fits() {
        if (!screen.isNear()) {
            return word().fits() && word().lines().size() == 1;
        }
        double side = paint.px(Measures.NEAR_STRIP) * 0.8;
        return heading(getWidth() - side - paint.px(METER) - 4.0 * paint.px(Measures.BETWEEN))
                .fits();
    }

    private void meter(Graphics2D g, double left, double row, double width) {
        double operatorHeight =
                screen.operator().isEmpty() || screen.isNear() ? 0 : paint.px(Measures.LEAST_CAPITALS * 1.9);
        double height = (row - operatorHeight) * 0.55;
        double top = (row - operatorHeight - height) / 2;
        if (screen.sign().isListening()) {
            double step = width / STEPS;
            for (int i = 0; i < STEPS; i++) {
                double tall = height * (0.35 + 0.65 * i / (STEPS - 1));
                RoundRectangle2D bar = new RoundRectangle2D.Double(
                        left + i * step, top + height - tall, step * 0.62, tall, step * 0.3, step * 0.3);
                if (i < steps()) {
                    g.fill(bar);
                } else {
                    g.setStroke(new BasicStroke((float) Math.max(1, paint.px(0.25))));
                    g.draw(bar);
                }
            }
        }
        if (operatorHeight > 0) {
            Fitted name = paint.regular(
                    screen.operator(), width, operatorHeight, Measures.LEAST_CAPITALS, Measures.LEAST_CAPITALS * 0.6);
            Brush.write(g, name, left, row - operatorHeight);
        }
    }

    /** Our own signs: a dot that sound comes to, an empty ring, a balloon, two posts, a crossed ring, four keys, three dots. */
    private void sign(Graphics2D g, double x, double y, double side, Color behind) {
        float thick = (float) (side * 0.1);
        g.setStroke(new BasicStroke(thick, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        double middle = y + side / 2;
        switch (screen.sign()) {
            case LISTENING -> {
                g.fill(circle(x + side * 0.22, middle, side * 0.2));
                for (double ring : new double[] {0.36, 0.56, 0.76}) {
                    double radius = side * ring;
                    g.draw(new Arc2D.Double(
                            x + side * 0.22 - radius, middle - radius, 2 * radius, 2 * radius, -38, 76, Arc2D.OPEN));
                }
            }
            case HOLD_TO_TALK -> g.draw(circle(x + side / 2, middle, side * 0.38));
            case SPEAKING -> {
                Path2D balloon = new Path2D.Double();
                balloon.append(
                        new RoundRectangle2D.Double(x, y + side * 0.1, side, side * 0.6, side * 0.3, side * 0.3),
                        false);
                balloon.moveTo(x + side * 0.2, y + side * 0.65);
                balloon.lineTo(x + side * 0.2, y + side * 0.95);
                balloon.lineTo(x + side * 0.5, y + side * 0.65);
                g.fill(balloon);
                g.setColor(behind);
                for (double line : new double[] {0.3, 0.5}) {
                    g.draw(new Line2D.Double(x + side * 0.2, y + side * line, x + side * 0.8, y + side * line));
                }
            }
            case PAUSED -> {
                for (double post : new double[] {0.22, 0.58}) {
                    g.fill(new RoundRectangle2D.Double(
                            x + side * post, y + side * 0.1, side * 0.2, side * 0.8, thick, thick));
                }
            }
            case NO_SOUND -> {
                g.draw(circle(x + side / 2, middle, side * 0.4));
                g.draw(new Line2D.Double(x + side * 0.22, y + side * 0.22, x + side * 0.78, y + side * 0.78));
            }
            case KEYS_ONLY -> {
                for (double column : new double[] {0.12, 0.56}) {
                    for (double line : new double[] {0.12, 0.56}) {
                        g.fill(new RoundRectangle2D.Double(
                                x + side * column, y + side * line, side * 0.34, side * 0.34, thick, thick));
                    }
                }
            }
            case STOPPED -> {
                g.draw(new Line2D.Double(x + side * 0.15, y + side * 0.15, x + side * 0.85, y + side * 0.85));
                g.draw(new Line2D.Double(x + side * 0.15, y + side * 0.85, x + side * 0.85, y + side * 0.15));
            }
            case STARTING -> {
                for (double dot : new double[] {0.15, 0.5, 0.85}) {
                    g.fill(circle(x + side * dot, middle, side * 0.1));
                }
            }
        }
    }

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    /** Which sign it shows, for tests. */
    Sign shown() {
        return screen.sign();
    }
}
