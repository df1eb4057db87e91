package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Sets blocks side by side while they fit the width, else under each other, as words are set in a line. */
final class Flow {
    private Flow() {}

    static Block of(List<Block> blocks, double width, double gap) {
        List<Drawn> drawn = new ArrayList<>();
        double y = 0;
        for (Block line : lines(blocks, width, gap)) {
            line.at(0, y).forEach(drawn::add);
            y += line.height();
        }
        return new Block(y, drawn);
    }

    /** Each line as a block of its own. */
    static List<Block> lines(List<Block> blocks, double width, double gap) {
        List<Block> lines = new ArrayList<>();
        List<Drawn> drawn = new ArrayList<>();
        double x = 0;
        double height = 0;
        for (Block block : blocks) {
            if (x > 0 && x + block.width() > width) {
                lines.add(new Block(height, drawn));
                drawn = new ArrayList<>();
                x = 0;
                height = 0;
            }
            block.at(x, 0).forEach(drawn::add);
            x += block.width() + gap;
            height = Math.max(height, block.height());
        }
        lines.add(new Block(height, drawn));
        return lines;
    }
}
