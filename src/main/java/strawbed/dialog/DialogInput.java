package strawbed.dialog;

import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.Doubt;
import strawbed.statement.Statement;

/** What comes to the dialog. */
public sealed interface DialogInput {
    /**
     * A statement was heard.
     *
     * @param doubts what must be asked; empty when it was understood
     * @param provenance its words, verdict and sound
     * @param goesOn whether it takes the place of the pending one, because the speaker went on after a pause
     */
    record Said(Statement statement, List<Doubt> doubts, Provenance provenance, boolean goesOn) implements DialogInput {
        public Said {
            doubts = List.copyOf(doubts);
        }
    }

    /** Speech that is no statement. */
    record NotUnderstood(Provenance provenance) implements DialogInput {}

    /**
     * A control, by voice, button, pedal or key: the dialog cannot tell them apart.
     *
     * @param calf the calf it names, for those that name one
     * @param source how it came, for the record
     */
    record Ordered(Control control, @Nullable CalfReference calf, Provenance.Source source) implements DialogInput {}

    /** The record has taken the events; only now are they saved. */
    record Committed(List<RecordedEvent> events) implements DialogInput {
        public Committed {
            events = List.copyOf(events);
        }
    }

    /** The record has not taken them. */
    record Failed(String reason) implements DialogInput {}

    /** Nobody answered in time, or the recorder stops. */
    record TimedOut() implements DialogInput {}
}
