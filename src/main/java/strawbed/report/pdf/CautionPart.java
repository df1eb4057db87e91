package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CardWords;

/** The cautions: bold sentences, each behind a black warning triangle. */
final class CautionPart {
    private static final double SIGN = 5;
    private static final double SIGN_GAP = 1.6;
    private static final double SENTENCE_GAP = 5;
    private static final List<Double> SIZES = List.of(Measures.READ, Measures.NOTE, Measures.NOTE_LEAST);
    private static final int MOST_LINES = 3;

    private final Type type;
    private final List<String> cautions;
    private final double width;
    private final CardWords words;

    CautionPart(Type type, List<String> cautions, double width, CardWords words) {
        this.words = words;
        this.type = type;
        this.cautions = cautions;
        this.width = width;
    }

    /** The height in which every caution can be shown. */
    double needed() {
        return cautions.isEmpty()
                ? 0
                : first(cautions.size(), Measures.NOTE_LEAST).height();
    }

    /** All cautions in the largest size that fits the room; else as many as fit, and how many are missing. */
    Block lay(double room) {
        for (double capHeight : SIZES) {
            Block block = first(cautions.size(), capHeight);
            if (block.height() <= room) {
                return block;
            }
        }
        for (int shown = cautions.size() - 1; shown > 0; shown--) {
            Block block = first(shown, Measures.NOTE_LEAST);
            if (block.height() <= room) {
                return block;
            }
        }
        return sentence(words.onScreen(cautions.size()), Measures.NOTE_LEAST);
    }

    private Block first(int shown, double capHeight) {
        List<Block> sentences = new ArrayList<>();
        cautions.subList(0, shown).forEach(caution -> sentences.add(sentence(caution, capHeight)));
        if (shown < cautions.size()) {
            sentences.add(sentence(words.moreOnScreen(cautions.size() - shown), capHeight));
        }
        return Flow.of(sentences, width, SENTENCE_GAP);
    }

    private Block sentence(String words, double capHeight) {
        double line = capHeight * Typeface.LINE;
        double sign = Math.min(SIGN, line);
        double textLeft = sign + SIGN_GAP;
        List<Drawn> drawn = new ArrayList<>();
        drawn.add(new Drawn.Sign(new Box(0, (line - sign) / 2, sign, sign), Form.WARNING, true));
        Block text = Paragraph.ofLines(type, Run.bold(words), capHeight, width - textLeft, MOST_LINES);
        text.at(textLeft, 0).forEach(drawn::add);
        return new Block(Math.max(text.height(), line), drawn);
    }
}
