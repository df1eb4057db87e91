package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Breaks words into lines of one size and width. For one thread and one card. */
final class Paragraph {
    /** The white between two runs of words, in heights of a capital. */
    private static final double RUN_GAP = 0.65;
    /** The least room worth starting another run in, in heights of a capital. */
    private static final double LEAST_START = 4;

    /** A line may break at a blank, but none begins with a stroke. */
    private static final String BETWEEN_WORDS = " (?!/ )";

    private final Type type;
    private final double capHeight;
    private final double width;

    private Paragraph(Type type, double capHeight, double width) {
        this.type = type;
        this.capHeight = capHeight;
        this.width = width;
    }

    /** The words in one size, cut off with "…" after so many lines. */
    static Block ofLines(Type type, List<Run> runs, double capHeight, double width, int lines) {
        return new Paragraph(type, capHeight, width).block(runs, lines);
    }

    /** All the words in one size, each line as a block of its own. */
    static List<Block> lines(Type type, List<Run> runs, double capHeight, double width) {
        Paragraph paragraph = new Paragraph(type, capHeight, width);
        return paragraph.lines(runs).stream().map(paragraph::line).toList();
    }

    private Block block(List<Run> runs, int most) {
        List<List<Run>> lines = lines(runs);
        if (lines.size() > most) {
            List<Run> cut = cutOff(lines.get(most - 1), lines.get(most).get(0));
            lines = new ArrayList<>(lines.subList(0, most));
            lines.set(most - 1, cut);
        }
        List<Drawn> drawn = new ArrayList<>();
        double lineHeight = capHeight * Typeface.LINE;
        for (int i = 0; i < lines.size(); i++) {
            line(lines.get(i)).at(0, i * lineHeight).forEach(drawn::add);
        }
        return new Block(lines.size() * lineHeight, drawn);
    }

    private Block line(List<Run> runs) {
        List<Drawn> drawn = new ArrayList<>();
        double x = 0;
        for (Run run : runs) {
            Drawn.Words words = type.line(run.text(), run.weight(), capHeight).moved(x, 0);
            drawn.add(words);
            x = words.box().right() + RUN_GAP * capHeight;
        }
        return new Block(capHeight * Typeface.LINE, drawn);
    }

    private List<List<Run>> lines(List<Run> runs) {
        List<List<Run>> lines = new ArrayList<>();
        List<Run> line = List.of();
        for (Run run : runs) {
            boolean first = true;
            for (String word : words(run)) {
                List<Run> longer = first ? started(line, word, run.weight()) : continued(line, word, run.weight());
                if (!line.isEmpty() && width(longer) > width) {
                    lines.add(line);
                    longer = started(List.of(), word, run.weight());
                }
                line = longer;
                first = false;
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    /** The words of a run; one wider than a whole line comes in pieces. */
    private List<String> words(Run run) {
        List<String> words = new ArrayList<>();
        for (String word : type.face(run.weight()).printable(run.text()).split(BETWEEN_WORDS, -1)) {
            String rest = word;
            while (type.width(rest, run.weight(), capHeight) > width) {
                int end = rest.length();
                while (end > 1 && type.width(rest.substring(0, end), run.weight(), capHeight) > width) {
                    end = rest.offsetByCodePoints(end, -1);
                }
                words.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            if (!rest.isEmpty()) {
                words.add(rest);
            }
        }
        return words;
    }

    private static List<Run> started(List<Run> line, String word, Weight weight) {
        List<Run> longer = new ArrayList<>(line);
        longer.add(new Run(word, weight));
        return longer;
    }

    private static List<Run> continued(List<Run> line, String word, Weight weight) {
        if (line.isEmpty()) {
            return started(line, word, weight);
        }
        List<Run> longer = new ArrayList<>(line);
        int last = longer.size() - 1;
        longer.set(last, longer.get(last).with(word));
        return longer;
    }

    private double width(List<Run> line) {
        double words = line.stream()
                .mapToDouble(run -> type.width(run.text(), run.weight(), capHeight))
                .sum();
        return words + (line.size() - 1) * RUN_GAP * capHeight;
    }

    /** The line, and as much as fits of what would follow it. */
    private List<Run> cutOff(List<Run> line, Run next) {
        List<Run> cut = new ArrayList<>(line);
        Run last = cut.remove(cut.size() - 1);
        if (last.weight() == next.weight()) {
            last = last.with(next.text());
        } else if (width(line) + (RUN_GAP + LEAST_START) * capHeight <= width) {
            cut.add(last);
            last = next;
        }
        double before = cut.isEmpty() ? 0 : width(cut) + RUN_GAP * capHeight;
        String text = type.shortened(last.text() + " …", last.weight(), capHeight, width - before);
        cut.add(new Run(text, last.weight()));
        return cut;
    }
}
