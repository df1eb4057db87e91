package strawbed.report.pdf;

import java.io.IOException;

/** The card's one type family in its two weights. For one thread and one card. */
record Type(Typeface regular, Typeface bold) implements AutoCloseable {
    private static final String MORE = "…";

    static Type open() {
        return new Type(
                Typeface.open("/fonts/AtkinsonHyperlegibleNext_400Regular.ttf"),
                Typeface.open("/fonts/AtkinsonHyperlegibleNext_700Bold.ttf"));
    }

    Typeface face(Weight weight) {
        return switch (weight) {
            case REGULAR -> regular;
            case BOLD -> bold;
        };
    }

    double width(String text, Weight weight, double capHeight) {
        return face(weight).width(text, capHeight);
    }

    /** Printable words on a line of text, from the upper left corner of the line. */
    Drawn.Words line(String text, Weight weight, double capHeight) {
        Box box = new Box(0, 0, width(text, weight, capHeight), Typeface.LINE * capHeight);
        return new Drawn.Words(box, text, weight, capHeight, Typeface.ABOVE * capHeight);
    }

    /** Printable words in a box no higher than their ink, for words that stand alone. */
    Drawn.Words tight(String text, Weight weight, double capHeight) {
        double above = face(weight).above(text) * capHeight;
        double below = face(weight).below(text) * capHeight;
        Box box = new Box(0, 0, width(text, weight, capHeight), above + below);
        return new Drawn.Words(box, text, weight, capHeight, above);
    }

    /** The words cut off with "…" where they would be wider than that, in millimetres. */
    String shortened(String text, Weight weight, double capHeight, double width) {
        if (width(text, weight, capHeight) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end).strip() + MORE, weight, capHeight) > width) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + MORE;
    }

    @Override
    public void close() throws IOException {
        try (regular) {
            bold.close();
        }
    }
}
