package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/** The foot of a card: what was measured, then the last lines. */
final class FootPart {
    private static final double GAP = 1;

    private FootPart() {}

    static Block of(Block facts, Block footer) {
        double footerTop = facts.height() == 0 ? 0 : facts.height() + GAP;
        List<Drawn> drawn = new ArrayList<>(facts.drawn());
        footer.at(0, footerTop).forEach(drawn::add);
        return new Block(footerTop + footer.height(), drawn);
    }
}
