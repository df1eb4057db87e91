package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.report.CardFoot;
import strawbed.report.CardWord;
import strawbed.report.CardWords;

/**
 * The last lines: which print it is and what it takes the place of, then as much of the rest as has room; to the right
 * what black and white marks mean.
 */
final class FooterPart {
    private static final double SIZE = Measures.NOTE_LEAST;
    private static final double SIGN = SIZE;
    private static final double SIGN_GAP = 1;
    private static final double GAP = 4;
    private static final String BETWEEN = " · ";

    private final Type type;
    private final CardFoot foot;
    private final CardWords words;
    private final boolean hasMarks;

    /** @param hasMarks whether there are marks to explain */
    FooterPart(Type type, CardFoot foot, CardWords words, boolean hasMarks) {
        this.type = type;
        this.foot = foot;
        this.words = words;
        this.hasMarks = hasMarks;
    }

    Block lay(double width) {
        List<Drawn> drawn = new ArrayList<>();
        double room = width;
        if (hasMarks) {
            room = meaning(CardWord.PLANNED, false, room, drawn) - GAP;
            room = meaning(CardWord.DONE, true, room, drawn) - GAP;
        }
        List<String> lines = lines(room, width);
        for (int i = 0; i < lines.size(); i++) {
            String line = type.shortened(lines.get(i), Weight.REGULAR, SIZE, i == 0 ? room : width);
            drawn.add(type.line(line, Weight.REGULAR, SIZE).moved(0, i * SIZE * Typeface.LINE));
        }
        return new Block(lines.size() * SIZE * Typeface.LINE, drawn);
    }

    /** A line more only for what must be told. */
    private List<String> lines(double first, double width) {
        List<String> lines = new ArrayList<>(List.of(printable(foot.print())));
        if (!foot.replaces().isBlank() && !isAdded(printable(foot.replaces()), lines, first, width)) {
            lines.add(printable(foot.replaces()));
        }
        Stream.of(foot.protocol(), foot.farm())
                .filter(more -> !more.isBlank())
                .forEach(more -> isAdded(printable(more), lines, first, width));
        return lines;
    }

    private boolean isAdded(String more, List<String> lines, double first, double width) {
        int last = lines.size() - 1;
        String longer = lines.get(last) + BETWEEN + more;
        boolean fits = type.width(longer, Weight.REGULAR, SIZE) <= (last == 0 ? first : width);
        if (fits) {
            lines.set(last, longer);
        }
        return fits;
    }

    private String printable(String text) {
        return type.regular().printable(text);
    }

    private double meaning(CardWord word, boolean done, double right, List<Drawn> drawn) {
        Drawn.Words text = type.line(printable(words.word(word)), Weight.REGULAR, SIZE);
        double left = right - text.box().width();
        double signLeft = left - SIGN_GAP - SIGN;
        drawn.add(text.moved(left, 0));
        drawn.add(new Drawn.Sign(new Box(signLeft, text.ascent() - SIGN, SIGN, SIGN), Form.CIRCLE, done));
        return signLeft;
    }
}
