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
    private final Clock clock;
    private final LeftOpen left;
    private final Origins origins;
    private final Supplier<UUID> ids;
    private final Supplier<String> grammarVersion;
    private final Supplier<String> modelName;
    private Herd herd;
    private Dialog dialog = Dialog.START;
    private boolean paused;
    private @Nullable String operator;
    private Instant askedAt = Instant.EPOCH;

    /**
     * @param herd the calves that can be spoken of, with all that the record knows of them
     * @param grammarVersion what statements are heard with, asked when one was heard
     * @param modelName likewise
     */
    Recorder(
            EventJournal journal,
            Herd herd,
            SoundFolder sounds,
            Clock clock,
            Supplier<UUID> ids,
            Supplier<String> grammarVersion,
            Supplier<String> modelName) {
        this.journal = journal;
        this.left = new LeftOpen(journal, sounds);
        this.origins = new Origins(sounds, left);
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
     * Takes facts into the record that nobody has to confirm, such as prints. An undo goes past them.
     *
     * @return empty if the record took them, else why not
     */
    Optional<String> take(List<NewEvent> facts) {
        try {
            save(facts);
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
        Provenance provenance = spoken(meaning, origins.keep(heard, prompts));
        prompts.addAll(step(
                said(meaning, provenance, heard.goesOn()).orElseGet(() -> new DialogInput.NotUnderstood(provenance))));
        return prompts;
    }

    private Provenance spoken(Interpretation meaning, @Nullable String sound) {
        return new Provenance(
                Provenance.Source.VOICE,
                meaning.words(),
                meaning.verdict(),
                grammarVersion.get(),
                modelName.get(),
                sound,
                null);
    }

    /** Empty where it is no statement. */
    private static Optional<DialogInput> said(Interpretation meaning, Provenance provenance, boolean goesOn) {
        if (meaning instanceof Interpretation.Understood understood) {
            return Optional.of(new DialogInput.Said(understood.statement(), List.of(), provenance, goesOn));
        }
        return meaning instanceof Interpretation.Unsure unsure
                ? Optional.of(new DialogInput.Said(unsure.best(), unsure.doubts(), provenance, goesOn))
                : Optional.empty();
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
        origins.waits(new Origins.NotSpoken(clock.instant(), words, mends == null ? null : mends.id()));
        return prompts;
    }

    /** Takes what is made of an open statement by now; it is asked about, whatever was made of it. */
    List<Prompt> heardAgain(Interpretation meaning, OpenStatement open) {
        left.tryAgain();
        Optional<DialogInput> said = said(meaning, spoken(meaning, soundOf(open)), false);
        if (said.isEmpty()) {
            return List.of(new Prompt.NotUnderstood());
        }
        List<Prompt> prompts = step(said.get());
        origins.waits(new Origins.NotSpoken(open.statement().from(), meaning.words(), open.id()));
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
        Optional<String> refused = take(List.of(new NewEvent(
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

    private List<Prompt> step(DialogInput input) {
        List<Prompt> prompts = new ArrayList<>();
        DialogStep step = dialog.step(input, herd, clock.instant(), ids);
        dialog = step.next();
        if (input instanceof DialogInput.Ordered order) {
            paused = order.control() == Control.PAUSE_RECORDER
                    || (paused && order.control() != Control.WAKE_UP_RECORDER);
        }
        prompts.addAll(step.prompts());
        step.keep().forEach(kept -> origins.leave(kept, prompts));
        if (input instanceof DialogInput.Said) {
            origins.waits();
            askedAt = clock.instant();
        } else if (dialog.pending() == null) {
            origins.isAnswered();
        }
        if (!step.append().isEmpty()) {
            Optional<UUID> mends = origins.mends();
            prompts.addAll(step(append(step)));
            // An undo leaves what waits as it is.
            if (dialog.pending() == null) {
                mends.flatMap(open -> settle(open, "mended"))
                        .ifPresent(refusal -> prompts.add(new Prompt.NotKept(refusal)));
            }
        }
        return prompts;
    }

    private DialogInput append(DialogStep step) {
        try {
            return new DialogInput.Committed(save(step.append()));
        } catch (JournalException failure) {
            return new DialogInput.Failed(LeftOpen.sentence(failure));
        }
    }

    private List<RecordedEvent> save(List<NewEvent> facts) {
        List<RecordedEvent> saved = journal.append(facts.stream()
                .map(fact -> new NewEvent(
                        fact.calf(),
                        fact.event(),
                        fact.occurredAt(),
                        fact.provenance().by(operator)))
                .toList());
        herd = herd.plus(saved);
        return saved;
    }
}
