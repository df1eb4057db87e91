package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import strawbed.report.CalfHead;
import strawbed.report.Fact;

/** Who the calf is: one word that stands out, what belongs beside it, then lines of birth and family. */
final class IdentityPart {
    private static final double UNDER_TITLE = 1;
    private static final double BESIDE_GAP = 4;
    private static final List<Double> SIZES = List.of(3.8, 3.5, Measures.READ, 3.0, Measures.NOTE);

    private final Type type;
    private final CalfHead head;
    private final double width;

    IdentityPart(Type type, CalfHead head, double width) {
        this.type = type;
        this.head = head;
        this.width = width;
    }

    /** The title small, and each paragraph on one line. */
    double least() {
        return lay(0, Measures.READ).height();
    }

    Block lay(double height) {
        Block large = lay(height, Measures.SEX);
        return large.height() <= height ? large : lay(height, Measures.READ);
    }

    private Block lay(double height, double titleSize) {
        Drawn.Words title = title(titleSize);
        Optional<Drawn.Words> beside = head.beside()
                .map(words -> beside(words, title))
                .filter(words -> words.box().right() <= width);
        List<Drawn> drawn = new ArrayList<>();
        double down = Math.max(0, -beside.map(words -> words.box().y()).orElse(0.0));
        drawn.add(title.moved(0, down));
        beside.ifPresent(words -> drawn.add(words.moved(0, down)));
        double under = Math.max(
                title.box().height(), beside.map(words -> words.box().bottom()).orElse(0.0));
        double top = down + under + UNDER_TITLE;
        boolean last = titleSize == Measures.READ;
        Block lines = lines(paragraphs(beside.isPresent()), height - top, last);
        lines.at(0, top).forEach(drawn::add);
        return new Block(top + lines.height(), drawn);
    }

    /** On the same line as the title. */
    private Drawn.Words beside(String words, Drawn.Words title) {
        String text = type.bold().printable(words);
        Drawn.Words beside = type.tight(text, Weight.BOLD, Measures.READ);
        return beside.moved(title.box().right() + BESIDE_GAP, title.ascent() - beside.ascent());
    }

    private Drawn.Words title(double size) {
        String text = type.bold().printable(head.title());
        double fitting = size * width / type.width(text, Weight.BOLD, size);
        double capHeight = Math.max(Measures.READ, Math.min(size, fitting));
        return type.tight(type.shortened(text, Weight.BOLD, capHeight, width), Weight.BOLD, capHeight);
    }

    /** In the largest size that takes no more lines than the smallest; cut off to the room only if asked. */
    private Block lines(List<List<Run>> paragraphs, double room, boolean cutOff) {
        Block smallest = lines(paragraphs, Measures.NOTE_LEAST, Integer.MAX_VALUE);
        double count = smallest.height() / (Measures.NOTE_LEAST * Typeface.LINE);
        for (double capHeight : SIZES) {
            Block block = lines(paragraphs, capHeight, Integer.MAX_VALUE);
            if (block.height() <= room && block.height() < (count + 0.5) * capHeight * Typeface.LINE) {
                return block;
            }
        }
        int most = cutOff ? (int) (room / (Measures.NOTE_LEAST * Typeface.LINE)) : Integer.MAX_VALUE;
        return lines(paragraphs, Measures.NOTE_LEAST, most);
    }

    /** Each paragraph gets the lines it needs as long as one is left for each that follows. */
    private Block lines(List<List<Run>> paragraphs, double capHeight, int most) {
        List<Drawn> drawn = new ArrayList<>();
        double y = 0;
        int left = most;
        int waiting = paragraphs.size();
        for (List<Run> runs : paragraphs) {
            waiting--;
            Block paragraph = Paragraph.ofLines(type, runs, capHeight, width, Math.max(1, left - waiting));
            paragraph.at(0, y).forEach(drawn::add);
            y += paragraph.height();
            left -= (int) Math.round(paragraph.height() / (capHeight * Typeface.LINE));
        }
        return new Block(y, drawn);
    }

    /** What found no room beside the title goes on in the shortest line, or in one of its own. */
    private List<List<Run>> paragraphs(boolean isBeside) {
        List<List<Run>> paragraphs = new ArrayList<>();
        int shortest = 0;
        for (Fact line : head.lines()) {
            paragraphs.add(new ArrayList<>(Run.labelled(line.label(), line.value())));
            if (length(line) < length(head.lines().get(shortest))) {
                shortest = paragraphs.size() - 1;
            }
        }
        if (!isBeside && head.beside().isPresent()) {
            List<Run> words = Run.bold(head.beside().get());
            List<Run> longer = new ArrayList<>(paragraphs.isEmpty() ? List.of() : paragraphs.get(shortest));
            longer.addAll(words);
            if (!paragraphs.isEmpty() && isOneLine(longer)) {
                paragraphs.set(shortest, longer);
            } else {
                paragraphs.add(words);
            }
        }
        return paragraphs;
    }

    private boolean isOneLine(List<Run> runs) {
        return Paragraph.lines(type, runs, Measures.NOTE_LEAST, width).size() == 1;
    }

    private static int length(Fact line) {
        return line.label().length() + line.value().length();
    }
}
