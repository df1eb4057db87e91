package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.report.SheetEntry;

/** One entry of a sheet in columns: what it is found by, whom it is about, what is to do and what is told. */
final class EntryPart {
    private static final double SIZE = Measures.NOTE;
    private static final double TASK_TEXT = Measures.TICK_BOX + 2;
    private static final double TASK_GAP = 5;
    private static final double TASK_ROW = Measures.TICK_BOX + 0.8;
    private static final double SIGN = 4.4;
    private static final double SIGN_ROOM = SIGN + 2;

    private final Type type;
    private final double width;

    EntryPart(Type type, double width) {
        this.type = type;
        this.width = width;
    }

    /** The entry as lines across all columns, so that one too long for a page can go on on the next. */
    List<Block> lines(SheetEntry entry) {
        List<Column> columns = new ArrayList<>();
        double left = 0;
        if (entry.warns()) {
            columns.add(new Column(0, List.of(sign())));
            left = SIGN_ROOM;
        }
        if (!entry.lead().isBlank()) {
            columns.add(new Column(left, words(Run.bold(entry.lead()), SheetMeasures.LEAD)));
            left += SheetMeasures.LEAD + SheetMeasures.COLUMN_GAP;
        }
        if (!entry.who().isBlank()) {
            columns.add(new Column(left, words(Run.bold(entry.who()), SheetMeasures.WHO)));
            left += SheetMeasures.WHO + SheetMeasures.COLUMN_GAP;
        }
        columns.add(new Column(left, told(entry, width - left)));
        return across(columns);
    }

    private List<Block> told(SheetEntry entry, double column) {
        List<Block> lines = new ArrayList<>(tasks(entry.tasks(), column));
        List<Run> runs = Stream.of(new Run(entry.strong(), Weight.BOLD), new Run(entry.text(), Weight.REGULAR))
                .filter(run -> !run.text().isBlank())
                .toList();
        lines.addAll(words(runs, column));
        return lines;
    }

    private List<Block> tasks(List<String> tasks, double column) {
        List<Block> boxes = tasks.stream().map(task -> task(task, column)).toList();
        return boxes.isEmpty() ? List.of() : Flow.lines(boxes, column, TASK_GAP);
    }

    private Block task(String words, double column) {
        Block text = Paragraph.ofLines(
                type, List.of(new Run(words, Weight.REGULAR)), SIZE, column - TASK_TEXT, Integer.MAX_VALUE);
        double height = Math.max(TASK_ROW, text.height());
        double boxTop = (Math.min(height, TASK_ROW) - Measures.TICK_BOX) / 2;
        Drawn box = new Drawn.Sign(new Box(0, boxTop, Measures.TICK_BOX, Measures.TICK_BOX), Form.TICK_BOX, false);
        return new Block(
                height,
                Stream.concat(Stream.of(box), text.at(TASK_TEXT, (height - text.height()) / 2))
                        .toList());
    }

    private Block sign() {
        return new Block(SIGN, List.of(new Drawn.Sign(new Box(0, 0, SIGN, SIGN), Form.WARNING, true)));
    }

    private List<Block> words(List<Run> runs, double column) {
        return Paragraph.lines(type, runs, SIZE, column);
    }

    private static List<Block> across(List<Column> columns) {
        int count =
                columns.stream().mapToInt(column -> column.lines().size()).max().orElse(0);
        List<Block> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            lines.add(across(columns, i));
        }
        return lines;
    }

    /** One line of every column, in the middle of the highest. */
    private static Block across(List<Column> columns, int line) {
        List<Column> there =
                columns.stream().filter(column -> line < column.lines().size()).toList();
        double height = there.stream()
                .mapToDouble(column -> column.lines().get(line).height())
                .max()
                .orElse(0);
        List<Drawn> drawn = new ArrayList<>();
        for (Column column : there) {
            Block block = column.lines().get(line);
            block.at(column.left(), (height - block.height()) / 2).forEach(drawn::add);
        }
        return new Block(height, drawn);
    }

    private record Column(double left, List<Block> lines) {}
}
