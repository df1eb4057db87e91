package strawbed.report.pdf;

import java.util.List;

/**
 * How the card's height is shared out.
 *
 * @param factLines the most lines the facts may take
 * @param head what the head gets at least, in millimetres
 * @param tasks the capitals of the words of what is to do, in millimetres
 */
record Plan(LaneSize lanes, int factLines, double head, double tasks) {
    /**
     * From a roomy card to a crowded one; the first that holds everything is taken, else the last.
     *
     * <p>The last one prints tasks smaller than liked: a small task is read from nearer, a missing one not at all.
     */
    static List<Plan> fromRoomyToCrowded(double headLeast) {
        return List.of(
                new Plan(LaneSize.ROOMY, 3, 30, Measures.READ),
                new Plan(LaneSize.ROOMY, 3, 25, Measures.READ),
                new Plan(LaneSize.CLOSE, 3, 24, Measures.READ),
                new Plan(LaneSize.CLOSE, 3, headLeast, Measures.READ),
                new Plan(LaneSize.CLOSE, 2, headLeast, Measures.READ),
                new Plan(LaneSize.CLOSE, 2, headLeast, Measures.NOTE));
    }
}
