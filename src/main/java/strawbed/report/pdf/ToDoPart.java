package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.report.CardWord;
import strawbed.report.CardWords;
import strawbed.report.ToDo;

/** What is still to do, each with a box to tick by pen. */
final class ToDoPart {
    private static final double TEXT_LEFT = Measures.TICK_BOX + 2;
    private static final double ROW_GAP = 1;
    private static final double COLUMN_GAP = 4;
    private static final int MOST_LINES = 2;
    private static final int MOST_COLUMNS = 2;

    private final Type type;
    private final List<ToDo> toDos;
    private final double width;
    private final double capHeight;
    private final CardWords words;

    /** @param capHeight of the words, in millimetres */
    ToDoPart(Type type, List<ToDo> toDos, double width, double capHeight, CardWords words) {
        this.words = words;
        this.type = type;
        this.toDos = toDos;
        this.width = width;
        this.capHeight = capHeight;
    }

    /** The height in which every task can be shown in no more columns than that. */
    double needed(int columns) {
        if (toDos.isEmpty()) {
            return lay(0).height();
        }
        double oneColumn = rows(toDos.size(), 1).height();
        return columns == 1
                ? oneColumn
                : Math.min(oneColumn, rows(toDos.size(), MOST_COLUMNS).height());
    }

    /** All in one column if they fit the room, else in two; else as many as fit, and how many are missing. */
    Block lay(double room) {
        if (toDos.isEmpty()) {
            return Paragraph.ofLines(type, Run.bold(words.word(CardWord.NOTHING_TO_DO)), capHeight, width, 1);
        }
        for (int shown = toDos.size(); shown > 0; shown--) {
            for (int columns = 1; columns <= MOST_COLUMNS; columns++) {
                Block block = rows(shown, columns);
                if (block.height() <= room) {
                    return block;
                }
            }
        }
        return rows(1, 2);
    }

    private Block rows(int shown, int columns) {
        double cell = (width - (columns - 1) * COLUMN_GAP) / columns;
        List<Block> cells = new ArrayList<>();
        toDos.subList(0, shown).forEach(toDo -> cells.add(task(toDo, cell)));
        if (shown < toDos.size()) {
            cells.add(withoutBox(words.more(toDos.size() - shown), cell));
        }
        List<Drawn> drawn = new ArrayList<>();
        double y = 0;
        int rows = (cells.size() + columns - 1) / columns;
        for (int row = 0; row < rows; row++) {
            double height = 0;
            for (int column = 0; row + column * rows < cells.size(); column++) {
                Block task = cells.get(row + column * rows);
                task.at(column * (cell + COLUMN_GAP), y).forEach(drawn::add);
                height = Math.max(height, task.height());
            }
            y += height + ROW_GAP;
        }
        return new Block(y - ROW_GAP, drawn);
    }

    private Block task(ToDo toDo, double cell) {
        List<Run> runs = Stream.of(new Run(toDo.when(), Weight.BOLD), new Run(toDo.what(), Weight.REGULAR))
                .filter(run -> !run.text().isBlank())
                .toList();
        Drawn box = new Drawn.Sign(new Box(0, 0, Measures.TICK_BOX, Measures.TICK_BOX), Form.TICK_BOX, false);
        return beside(Stream.of(box), runs, cell);
    }

    private Block withoutBox(String text, double cell) {
        return beside(Stream.empty(), Run.bold(text), cell);
    }

    private Block beside(Stream<Drawn> box, List<Run> runs, double cell) {
        Block text = Paragraph.ofLines(type, runs, capHeight, cell - TEXT_LEFT, MOST_LINES);
        double down = Math.max(0, (Measures.TICK_BOX - text.height()) / 2);
        List<Drawn> drawn = Stream.concat(box, text.at(TEXT_LEFT, down)).toList();
        return new Block(Math.max(Measures.TICK_BOX, text.height()), drawn);
    }
}
