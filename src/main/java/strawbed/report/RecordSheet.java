package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * The words of what was recorded of a dead calf: nothing to do, and no cause.
 *
 * @param title what the file is called in a viewer
 * @param recorded what was done and seen, each under its time, in the order in which it happened
 * @param facts what was measured, and what was not recorded
 */
public record RecordSheet(
        String title, CalfHead head, List<Fact> recorded, List<Fact> facts, CardFoot foot, CardWords words)
        implements CalfPage {
    public RecordSheet {
        Objects.requireNonNull(title);
        Objects.requireNonNull(head);
        recorded = List.copyOf(recorded);
        facts = List.copyOf(facts);
        Objects.requireNonNull(foot);
        Objects.requireNonNull(words);
    }
}
