package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Sets blocks under each other in as many columns as they need, in their order. */
final class Columns {
    private static final double STEP = 1;

    private Columns() {}

    /** Each column as full as it gets; a block higher than the room has a column of its own. */
    static List<Block> fill(List<Block> blocks, double room, double gap) {
        List<Block> columns = new ArrayList<>();
        List<Drawn> drawn = new ArrayList<>();
        double y = 0;
        for (Block block : blocks) {
            if (y > 0 && y + gap + block.height() > room) {
                columns.add(new Block(y, drawn));
                drawn = new ArrayList<>();
                y = 0;
            }
            double top = y > 0 ? y + gap : 0;
            block.at(0, top).forEach(drawn::add);
            y = top + block.height();
        }
        if (y > 0) {
            columns.add(new Block(y, drawn));
        }
        return columns;
    }

    /** No more columns than that, their heights as even as the order allows. */
    static List<Block> even(List<Block> blocks, int columns, double room, double gap) {
        List<Block> filled = fill(blocks, room, gap);
        for (double less = room - STEP; less > 0; less -= STEP) {
            List<Block> evener = fill(blocks, less, gap);
            if (evener.size() > columns || highest(evener) > less) {
                return filled;
            }
            filled = evener;
        }
        return filled;
    }

    private static double highest(List<Block> columns) {
        return columns.stream().mapToDouble(Block::height).max().orElse(0);
    }
}
