package strawbed.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioException;
import strawbed.calf.Herd;
import strawbed.dialog.Dialog;
import strawbed.dialog.DialogInput;
import strawbed.dialog.DialogStep;
import strawbed.dialog.Prompt;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.hearing.Heard;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;
import strawbed.statement.Control;
import strawbed.statement.Interpretation;

/**
 * The recorder between ears and record: it feeds the dialog, appends what was confirmed, keeps what was not. The same
 * for microphone, demo and tests. Owned by one thread.
 */
final class Recorder {
    /** A statement that nobody answers for so long goes to the open ones. */
    static final Duration PATIENCE = Duration.ofSeconds(45);

    private final EventJournal journal;
    private final SoundFolder sounds;
    private final Clock clock;
    private final Supplier<UUID> ids;
    private final String grammarVersion;
    private final String modelName;
    private Herd herd;
    private Dialog dialog = Dialog.START;
    private boolean paused;
    private @Nullable Kept current;
    private @Nullable Kept waiting;
    private Instant askedAt = Instant.EPOCH;

    /**
     * An utterance with its place in the sound folder.
     *
     * @param sound its file name; null when it could not be written
     * @param open the open statement it is, if it is one
     */
    private record Kept(
            Heard heard, @Nullable String sound, @Nullable UUID open) {}

    /** @param herd the calves that can be spoken of, with all that the record knows of them */
    Recorder(
            EventJournal journal,
            Herd herd,
            SoundFolder sounds,
            Clock clock,
            Supplier<UUID> ids,
            String grammarVersion,
            String modelName) {
        this.journal = journal;
        this.sounds = sounds;
        this.clock = clock;
        this.ids = ids;
        this.grammarVersion = grammarVersion;
        this.modelName = modelName;
        this.herd = herd;
    }

    Herd herd() {
        return herd;
    }

    /** Whether a statement waits for its confirmation. */
    boolean isPending() {
        return dialog.pending() != null;
    }

    /** Whether it listens for nothing but being woken; nothing is kept meanwhile. */
    boolean isPaused() {
        return paused;
    }

    /** Whether "same calf" means one. */
    boolean knowsSameCalf() {
        return dialog.sameCalf() != null;
    }

    /** Takes an utterance and gives what to say; nothing while it is paused. */
    List<Prompt> heard(Heard heard) {
        Interpretation meaning = heard.meaning();
        if (paused && !isWakeUp(meaning)) {
            return List.of();
        }
        if (meaning instanceof Interpretation.ControlHeard control) {
            return step(new DialogInput.Ordered(control.control(), control.calf(), Provenance.Source.VOICE));
        }
        List<Prompt> prompts = new ArrayList<>();
        Kept kept = keepSound(heard, prompts);
        Provenance provenance = new Provenance(
                Provenance.Source.VOICE,
                meaning.words(),
                meaning.verdict(),
                grammarVersion,
                modelName,
                kept.sound(),
                null);
        if (meaning instanceof Interpretation.Understood understood) {
            prompts.addAll(step(new DialogInput.Said(understood.statement(), List.of(), provenance, heard.goesOn())));
        } else if (meaning instanceof Interpretation.Unsure unsure) {
            prompts.addAll(step(new DialogInput.Said(unsure.best(), unsure.doubts(), provenance, heard.goesOn())));
        } else {
            prompts.addAll(step(new DialogInput.NotUnderstood(provenance)));
        }
        return prompts;
    }

    /** A button or key. */
    List<Prompt> pressed(Control control) {
        return step(new DialogInput.Ordered(control, null, Provenance.Source.BUTTON));
    }

    /** Looks whether a statement has waited too long. */
    List<Prompt> tick() {
        return isPending() && askedAt.plus(PATIENCE).isBefore(clock.instant()) ? stop() : List.of();
    }

    /** Puts a pending statement among the open ones, at the end of listening. */
    List<Prompt> stop() {
        return step(new DialogInput.TimedOut());
    }

    private static boolean isWakeUp(Interpretation meaning) {
        return meaning instanceof Interpretation.ControlHeard heard && heard.control() == Control.WAKE_UP_RECORDER;
    }

    private Kept keepSound(Heard heard, List<Prompt> prompts) {
        Kept before = heard.goesOn() ? current : null;
        if (before != null && before.open() != null) {
            journal.settle(before.open(), "the speaker went on");
        }
        String again = before == null ? null : before.sound();
        String name = again == null ? sounds.newName() : again;
        Kept kept;
        try {
            sounds.write(name, heard.sound());
            kept = new Kept(heard, name, null);
        } catch (AudioException failure) {
            prompts.add(new Prompt.NotSaved(sentence(failure)));
            kept = new Kept(heard, null, null);
        }
        current = kept;
        return kept;
    }

    private static String sentence(RuntimeException failure) {
        return Objects.requireNonNullElse(failure.getMessage(), failure.toString());
    }

    private List<Prompt> step(DialogInput input) {
        List<Prompt> prompts = new ArrayList<>();
        DialogStep step = dialog.step(input, herd, clock.instant(), ids);
        dialog = step.next();
        if (input instanceof DialogInput.Ordered order) {
            paused = order.control() == Control.PAUSE_RECORDER
                    || (paused && order.control() != Control.WAKE_UP_RECORDER);
        }
        prompts.addAll(step.prompts());
        step.keep().forEach(this::keepOpen);
        if (input instanceof DialogInput.Said) {
            waiting = current;
            askedAt = clock.instant();
        }
        if (!step.append().isEmpty()) {
            prompts.addAll(step(append(step)));
        }
        return prompts;
    }

    private DialogInput append(DialogStep step) {
        try {
            List<RecordedEvent> saved = journal.append(step.append());
            herd = herd.plus(saved);
            return new DialogInput.Committed(saved);
        } catch (JournalException failure) {
            return new DialogInput.Failed(sentence(failure));
        }
    }

    private void keepOpen(DialogStep.Kept left) {
        Kept of = left.provenance().sound() != null
                        && waiting != null
                        && left.provenance().sound().equals(waiting.sound())
                ? waiting
                : current;
        if (of == null) {
            throw new AssertionError("a statement was left that nobody heard: " + left);
        }
        Heard heard = of.heard();
        UUID open = journal.keep(new NewOpenStatement(
                        heard.speech().start(),
                        heard.sound().duration(),
                        heard.meaning().verdict(),
                        heard.meaning().words(),
                        null,
                        String.valueOf(left.provenance().sound())))
                .id();
        if (left.why().equals("cancelled")) {
            journal.settle(open, left.why());
        } else if (of.equals(current)) {
            current = new Kept(heard, of.sound(), open);
        }
    }
}
