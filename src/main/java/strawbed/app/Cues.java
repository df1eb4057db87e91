package strawbed.app;

import java.util.List;
import java.util.Optional;
import strawbed.audio.Cue;
import strawbed.dialog.Prompt;

/** The sound that goes before words: the gravest that the prompts ask for. */
final class Cues {
    private Cues() {}

    static Optional<Cue> of(List<Prompt> prompts) {
        return prompts.stream().flatMap(prompt -> of(prompt).stream()).max(Enum::compareTo);
    }

    private static Optional<Cue> of(Prompt prompt) {
        if (prompt instanceof Prompt.NotSaved
                || prompt instanceof Prompt.NotKept
                || prompt instanceof Prompt.KeptOpen) {
            return Optional.of(Cue.PROBLEM);
        }
        if (prompt instanceof Prompt.Ask
                || prompt instanceof Prompt.Warn
                || prompt instanceof Prompt.CannotConfirm
                || prompt instanceof Prompt.NotUnderstood) {
            return Optional.of(Cue.QUESTION);
        }
        if (prompt instanceof Prompt.Saved || prompt instanceof Prompt.Undone) {
            return Optional.of(Cue.SAVED);
        }
        return prompt instanceof Prompt.ReadBack ? Optional.of(Cue.HEARD) : Optional.empty();
    }
}
