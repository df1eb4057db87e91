package strawbed.account;

import java.util.List;

/**
 * One thing told of a calf.
 *
 * @param label what it is about; a clock time in the history
 * @param text what is known
 * @param reasons rules with their sources, and what is assumed, in full sentences; mostly none
 */
public record Line(String label, String text, List<String> reasons) {
    public Line {
        reasons = List.copyOf(reasons);
    }

    static Line of(String label, String text) {
        return new Line(label, text, List.of());
    }
}
