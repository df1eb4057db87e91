package strawbed.app;

import java.util.Set;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.dialog.Target;
import strawbed.entry.EntryGroup;

/**
 * Which prompts are only shown, as people chose for what they are about. What is doubtful, refused or new is always spoken.
 * Owned by one thread.
 */
final class Unspoken {
    private boolean wasLast;

    /** Whether a prompt is shown only; that something was saved as what was read back before it. */
    boolean holds(Prompt prompt, Set<EntryGroup> chosen) {
        if (prompt instanceof Prompt.ReadBack readBack) {
            wasLast = isPlain(readBack.pending()) && isAbout(readBack.pending(), chosen);
            return wasLast;
        }
        if (prompt instanceof Prompt.Saved) {
            return wasLast;
        }
        wasLast &= !(prompt instanceof Prompt.Ask);
        return false;
    }

    /** Of a calf that the record knows, and there is nothing to be asked. */
    private static boolean isPlain(Pending pending) {
        return pending.canBeConfirmed()
                && pending.doubts().isEmpty()
                && (pending.target() instanceof Target.Known || pending.target() instanceof Target.Barn);
    }

    private static boolean isAbout(Pending pending, Set<EntryGroup> chosen) {
        return pending.statement().facts().stream()
                .allMatch(fact ->
                        EntryGroup.of(fact.event()).filter(chosen::contains).isPresent());
    }
}
