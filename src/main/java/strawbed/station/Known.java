package strawbed.station;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import strawbed.calf.Herd;
import strawbed.care.DueItem;
import strawbed.dialog.Pending;
import strawbed.event.CalfId;
import strawbed.journal.OpenStatement;

/**
 * What the station knows at one moment: all that a screen is made of.
 *
 * @param note something that must be known, such as that there is no microphone; may be empty
 * @param operator who works
 * @param pending the statement that waits for its answer
 * @param named the calf named last
 * @param told what came of the last thing said
 * @param asked what was asked about the pending statement
 * @param due the open items of the herd, the most urgent first
 * @param open what was said and not confirmed, the newest first
 * @param canPutOff whether a late task was announced that can be put off
 * @param microphones the names of those that are there
 * @param papers the pages on their way to the printer
 * @param keyNames how keys of pedal and keyboard are called, by their codes
 */
public record Known(
        Herd herd,
        Instant now,
        Sign sign,
        String note,
        Optional<String> operator,
        Optional<Pending> pending,
        Optional<CalfId> named,
        Told told,
        String asked,
        List<DueItem> due,
        List<OpenStatement> open,
        boolean canPutOff,
        List<String> microphones,
        Papers papers,
        Map<Integer, String> keyNames,
        Choices choices) {
    public Known {
        due = List.copyOf(due);
        open = List.copyOf(open);
        microphones = List.copyOf(microphones);
        keyNames = Map.copyOf(keyNames);
    }

    /** The same with other news of the last thing said. */
    public Known telling(Told other) {
        return new Known(
                herd,
                now,
                sign,
                note,
                operator,
                pending,
                named,
                other,
                asked,
                due,
                open,
                canPutOff,
                microphones,
                papers,
                keyNames,
                choices);
    }
}
