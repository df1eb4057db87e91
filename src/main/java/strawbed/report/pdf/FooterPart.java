package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CalfCard;

/** The last line: when the card was printed and where, and what black and white marks mean. */
final class FooterPart {
    private static final double SIZE = Measures.NOTE_LEAST;
    private static final double SIGN = SIZE;
    private static final double SIGN_GAP = 1;
    private static final double GAP = 4;

    private final Type type;
    private final CalfCard card;

    FooterPart(Type type, CalfCard card) {
        this.type = type;
        this.card = card;
    }

    Block lay(double width) {
        List<Drawn> drawn = new ArrayList<>();
        double right = width;
        right = meaning("planned", false, right, drawn) - GAP;
        right = meaning("done", true, right, drawn) - GAP;
        String from = card.farm().isBlank() ? card.printedAt() : card.printedAt() + " · " + card.farm();
        String text = type.regular().printable(from);
        drawn.add(type.line(type.shortened(text, Weight.REGULAR, SIZE, right), Weight.REGULAR, SIZE));
        return new Block(SIZE * Typeface.LINE, drawn);
    }

    private double meaning(String word, boolean done, double right, List<Drawn> drawn) {
        Drawn.Words words = type.line(word, Weight.REGULAR, SIZE);
        double left = right - words.box().width();
        double signLeft = left - SIGN_GAP - SIGN;
        drawn.add(words.moved(left, 0));
        drawn.add(new Drawn.Sign(new Box(signLeft, words.ascent() - SIGN, SIGN, SIGN), Form.CIRCLE, done));
        return signLeft;
    }
}
