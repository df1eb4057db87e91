package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Lines to sign on, side by side, each with what is signed under it. */
final class SignaturePart {
    private static final double GAP = 12;
    private static final double UNDER_LINE = 0.8;

    private SignaturePart() {}

    static Block of(Type type, List<String> signatures, double width) {
        List<Drawn> drawn = new ArrayList<>();
        double column = (width - (signatures.size() - 1) * GAP) / signatures.size();
        double height = 0;
        for (int i = 0; i < signatures.size(); i++) {
            double left = i * (column + GAP);
            double top = SheetMeasures.SIGNATURE_ROOM;
            drawn.add(new Drawn.Bar(new Box(left, top, column, Measures.RULE)));
            Block words = Paragraph.ofLines(
                    type,
                    List.of(new Run(signatures.get(i), Weight.REGULAR)),
                    Measures.NOTE,
                    column,
                    Integer.MAX_VALUE);
            words.at(left, top + Measures.RULE + UNDER_LINE).forEach(drawn::add);
            height = Math.max(height, top + Measures.RULE + UNDER_LINE + words.height());
        }
        return new Block(height, drawn);
    }
}
