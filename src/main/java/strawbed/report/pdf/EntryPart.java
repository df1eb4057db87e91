package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.report.SheetEntry;
import strawbed.report.ToDo;

/** One entry of a sheet in columns: what it is found by, then what is to do and what is told. */
final class EntryPart {
    private static final double SIZE = Measures.NOTE;
    private static final double TASK_TEXT = Measures.TICK_BOX + 2;
    private static final double TASK_ROW = Measures.TICK_BOX + 0.8;
    private static final double TASK_GAP = 3;
    /** Boxes begin at one of so many places in a line, so that they stand under each other. */
    private static final int TASK_PLACES = 6;

    private static final double SIGN = 4.4;
    private static final double SIGN_ROOM = SIGN + 2;

    private final Type type;
    private final double width;
    private final double lead;

    /** @param lead the width of what entries are found by */
    EntryPart(Type type, double width, double lead) {
        this.type = type;
        this.width = width;
        this.lead = lead;
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
            columns.add(new Column(left, words(Run.bold(entry.lead()), lead)));
            left += lead + SheetMeasures.COLUMN_GAP;
        }
        columns.add(new Column(left, told(entry, width - left)));
        return across(columns);
    }

    private List<Block> told(SheetEntry entry, double column) {
        List<Block> lines = new ArrayList<>(tasks(entry.toDos(), column));
        // Under the words of the tasks, so that the boxes stand free.
        double indent = lines.isEmpty() ? 0 : TASK_TEXT;
        words(runs(entry.strong(), entry.text()), column - indent)
                .forEach(line ->
                        lines.add(new Block(line.height(), line.at(indent, 0).toList())));
        return lines;
    }

    private List<Block> tasks(List<ToDo> toDos, double column) {
        double place = column / TASK_PLACES;
        List<Block> lines = new ArrayList<>();
        List<Drawn> drawn = new ArrayList<>();
        double x = 0;
        double height = 0;
        for (ToDo toDo : toDos) {
            Block task = task(toDo, column);
            if (x > 0 && x + task.width() > column) {
                lines.add(new Block(height, drawn));
                drawn = new ArrayList<>();
                x = 0;
                height = 0;
            }
            task.at(x, 0).forEach(drawn::add);
            x = place * Math.ceil((x + task.width() + TASK_GAP) / place);
            height = Math.max(height, task.height());
        }
        if (!drawn.isEmpty()) {
            lines.add(new Block(height, drawn));
        }
        return lines;
    }

    private Block task(ToDo toDo, double column) {
        Block text =
                Paragraph.ofLines(type, runs(toDo.when(), toDo.what()), SIZE, column - TASK_TEXT, Integer.MAX_VALUE);
        double height = Math.max(TASK_ROW, text.height());
        Drawn box = new Drawn.Sign(
                new Box(0, (TASK_ROW - Measures.TICK_BOX) / 2, Measures.TICK_BOX, Measures.TICK_BOX),
                Form.TICK_BOX,
                false);
        double textTop = (height - text.height()) / 2;
        return new Block(
                height,
                Stream.concat(Stream.of(box), text.at(TASK_TEXT, textTop)).toList());
    }

    private static List<Run> runs(String bold, String regular) {
        return Stream.of(new Run(bold, Weight.BOLD), new Run(regular, Weight.REGULAR))
                .filter(run -> !run.text().isBlank())
                .toList();
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
