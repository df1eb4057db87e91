package strawbed.report.pdf;

import java.io.IOException;
import java.util.Locale;
import strawbed.report.Chart;
import strawbed.report.Markup;
import strawbed.report.Range;

/**
 * Draws the pictures of the report for the screen, in the same places as on paper, as SVG whose unit is the millimetre.
 * Its words ask for the type family {@link #FAMILY}. For one thread; closing it gives the fonts back.
 */
public final class SvgWriter implements AutoCloseable {
    /** What the page that holds the pictures has to call the report's type. */
    public static final String FAMILY = "Strawbed";

    private static final int BOLD = 700;
    private static final int REGULAR = 400;
    /** Half a line's thickness, and letters that stand out. */
    private static final double EDGE = 2.5;

    private final Type type = Type.open();

    /**
     * A chart.
     *
     * @param width in millimetres
     */
    public String chart(Chart chart, double width) {
        return svg(ChartPart.lay(type, chart, width), width, chart.inWords());
    }

    /** A share as it is drawn beside a figure; what it says stands beside it in words. */
    public String range(Range range, double width) {
        return svg(new RangePart(type, width).lay(range), width, "");
    }

    private String svg(Block block, double width, String inWords) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"")
                .append(number(-EDGE))
                .append(' ')
                .append(number(0))
                .append(' ')
                .append(number(width + 2 * EDGE))
                .append(' ')
                .append(number(block.height()))
                .append('"');
        svg.append(
                inWords.isBlank()
                        ? " aria-hidden=\"true\">"
                        : " role=\"img\" aria-label=\"" + Markup.escaped(inWords) + "\">");
        block.drawn().forEach(thing -> svg.append(drawn(thing)));
        return svg.append("</svg>").toString();
    }

    private String drawn(Drawn thing) {
        if (thing instanceof Drawn.Words words) {
            return words(words);
        }
        if (thing instanceof Drawn.Bar bar) {
            return rectangle(bar.box());
        }
        if (thing instanceof Drawn.Line line) {
            return line(line);
        }
        if (thing instanceof Drawn.Sign sign) {
            return sign(sign);
        }
        throw new IllegalArgumentException("pictures for the screen have no " + thing);
    }

    private String words(Drawn.Words words) {
        try {
            double size = words.capHeight() * type.face(words.weight()).sizeOfCapital();
            return "<text x=\"" + number(words.box().x()) + "\" y=\""
                    + number(words.box().y() + words.ascent()) + "\" font-family=\"" + FAMILY + "\" font-size=\""
                    + number(size) + "\" font-weight=\"" + (words.weight() == Weight.BOLD ? BOLD : REGULAR) + "\">"
                    + Markup.escaped(words.text()) + "</text>";
        } catch (IOException e) {
            throw new CardPdfException("The report's font cannot be read; install Strawbed again.", e);
        }
    }

    private static String rectangle(Box box) {
        return "<rect x=\"" + number(box.x()) + "\" y=\"" + number(box.y()) + "\" width=\"" + number(box.width())
                + "\" height=\"" + number(box.height()) + "\"/>";
    }

    private static String line(Drawn.Line line) {
        Box box = line.box();
        double left = line.isFalling() ? box.y() : box.bottom();
        String dashes = line.isBroken() ? " stroke-dasharray=\"" + number(Pen.DASH) + "\"" : "";
        return "<line x1=\"" + number(box.x()) + "\" y1=\"" + number(left) + "\" x2=\"" + number(box.right())
                + "\" y2=\"" + number(box.y() + box.bottom() - left) + "\" stroke=\"black\" stroke-width=\""
                + number(Measures.THIN_LINE) + "\"" + dashes + "/>";
    }

    private static String sign(Drawn.Sign sign) {
        Box box = sign.box();
        double middle = box.x() + box.width() / 2;
        return switch (sign.form()) {
            case CIRCLE -> circle(box, sign.filled());
            case SQUARE -> rectangle(box);
            case TRIANGLE ->
                "<path d=\"M" + number(box.x()) + " " + number(box.bottom()) + "L"
                        + number(box.right()) + " " + number(box.bottom()) + "L" + number(middle) + " "
                        + number(box.y())
                        + "Z\"/>";
            case TICK_BOX, WARNING, ARROW_LEFT, ARROW_RIGHT ->
                throw new IllegalArgumentException("pictures for the screen have no " + sign);
        };
    }

    private static String circle(Box box, boolean isFilled) {
        double line = isFilled ? 0 : SignPen.OUTLINE;
        return "<circle cx=\"" + number(box.x() + box.width() / 2) + "\" cy=\"" + number(box.y() + box.height() / 2)
                + "\" r=\"" + number((box.width() - line) / 2) + "\""
                + (isFilled ? "/>" : " fill=\"none\" stroke=\"black\" stroke-width=\"" + number(line) + "\"/>");
    }

    private static String number(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }

    @Override
    public void close() {
        try {
            type.close();
        } catch (IOException e) {
            throw new CardPdfException("The report's font cannot be closed; try again.", e);
        }
    }
}
