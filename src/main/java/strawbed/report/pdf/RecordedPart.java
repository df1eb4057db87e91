package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.CardWord;
import strawbed.report.CardWords;
import strawbed.report.Fact;

/** What was recorded, each under its time, in columns that are read down and then to the right. */
final class RecordedPart {
    private static final List<Double> SIZES = List.of(Measures.READ, Measures.NOTE, Measures.NOTE_LEAST);
    private static final double COLUMN_GAP = 4;
    private static final double COLUMN_LEAST = 40;
    private static final double GAP = 0.4;
    private static final int MOST_LINES = 2;

    private final Type type;
    private final List<Fact> recorded;
    private final double width;
    private final CardWords words;

    RecordedPart(Type type, List<Fact> recorded, double width, CardWords words) {
        this.type = type;
        this.recorded = recorded;
        this.width = width;
        this.words = words;
    }

    /** All in the largest size and the fewest columns that fit; else as many as fit, and how many are missing. */
    Block lay(double room) {
        if (recorded.isEmpty()) {
            return Paragraph.ofLines(type, Run.bold(words.word(CardWord.NOTHING_RECORDED)), Measures.READ, width, 1);
        }
        int most = (int) ((width + COLUMN_GAP) / (COLUMN_LEAST + COLUMN_GAP));
        for (double capHeight : SIZES) {
            for (int columns = 1; columns <= most; columns++) {
                List<Block> lines = lines(recorded.size(), capHeight, columns);
                if (fits(lines, columns, room)) {
                    return side(Columns.even(lines, columns, room, GAP), columns);
                }
            }
        }
        for (int shown = recorded.size() - 1; shown > 0; shown--) {
            List<Block> lines = lines(shown, Measures.NOTE_LEAST, most);
            if (fits(lines, most, room)) {
                return side(Columns.fill(lines, room, GAP), most);
            }
        }
        return Paragraph.ofLines(type, Run.bold(words.more(recorded.size())), Measures.NOTE_LEAST, width, 1);
    }

    private static boolean fits(List<Block> lines, int columns, double room) {
        List<Block> filled = Columns.fill(lines, room, GAP);
        return filled.size() <= columns && filled.stream().allMatch(column -> column.height() <= room);
    }

    private List<Block> lines(int shown, double capHeight, int columns) {
        double cell = cell(columns);
        List<Block> lines = new ArrayList<>();
        for (Fact fact : recorded.subList(0, shown)) {
            List<Run> runs = List.of(new Run(fact.label(), Weight.BOLD), new Run(fact.value(), Weight.REGULAR));
            lines.add(Paragraph.ofLines(type, runs, capHeight, cell, MOST_LINES));
        }
        if (shown < recorded.size()) {
            lines.add(Paragraph.ofLines(type, Run.bold(words.more(recorded.size() - shown)), capHeight, cell, 1));
        }
        return lines;
    }

    private double cell(int columns) {
        return (width - (columns - 1) * COLUMN_GAP) / columns;
    }

    private Block side(List<Block> filled, int columns) {
        List<Drawn> drawn = new ArrayList<>();
        double height = 0;
        for (int i = 0; i < filled.size(); i++) {
            filled.get(i).at(i * (cell(columns) + COLUMN_GAP), 0).forEach(drawn::add);
            height = Math.max(height, filled.get(i).height());
        }
        return new Block(height, drawn);
    }
}
