package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CardWords;
import strawbed.report.Fact;

/** What was measured: label and value pairs, one after the other, a pair never torn apart. */
final class FactPart {
    private static final double PAIR_GAP = 5;

    private static final int MOST_LINES = 2;

    private final Type type;
    private final List<Fact> facts;
    private final double width;
    private final CardWords words;

    FactPart(Type type, List<Fact> facts, double width, CardWords words) {
        this.type = type;
        this.facts = facts;
        this.width = width;
        this.words = words;
    }

    /** All facts in so many lines; else cut off; else as many as fit, and how many are missing. */
    Block lay(int lines) {
        double most = (lines + 0.5) * Measures.NOTE * Typeface.LINE;
        for (double capHeight : List.of(Measures.NOTE, Measures.NOTE_LEAST)) {
            Block whole = first(facts.size(), capHeight, MOST_LINES);
            if (whole.height() <= most) {
                return whole;
            }
        }
        int shown = facts.size();
        Block block = first(shown, Measures.NOTE_LEAST, 1);
        while (shown > 1 && block.height() > most) {
            shown--;
            block = first(shown, Measures.NOTE_LEAST, 1);
        }
        return block;
    }

    private Block first(int shown, double capHeight, int lines) {
        List<Block> pairs = new ArrayList<>();
        facts.subList(0, shown)
                .forEach(fact -> pairs.add(block(Run.labelled(fact.label(), fact.value()), capHeight, lines)));
        if (shown < facts.size()) {
            pairs.add(block(Run.bold(words.more(facts.size() - shown)), capHeight, 1));
        }
        return Flow.of(pairs, width, PAIR_GAP);
    }

    private Block block(List<Run> runs, double capHeight, int lines) {
        return Paragraph.ofLines(type, runs, capHeight, width, lines);
    }
}
