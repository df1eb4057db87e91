package strawbed.dialog;

import java.util.List;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;

/**
 * What follows from one input.
 *
 * @param next the dialog from now on
 * @param prompts what to say and show, in this order
 * @param append events for the record, all or none; the outcome comes back as the next input
 * @param keep statements that go to the open ones; the caller keeps their sound
 */
public record DialogStep(Dialog next, List<Prompt> prompts, List<NewEvent> append, List<Kept> keep) {
    public DialogStep {
        prompts = List.copyOf(prompts);
        append = List.copyOf(append);
        keep = List.copyOf(keep);
    }

    /** A statement that nobody confirmed, or speech that was not understood. */
    public record Kept(Provenance provenance, String why) {}
}
