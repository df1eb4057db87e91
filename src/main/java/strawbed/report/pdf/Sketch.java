package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Gathers what a part of a page is drawn of. For one thread and one page. */
final class Sketch {
    /** Where words stand to the place they are put at. */
    enum Side {
        /** They begin there. */
        LEFT(0),
        /** Their middle is there. */
        MIDDLE(0.5),
        /** They end there. */
        RIGHT(1);

        private final double share;

        Side(double share) {
            this.share = share;
        }
    }

    private final Type type;
    private final List<Drawn> drawn = new ArrayList<>();

    Sketch(Type type) {
        this.type = type;
    }

    /** Words on a line of text whose upper edge is at y; gives the box they take. */
    Box words(String text, Weight weight, double capHeight, double x, double y, Side side) {
        Drawn.Words words = line(text, weight, capHeight);
        Drawn.Words placed = words.moved(x - side.share * words.box().width(), y);
        drawn.add(placed);
        return placed.box();
    }

    /** The words that fit this width, the rest cut off with "…". */
    Box wordsWithin(String text, Weight weight, double capHeight, double x, double y, double width) {
        String printable = type.face(weight).printable(text);
        return words(type.shortened(printable, weight, capHeight, width), weight, capHeight, x, y, Side.LEFT);
    }

    double width(String text, Weight weight, double capHeight) {
        return line(text, weight, capHeight).box().width();
    }

    void bar(double x, double y, double width, double height) {
        drawn.add(new Drawn.Bar(new Box(x, y, width, height)));
    }

    /** A thin line. */
    void line(double x1, double y1, double x2, double y2, boolean isBroken) {
        Box box = new Box(Math.min(x1, x2), Math.min(y1, y2), Math.abs(x1 - x2), Math.abs(y1 - y2));
        drawn.add(new Drawn.Line(box, (x1 <= x2) == (y1 <= y2), isBroken));
    }

    /** A sign around its middle. */
    void sign(Form form, double x, double y, double side, boolean filled) {
        drawn.add(new Drawn.Sign(new Box(x - side / 2, y - side / 2, side, side), form, filled));
    }

    void block(Block block, double x, double y) {
        block.at(x, y).forEach(drawn::add);
    }

    Block block(double height) {
        return new Block(height, drawn);
    }

    private Drawn.Words line(String text, Weight weight, double capHeight) {
        return type.line(type.face(weight).printable(text), weight, capHeight);
    }
}
