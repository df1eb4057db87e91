package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.Fact;

/** What was measured: label and value pairs, one after the other, a pair never torn apart. */
final class FactPart {
    private static final double PAIR_GAP = 5;

    private final Type type;
    private final List<Fact> facts;
    private final double width;

    FactPart(Type type, List<Fact> facts, double width) {
        this.type = type;
        this.facts = facts;
        this.width = width;
    }

    /** All facts in so many lines; else as many as fit, and how many are missing. */
    Block lay(int lines) {
        Block roomy = first(facts.size(), Measures.NOTE);
        double most = (lines + 0.5) * Measures.NOTE * Typeface.LINE;
        if (roomy.height() <= most) {
            return roomy;
        }
        int shown = facts.size();
        Block block = first(shown, Measures.NOTE_LEAST);
        while (shown > 1 && block.height() > most) {
            shown--;
            block = first(shown, Measures.NOTE_LEAST);
        }
        return block;
    }

    private Block first(int shown, double capHeight) {
        List<Block> pairs = new ArrayList<>();
        facts.subList(0, shown).forEach(fact -> pairs.add(pair(fact, capHeight)));
        if (shown < facts.size()) {
            pairs.add(line(Run.bold("and " + (facts.size() - shown) + " more"), capHeight));
        }
        return Flow.of(pairs, width, PAIR_GAP);
    }

    private Block pair(Fact fact, double capHeight) {
        return line(Run.labelled(fact.label(), fact.value()), capHeight);
    }

    private Block line(List<Run> words, double capHeight) {
        return Paragraph.ofLines(type, words, capHeight, width, 1);
    }
}
