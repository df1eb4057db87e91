package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;
import strawbed.report.RecordSheet;

/** Places a dead calf's record on the sheet: head, what was recorded, facts, last lines. */
final class RecordLayout {
    private static final int FACT_LINES = 3;
    private static final int FACT_LINES_STANDING = 6;
    private static final double PART_GAP = 1;
    /** What the list gets at least: four lines. */
    private static final double LIST_LEAST = 4 * Measures.NOTE_LEAST * Typeface.LINE;

    private RecordLayout() {}

    /** Everything on the sheet, in the order of reading. */
    static List<Drawn> of(Type type, RecordSheet sheet, CardPaper paper) {
        double width = paper.width() - 2 * Measures.MARGIN;
        double height = paper.height() - 2 * Measures.MARGIN;
        Head head = paper.isUpright()
                ? new UprightHead(type, sheet.head(), width)
                : new LyingHead(type, sheet.head(), width, LyingHead.READ_IN_HAND);
        Block foot = FootPart.of(
                new FactPart(type, sheet.facts(), width, sheet.words())
                        .lay(paper.isUpright() ? FACT_LINES_STANDING : FACT_LINES),
                new FooterPart(type, sheet.foot(), sheet.words(), false).lay(width));
        double ruled = CardLayout.ruled(CardLayout.RULE_GAP);
        double room = height - foot.height() - 2 * ruled - PART_GAP;
        RecordedPart recorded = new RecordedPart(type, sheet.recorded(), width, sheet.words());
        double least = head.least(CardLayout.RULE_GAP);
        double listNeeds = Math.max(LIST_LEAST, recorded.lay(room - least).height());
        double headRoom = Math.max(least, Math.min(head.wanted(), room - listNeeds));
        Block top = head.lay(headRoom);
        double headHeight = Math.max(top.height(), least);
        Block list = recorded.lay(room - headHeight);
        List<Drawn> drawn = new ArrayList<>(top.drawn());
        double y = headHeight;
        drawn.add(rule(y, width));
        list.at(0, y + ruled).forEach(drawn::add);
        double footTop = height - foot.height();
        drawn.add(rule(footTop - ruled, width));
        foot.at(0, footTop).forEach(drawn::add);
        return drawn.stream()
                .map(thing -> thing.moved(Measures.MARGIN, Measures.MARGIN))
                .toList();
    }

    private static Drawn rule(double y, double width) {
        return new Drawn.Bar(new Box(0, y + CardLayout.RULE_GAP, width, Measures.RULE));
    }
}
