package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** Sets blocks side by side while they fit the width, else under each other, as words are set in a line. */
final class Flow {
    private Flow() {}

    static Block of(List<Block> blocks, double width, double gap) {
        List<Drawn> drawn = new ArrayList<>();
        double x = 0;
        double y = 0;
        double height = 0;
        for (Block block : blocks) {
            if (x > 0 && x + block.width() > width) {
                x = 0;
                y += height;
                height = 0;
            }
            block.at(x, y).forEach(drawn::add);
            x += block.width() + gap;
            height = Math.max(height, block.height());
        }
        return new Block(y + height, drawn);
    }
}
