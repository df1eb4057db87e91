package strawbed.report.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * Places cards of true size on standing sheets of an office printer, two on each, with lines to cut along. What is cut
 * away is at least 6 mm on every side, as plain printers leave a few millimetres white: common practice, no published
 * source.
 */
final class TwoUpLayout {
    private static final int ON_A_SHEET = 2;
    /** From a card's corner to a mark, so that no line stays on the card. */
    private static final double MARK_GAP = 1;

    private static final double MARK = 5;

    private TwoUpLayout() {}

    /**
     * The sheets.
     *
     * @param cards lying ones, each laid out from its own upper left corner
     */
    static List<List<Drawn>> of(List<List<Drawn>> cards, CardPaper card, SheetPaper sheet) {
        double left = (sheet.width() - card.width()) / 2;
        double white = (sheet.height() - ON_A_SHEET * card.height()) / (ON_A_SHEET + 1);
        List<List<Drawn>> sheets = new ArrayList<>();
        for (int first = 0; first < cards.size(); first += ON_A_SHEET) {
            List<Drawn> drawn = new ArrayList<>();
            for (int place = 0; place < ON_A_SHEET && first + place < cards.size(); place++) {
                double top = white + place * (card.height() + white);
                for (Drawn thing : cards.get(first + place)) {
                    drawn.add(thing.moved(left, top));
                }
                addMarks(new Box(left, top, card.width(), card.height()), drawn);
            }
            sheets.add(drawn);
        }
        return sheets;
    }

    /** Two lines at each corner, in the line of the edges. */
    private static void addMarks(Box card, List<Drawn> drawn) {
        double half = Measures.THIN_LINE / 2;
        for (double x : List.of(card.x(), card.right())) {
            drawn.add(bar(x - half, card.y() - MARK_GAP - MARK, Measures.THIN_LINE, MARK));
            drawn.add(bar(x - half, card.bottom() + MARK_GAP, Measures.THIN_LINE, MARK));
        }
        for (double y : List.of(card.y(), card.bottom())) {
            drawn.add(bar(card.x() - MARK_GAP - MARK, y - half, MARK, Measures.THIN_LINE));
            drawn.add(bar(card.right() + MARK_GAP, y - half, MARK, Measures.THIN_LINE));
        }
    }

    private static Drawn bar(double x, double y, double width, double height) {
        return new Drawn.Bar(new Box(x, y, width, height));
    }
}
