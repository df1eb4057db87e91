package strawbed.testkit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.calf.Herd;
import strawbed.dialog.Dialog;
import strawbed.dialog.DialogInput;
import strawbed.dialog.DialogStep;
import strawbed.dialog.Pending;
import strawbed.dialog.Prompt;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;
import strawbed.statement.CalfReference;
import strawbed.statement.Control;
import strawbed.statement.Doubt;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.Statement;

/** A night in the barn without sound and disk: words and buttons go in, prompts come out, a record grows. */
public final class Barn {
    private final MemoryJournal journal = new MemoryJournal(SpokenSentence.SPOKEN_AT);
    private final List<Step> steps = new ArrayList<>();
    private Dialog dialog = Dialog.START;
    private List<Prompt> said = List.of();
    private long calves;

    /** What went into the dialog and what came out. */
    public record Step(DialogInput input, DialogStep outcome) {}

    /** A record with these calves in it. */
    public static Barn with(String... numbers) {
        Barn barn = new Barn();
        barn.journal.append(Arrays.stream(numbers)
                .map(number -> new NewEvent(
                        barn.newCalf(),
                        opened(number),
                        SpokenSentence.SPOKEN_AT,
                        Provenance.of(Provenance.Source.COMMAND)))
                .toList());
        return barn;
    }

    @SuppressWarnings("NullAway") // The null checker cannot see in the compiled record that the dam may be missing.
    private static Event opened(String number) {
        return new Event.CalfOpened(number, null);
    }

    private CalfId newCalf() {
        return new CalfId(newId());
    }

    private UUID newId() {
        return new UUID(0x7002L, ++calves);
    }

    /** Somebody says this. */
    public Barn hears(String words) {
        return take(words, false);
    }

    /** The speaker went on after a pause, and all of it together is this. */
    public Barn hearsItGoOn(String words) {
        return take(words, true);
    }

    private Barn take(String words, boolean goesOn) {
        Interpretation meaning = Listener.INTERPRETER.interpret(
                List.of(Grammars.reading(words, 0)),
                new SpeechTime(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE),
                new Listening(herd().openNumbers(), dialog.sameCalf() != null));
        if (meaning instanceof Interpretation.ControlHeard heard) {
            return order(heard.control(), heard.calf(), Provenance.Source.VOICE);
        }
        Provenance provenance = new Provenance(
                Provenance.Source.VOICE, meaning.words(), meaning.verdict(), "g", "m", "sound-" + steps.size(), null);
        if (meaning instanceof Interpretation.Understood understood) {
            return input(said(understood.statement(), List.of(), provenance, goesOn));
        }
        if (meaning instanceof Interpretation.Unsure unsure) {
            return input(said(unsure.best(), unsure.doubts(), provenance, goesOn));
        }
        return input(new DialogInput.NotUnderstood(provenance));
    }

    private static DialogInput said(Statement statement, List<Doubt> doubts, Provenance provenance, boolean goesOn) {
        return new DialogInput.Said(statement, doubts, provenance, goesOn);
    }

    /** A button. */
    public Barn presses(Control control) {
        return order(control, null, Provenance.Source.BUTTON);
    }

    private Barn order(Control control, @Nullable CalfReference calf, Provenance.Source source) {
        return input(new DialogInput.Ordered(control, calf, source));
    }

    /** Nobody answers. */
    public Barn waits() {
        return input(new DialogInput.TimedOut());
    }

    /** The disk refuses what comes next. */
    public Barn hasAFullDisk() {
        journal.failNext("The disk is full. Free some space.");
        return this;
    }

    private Barn input(DialogInput input) {
        said = new ArrayList<>();
        step(input);
        return this;
    }

    private void step(DialogInput input) {
        DialogStep step = dialog.step(input, herd(), SpokenSentence.SPOKEN_AT, this::newId);
        steps.add(new Step(input, step));
        dialog = step.next();
        said.addAll(step.prompts());
        step.keep().forEach(this::keep);
        if (!step.append().isEmpty()) {
            step(outcome(step.append()));
        }
    }

    private DialogInput outcome(List<NewEvent> events) {
        try {
            return new DialogInput.Committed(journal.append(events));
        } catch (JournalException failure) {
            return new DialogInput.Failed(String.valueOf(failure.getMessage()));
        }
    }

    private void keep(DialogStep.Kept kept) {
        UUID id = journal.keep(new NewOpenStatement(
                        SpokenSentence.SPOKEN_AT,
                        Duration.ofSeconds(1),
                        String.valueOf(kept.provenance().verdict()),
                        kept.provenance().words(),
                        null,
                        String.valueOf(kept.provenance().sound())))
                .id();
        if (kept.why().equals("cancelled")) {
            journal.settle(id, kept.why());
        }
    }

    /** The prompts that followed the last input. */
    public List<Prompt> asks() {
        return List.copyOf(said);
    }

    /** The kinds of these prompts. */
    public List<String> asksFor() {
        return said.stream().map(prompt -> prompt.getClass().getSimpleName()).toList();
    }

    /** The doubts of the statement that waits. */
    public List<Doubt> doubts() {
        return dialog.pending() == null ? List.of() : dialog.pending().doubts();
    }

    /** The statement that waits. */
    public Optional<Pending> pending() {
        return Optional.ofNullable(dialog.pending());
    }

    public boolean isPending() {
        return dialog.pending() != null;
    }

    /** All facts of the record that a person told, the withdrawals too. */
    public List<Event> saved() {
        return journal.all().stream()
                .filter(event -> event.provenance().source() != Provenance.Source.COMMAND)
                .map(RecordedEvent::event)
                .toList();
    }

    public MemoryJournal journal() {
        return journal;
    }

    /** The words of the statements that are still open. */
    public List<String> open() {
        return journal.openStatements().stream()
                .map(open -> String.join(" ", open.statement().words()))
                .toList();
    }

    public Herd herd() {
        return Herd.of(journal.all());
    }

    /** Everything that happened. */
    public List<Step> steps() {
        return List.copyOf(steps);
    }
}
