package strawbed.dialog;

import java.util.List;
import strawbed.event.Provenance;
import strawbed.statement.Doubt;
import strawbed.statement.Statement;

/**
 * A statement that waits for its confirmation.
 *
 * @param target whose facts they will be
 * @param doubts what was asked about it
 */
public record Pending(Statement statement, Target target, List<Doubt> doubts, Provenance provenance) {
    public Pending {
        doubts = List.copyOf(doubts);
    }

    /** Whether a yes is enough to make facts of it. */
    public boolean canBeConfirmed() {
        return !(target instanceof Target.Unknown)
                && !statement.facts().isEmpty()
                && doubts.stream().noneMatch(Doubt.Incomplete.class::isInstance);
    }
}
