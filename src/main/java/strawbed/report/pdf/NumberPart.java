package strawbed.report.pdf;

/** The number that is read from afar. */
final class NumberPart {
    private NumberPart() {}

    /** As large as the room allows; a name too long for that is cut off. */
    static Drawn.Words of(Type type, String number, double width, double height) {
        String text = type.bold().printable(number);
        Drawn.Words one = type.tight(text, Weight.BOLD, 1);
        double most = Math.min(height, Measures.NUMBER);
        double capHeight = Math.min(width / one.box().width(), most / one.box().height());
        if (capHeight < Measures.NUMBER_LEAST) {
            String shorter = type.shortened(text, Weight.BOLD, Measures.NUMBER_LEAST, width);
            return type.tight(shorter, Weight.BOLD, Measures.NUMBER_LEAST);
        }
        return type.tight(text, Weight.BOLD, capHeight);
    }
}
