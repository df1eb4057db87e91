package strawbed.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioException;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.dialog.Dialog;
import strawbed.dialog.DialogInput;
import strawbed.dialog.DialogStep;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.hearing.Heard;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;
import strawbed.statement.Control;
import strawbed.statement.Doubt;
import strawbed.statement.Interpretation;
import strawbed.statement.Statement;

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
    private final LeftOpen left;
    private final Supplier<UUID> ids;
    private final String grammarVersion;
    private final String modelName;
    private Herd herd;
    private Dialog dialog = Dialog.START;
    private boolean paused;
    private @Nullable String operator;
    private @Nullable Kept current;
    private @Nullable Kept waiting;
    private @Nullable ByHand byHand;
    private Instant askedAt = Instant.EPOCH;

    /**
     * An utterance with its place in the sound folder.
     *
     * @param name of its file
     * @param isWritten whether the file could be written
     * @param open the open statement it is, if it is one
     */
    private record Kept(Heard heard, String name, boolean isWritten, LeftOpen.@Nullable Slip open) {
        /** Its file, if it has one. */
        @Nullable
        String sound() {
            return isWritten ? name : null;
        }
    }

    /**
     * How the pending statement came, where it was not spoken just now.
     *
     * @param at what its times are counted from
     * @param words it in words, should it be left
     * @param mends the open statement in whose place it comes
     */
    private record ByHand(
            Instant at, List<String> words, @Nullable UUID mends) {}

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
        this.left = new LeftOpen(journal, sounds);
        this.clock = clock;
        this.ids = ids;
        this.grammarVersion = grammarVersion;
        this.modelName = modelName;
        this.herd = herd;
        this.operator = herd.barn().stream()
                .map(RecordedEvent::event)
                .filter(Event.OperatorChosen.class::isInstance)
                .reduce((earlier, later) -> later)
                .map(chosen -> ((Event.OperatorChosen) chosen).operator())
                .orElse(null);
    }

    /** Who works, as was last chosen; each fact that is saved says so. */
    Optional<String> operator() {
        return Optional.ofNullable(operator);
    }

    /**
     * Chooses who works from now on, also after the next start.
     *
     * @param name null for nobody
     * @throws JournalException if the record does not take it; then nothing is changed
     */
    void choose(@Nullable String name) {
        if (!Objects.equals(name, operator)) {
            herd = herd.plus(journal.append(List.of(new NewEvent(
                    null,
                    new Event.OperatorChosen(name),
                    clock.instant(),
                    Provenance.of(Provenance.Source.BUTTON).by(name)))));
            operator = name;
        }
    }

    /** Notes something about the record itself that nobody said. */
    List<Prompt> note(Event event) {
        try {
            herd = herd.plus(journal.append(List.of(new NewEvent(
                    null,
                    event,
                    clock.instant(),
                    Provenance.of(Provenance.Source.COMMAND).by(operator)))));
            return List.of(new Prompt.Noticed(event));
        } catch (JournalException failure) {
            return List.of(new Prompt.NotKept(LeftOpen.sentence(failure)));
        }
    }

    /**
     * Takes prints into the record. They are no entry that somebody confirmed, so that an undo goes past them.
     *
     * @return empty if the record took them, else why not
     */
    Optional<String> notePrints(List<NewEvent> prints) {
        try {
            herd = herd.plus(journal.append(prints.stream()
                    .map(print -> new NewEvent(
                            print.calf(),
                            print.event(),
                            print.occurredAt(),
                            print.provenance().by(operator)))
                    .toList()));
            return Optional.empty();
        } catch (JournalException failure) {
            return Optional.of(LeftOpen.sentence(failure));
        }
    }

    Herd herd() {
        return herd;
    }

    /**
     * Takes a herd with more calves in the place of the one it has.
     *
     * @param wider of the same record; what was saved while it was read may be missing in it
     */
    void widen(Herd wider) {
        Set<EventId> known =
                wider.history().stream().map(entry -> entry.recorded().id()).collect(Collectors.toSet());
        herd = wider.plus(herd.history().stream()
                .map(CalfRecord.Entry::recorded)
                .filter(recorded -> !known.contains(recorded.id()))
                .toList());
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
        left.tryAgain();
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

    /**
     * Takes a statement that was put together by keys.
     *
     * @param words it in words, should nobody confirm it
     * @param mends the open statement in whose place it comes; its sound goes with it
     */
    List<Prompt> entered(Statement statement, List<Doubt> doubts, List<String> words, @Nullable OpenStatement mends) {
        left.tryAgain();
        Provenance keys = new Provenance(
                Provenance.Source.BUTTON, List.of(), null, null, null, mends == null ? null : soundOf(mends), null);
        List<Prompt> prompts = step(new DialogInput.Said(statement, doubts, keys, false));
        byHand = new ByHand(clock.instant(), words, mends == null ? null : mends.id());
        return prompts;
    }

    /** Takes what is made of an open statement by now; it is asked about, whatever was made of it. */
    List<Prompt> heardAgain(Interpretation meaning, OpenStatement open) {
        left.tryAgain();
        Provenance provenance = new Provenance(
                Provenance.Source.VOICE,
                meaning.words(),
                meaning.verdict(),
                grammarVersion,
                modelName,
                soundOf(open),
                null);
        List<Prompt> prompts;
        if (meaning instanceof Interpretation.Understood understood) {
            prompts = step(new DialogInput.Said(understood.statement(), List.of(), provenance, false));
        } else if (meaning instanceof Interpretation.Unsure unsure) {
            prompts = step(new DialogInput.Said(unsure.best(), unsure.doubts(), provenance, false));
        } else {
            return List.of(new Prompt.NotUnderstood());
        }
        byHand = new ByHand(open.statement().from(), meaning.words(), open.id());
        return prompts;
    }

    private static @Nullable String soundOf(OpenStatement open) {
        return open.statement().hasSound() ? open.statement().sound() : null;
    }

    /**
     * An open statement came to its end.
     *
     * @return empty if the record took it, else why not
     */
    Optional<String> settle(UUID open, String how) {
        try {
            journal.settle(open, how);
            return Optional.empty();
        } catch (JournalException failure) {
            return Optional.of(LeftOpen.sentence(failure));
        }
    }

    /**
     * An open statement becomes a note on a calf.
     *
     * @return empty if the record took it, else why not
     */
    Optional<String> keepAsNote(OpenStatement open, CalfId calf) {
        Optional<String> refused = notePrints(List.of(new NewEvent(
                calf,
                new Event.VoiceNoteTaken(soundOf(open)),
                open.statement().from(),
                new Provenance(
                        Provenance.Source.BUTTON,
                        open.statement().words(),
                        open.statement().verdict(),
                        null,
                        null,
                        soundOf(open),
                        null))));
        return refused.isPresent() ? refused : settle(open.id(), "kept as a note");
    }

    /** What was said and not confirmed, the newest first. */
    List<OpenStatement> open() {
        List<OpenStatement> open = new ArrayList<>(journal.openStatements());
        Collections.reverse(open);
        return open;
    }

    /** The statement that waits for its confirmation. */
    Optional<Pending> pending() {
        return Optional.ofNullable(dialog.pending());
    }

    /** The calf named last. */
    Optional<CalfId> named() {
        return Optional.ofNullable(dialog.sameCalf());
    }

    /** A button or key. */
    List<Prompt> pressed(Control control) {
        left.tryAgain();
        return step(new DialogInput.Ordered(control, null, Provenance.Source.BUTTON));
    }

    /** Looks whether a statement has waited too long. */
    List<Prompt> tick() {
        return isPending() && askedAt.plus(PATIENCE).isBefore(clock.instant()) ? stop() : List.of();
    }

    /** Puts a pending statement among the open ones, at the end of listening. */
    List<Prompt> stop() {
        left.tryAgain();
        boolean waitedBefore = left.isWaiting();
        List<Prompt> prompts = new ArrayList<>(step(new DialogInput.TimedOut()));
        if (waitedBefore && prompts.stream().noneMatch(Prompt.NotKept.class::isInstance)) {
            prompts.add(new Prompt.NotKept(left.refusal()));
        }
        return prompts;
    }

    private static boolean isWakeUp(Interpretation meaning) {
        return meaning instanceof Interpretation.ControlHeard heard && heard.control() == Control.WAKE_UP_RECORDER;
    }

    private Kept keepSound(Heard heard, List<Prompt> prompts) {
        Kept before = heard.goesOn() ? current : null;
        if (before != null && before.open() != null) {
            left.settle(before.open(), "the speaker went on");
            tellUnlessKept(before.open(), prompts);
        }
        String name = before == null ? sounds.newName() : before.name();
        Kept kept;
        try {
            sounds.write(name, heard.sound());
            kept = new Kept(heard, name, true, null);
        } catch (AudioException failure) {
            prompts.add(new Prompt.NotKept(LeftOpen.sentence(failure)));
            kept = new Kept(heard, name, false, null);
        }
        current = kept;
        return kept;
    }

    /** Nothing is called kept that is not. */
    private void tellUnlessKept(LeftOpen.Slip slip, List<Prompt> prompts) {
        if (!slip.isKept()) {
            prompts.removeIf(Prompt.KeptOpen.class::isInstance);
            prompts.add(new Prompt.NotKept(left.refusal()));
        }
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
        step.keep().forEach(kept -> leave(kept).ifPresent(slip -> tellUnlessKept(slip, prompts)));
        if (input instanceof DialogInput.Said) {
            waiting = current;
            askedAt = clock.instant();
        }
        if (input instanceof DialogInput.Said || dialog.pending() == null) {
            byHand = null;
        }
        if (!step.append().isEmpty()) {
            ByHand hand = byHand;
            prompts.addAll(step(append(step)));
            // An undo leaves what waits as it is.
            if (hand != null && hand.mends() != null && dialog.pending() == null) {
                settle(hand.mends(), "mended").ifPresent(refusal -> prompts.add(new Prompt.NotKept(refusal)));
            }
        }
        return prompts;
    }

    private DialogInput append(DialogStep step) {
        try {
            List<RecordedEvent> saved = journal.append(step.append().stream()
                    .map(fact -> new NewEvent(
                            fact.calf(),
                            fact.event(),
                            fact.occurredAt(),
                            fact.provenance().by(operator)))
                    .toList());
            herd = herd.plus(saved);
            return new DialogInput.Committed(saved);
        } catch (JournalException failure) {
            return new DialogInput.Failed(LeftOpen.sentence(failure));
        }
    }

    /** What nobody confirmed is left open: what was spoken with its sound, what was pressed in words. */
    private Optional<LeftOpen.Slip> leave(DialogStep.Kept one) {
        ByHand hand = byHand;
        if (hand == null || one.why().equals("not understood")) {
            return Optional.of(keepOpen(one));
        }
        if (hand.mends() != null || one.why().equals("cancelled")) {
            // What it mends is still open; and what was pressed by mistake is nobody's.
            return Optional.empty();
        }
        return Optional.of(left.leave(
                new NewOpenStatement(
                        hand.at(), Duration.ZERO, "by hand", hand.words(), null, NewOpenStatement.NO_SOUND),
                null,
                null));
    }

    private LeftOpen.Slip keepOpen(DialogStep.Kept one) {
        Kept of = waiting != null && isOf(waiting, one.provenance()) ? waiting : current;
        if (of == null) {
            throw new AssertionError("a statement was left that nobody heard: " + one);
        }
        Heard heard = of.heard();
        LeftOpen.Slip slip = left.leave(
                new NewOpenStatement(
                        heard.speech().start(),
                        heard.sound().duration(),
                        heard.meaning().verdict(),
                        heard.meaning().words(),
                        null,
                        of.name()),
                of.isWritten() ? null : heard.sound(),
                one.why().equals("cancelled") ? one.why() : null);
        if (!one.why().equals("cancelled") && of.equals(current)) {
            current = new Kept(heard, of.name(), of.isWritten(), slip);
        }
        return slip;
    }

    /** By its sound; where that could not be written, by its words. */
    private static boolean isOf(Kept kept, Provenance provenance) {
        return Objects.equals(kept.sound(), provenance.sound())
                && (kept.isWritten() || kept.heard().meaning().words().equals(provenance.words()));
    }
}
