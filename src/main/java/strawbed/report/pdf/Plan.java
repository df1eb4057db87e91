package strawbed.report.pdf;

import java.util.List;

/**
 * How the card's height is shared out.
 *
 * @param factLines the most lines the facts may take
 * @param head what the head gets at least, in millimetres
 * @param tasks the capitals of the words of what is to do, in millimetres
 * @param taskColumns in how many columns at most what is to do should stand
 */
record Plan(LaneSize lanes, int factLines, double head, double tasks, int taskColumns) {
    /**
     * From a roomy card to a crowded one; the first that holds everything is taken, else the last.
     *
     * <p>The last one prints tasks smaller than liked: a small task is read from nearer, a missing one not at all.
     */
    static List<Plan> lying(Head head, double whiteBelow) {
        double least = head.least(whiteBelow);
        return List.of(
                new Plan(LaneSize.ROOMY, 3, head.wanted(), Measures.READ, 2),
                new Plan(LaneSize.ROOMY, 3, 25, Measures.READ, 2),
                new Plan(LaneSize.CLOSE, 3, 24, Measures.READ, 2),
                new Plan(LaneSize.CLOSE, 3, least, Measures.READ, 2),
                new Plan(LaneSize.CLOSE, 2, least, Measures.READ, 2),
                new Plan(LaneSize.CLOSE, 2, least, Measures.NOTE, 2));
    }

    /** The same for a standing card: facts need more lines there, the number keeps its size, and
     * tasks side by side would be torn into two lines. */
    static List<Plan> standing(Head head, double whiteBelow) {
        double least = head.least(whiteBelow);
        double wanted = Math.max(least, head.wanted());
        double between = (least + wanted) / 2;
        return List.of(
                new Plan(LaneSize.ROOMY, 6, wanted, Measures.READ, 1),
                new Plan(LaneSize.CLOSE, 6, wanted, Measures.READ, 1),
                new Plan(LaneSize.CLOSE, 6, between, Measures.READ, 1),
                new Plan(LaneSize.CLOSE, 6, least, Measures.READ, 1),
                new Plan(LaneSize.CLOSE, 4, least, Measures.READ, 1),
                new Plan(LaneSize.CLOSE, 6, least, Measures.READ, 2),
                new Plan(LaneSize.CLOSE, 4, least, Measures.READ, 2),
                new Plan(LaneSize.CLOSE, 4, least, Measures.NOTE, 2),
                new Plan(LaneSize.CLOSE, 2, least, Measures.NOTE, 2));
    }
}
