package strawbed.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JButton;
import strawbed.station.Key;
import strawbed.station.Rank;

/**
 * A key that paints itself: its word on one line or two, as large as it fits. Pressing swaps its colours, a ring tells
 * where the focus is.
 */
final class BigKey extends JButton {
    private static final long serialVersionUID = 1;
    private static final double PAD = 2;
    private static final double RING = 1.2;

    private final transient Key key;
    private final transient Paint paint;
    private final double capitals;

    /** @param capitals the height of its word at most, in units */
    BigKey(Key key, Paint paint, double capitals) {
        this.key = key;
        this.paint = paint;
        this.capitals = capitals;
        setText(key.label());
        setActionCommand(key.label());
        getAccessibleContext().setAccessibleName(key.spoken());
        // For screen readers.
        setSelected(key.rank() == Rank.CHOSEN);
        setContentAreaFilled(false);
        setBorderPainted(false);
        setFocusPainted(false);
        setRolloverEnabled(false);
        setPreferredSize(new Dimension(paint.px(Measures.KEY), paint.px(Measures.KEY)));
    }

    Key key() {
        return key;
    }

    double capitals() {
        return capitals;
    }

    /** How wide its word wants to be, with room at both sides, in dots. */
    double wantedWidth() {
        Font font = paint.face().bold(paint.px(capitals));
        double label = longestWord(paint.face().known(key.label()), font);
        return label + 2 * paint.px(PAD) + paint.px(1);
    }

    private static double longestWord(String text, Font font) {
        double longest = 0;
        for (String word : text.split("\\s+", -1)) {
            longest = Math.max(longest, Typeface.width(word, font));
        }
        return longest;
    }

    private double inner() {
        return getWidth() - 2.0 * paint.px(PAD);
    }

    /** Its word, laid out. */
    Fitted label() {
        double share = key.detail().isEmpty() ? 1 : 0.55;
        return paint.bold(
                key.label(),
                inner(),
                (getHeight() - 2.0 * paint.px(PAD)) * share,
                capitals,
                Math.min(capitals, Measures.LEAST_CAPITALS));
    }

    /** Its second line, laid out. */
    Fitted detail() {
        return paint.regular(
                key.detail(),
                inner(),
                (getHeight() - 2.0 * paint.px(PAD)) * 0.45,
                Measures.LEAST_CAPITALS,
                Measures.DETAIL_CAPITALS);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = Brush.smooth(graphics);
        Palette.Pair pair = paint.colours().of(key.rank());
        boolean down = getModel().isArmed() && getModel().isPressed();
        Color on = down ? pair.ink() : pair.on();
        Color ink = down ? pair.on() : pair.ink();
        int round = paint.px(2);
        g.setColor(on);
        g.fillRoundRect(0, 0, getWidth(), getHeight(), round, round);
        g.setColor(ink);
        writeLabel(g);
        if (key.rank() == Rank.PRESSING) {
            // A bar at the side: what presses is told by form as well.
            g.fillRect(0, 0, paint.px(1.5), getHeight());
        }
        if (key.rank() == Rank.CHOSEN) {
            // So is what is chosen: a dot in the corner.
            int dot = paint.px(2.4);
            g.fillOval(getWidth() - dot - paint.px(1), paint.px(1), dot, dot);
        }
        if (isFocusOwner()) {
            double width = paint.px(RING);
            g.setStroke(new BasicStroke((float) width));
            g.drawRoundRect(
                    (int) (width * 1.2),
                    (int) (width * 1.2),
                    (int) (getWidth() - width * 2.4),
                    (int) (getHeight() - width * 2.4),
                    round,
                    round);
        }
        g.dispose();
    }

    private void writeLabel(Graphics2D g) {
        Fitted label = label();
        double middle = getWidth() / 2.0;
        if (key.detail().isEmpty()) {
            double drop = label.capitals() * Typeface.BELOW / 2;
            Brush.writeCentred(g, label, middle, (getHeight() - label.height()) / 2 + drop);
            return;
        }
        Fitted detail = detail();
        double gap = paint.px(1.5);
        double top = (getHeight() - label.height() - gap - detail.height()) / 2;
        Brush.writeCentred(g, label, middle, top);
        Brush.writeCentred(g, detail, middle, top + label.height() + gap);
    }
}
