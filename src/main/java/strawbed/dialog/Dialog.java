package strawbed.dialog;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.Caution;
import strawbed.care.Contradiction;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.When;
import strawbed.statement.CalfReference;
import strawbed.statement.Doubt;
import strawbed.statement.SaidFact;

/**
 * The talk between person and recorder, between two inputs.
 *
 * @param pending the statement that waits for its confirmation
 * @param saving whether its events are on their way to the record
 * @param lastSaved the events of the entry saved last, for undo
 * @param sameCalf the calf named last
 */
public record Dialog(
        @Nullable Pending pending,
        boolean saving,
        List<EventId> lastSaved,
        @Nullable CalfId sameCalf) {
    /** Nothing said yet. */
    public static final Dialog START = new Dialog(null, false, List.of(), null);

    public Dialog {
        lastSaved = List.copyOf(lastSaved);
    }

    /**
     * Takes an input.
     *
     * @param herd the calves of the record now
     * @param now the time, for what happens by the answer itself
     * @param ids makes the identity of a calf that is opened
     */
    public DialogStep step(DialogInput input, Herd herd, Instant now, Supplier<UUID> ids) {
        if (input instanceof DialogInput.Said said) {
            return said(said, herd, now, ids);
        }
        if (input instanceof DialogInput.NotUnderstood noise) {
            DialogStep.Kept kept = new DialogStep.Kept(noise.provenance(), "not understood");
            return new DialogStep(this, List.of(new Prompt.NotUnderstood()), List.of(), List.of(kept));
        }
        if (input instanceof DialogInput.Ordered order) {
            return ordered(order, herd, now);
        }
        if (input instanceof DialogInput.Committed committed) {
            return committed(committed.events(), herd);
        }
        if (input instanceof DialogInput.Failed failed) {
            return new DialogStep(
                    new Dialog(pending, false, lastSaved, sameCalf),
                    List.of(new Prompt.NotSaved(failed.reason())),
                    List.of(),
                    List.of());
        }
        if (input instanceof DialogInput.TimedOut) {
            return pending == null
                    ? tell()
                    : new DialogStep(
                            answered(), List.of(new Prompt.KeptOpen()), List.of(), List.of(unconfirmed(pending)));
        }
        throw new AssertionError(input);
    }

    private DialogStep said(DialogInput.Said said, Herd herd, Instant now, Supplier<UUID> ids) {
        Target target = Targets.of(said.statement().calf(), herd, sameCalf, ids);
        List<Doubt> doubts = new ArrayList<>(said.doubts());
        if (amendsNothing(said, target, herd)) {
            doubts.add(new Doubt.NoFeedToAmend());
        }
        if (target instanceof Target.Opened && said.statement().calf() instanceof CalfReference.OfCow ofCow) {
            doubts.add(new Doubt.NoCalfOfCow(ofCow.dam()));
        }
        CalfRecord known =
                target instanceof Target.Known found ? herd.calf(found.id()).orElse(null) : null;
        contradictions(said, known, now).forEach(what -> doubts.add(new Doubt.Contradicts(what)));
        Pending heard = new Pending(said.statement(), target, doubts, said.provenance());
        List<Prompt> prompts = new ArrayList<>();
        // A calf in danger cannot wait for a confirmation.
        List<Event> breathing = said.statement().facts().stream()
                .map(SaidFact::event)
                .filter(Event.BreathingNoted.class::isInstance)
                .toList();
        Caution.toTell(breathing, known, Set.of(), herd).forEach(caution -> prompts.add(new Prompt.Warn(caution)));
        prompts.add(readBack(heard));
        CalfId named = calfOf(target);
        Dialog next = new Dialog(heard, false, lastSaved, named != null ? named : sameCalf);
        List<DialogStep.Kept> left = said.goesOn() || pending == null ? List.of() : List.of(unconfirmed(pending));
        return new DialogStep(next, prompts, List.of(), left);
    }

    /** A doubt is asked again each time the statement is read back. */
    private static Prompt readBack(Pending heard) {
        boolean clear = heard.doubts().isEmpty() && heard.canBeConfirmed();
        return clear ? new Prompt.ReadBack(heard) : new Prompt.Ask(heard);
    }

    /** Against what is on record, and against a birth told in the same breath. */
    private static List<Contradiction> contradictions(DialogInput.Said said, @Nullable CalfRecord calf, Instant now) {
        When onRecord = calf == null ? null : calf.born().orElse(null);
        When birth = said.statement().facts().stream()
                .map(SaidFact::event)
                .filter(Event.CalfBorn.class::isInstance)
                .map(born -> ((Event.CalfBorn) born).when())
                .findFirst()
                .orElse(onRecord);
        return said.statement().facts().stream()
                .flatMap(fact -> Contradiction.of(
                        fact.event(), fact.occurredAt(), fact.event() instanceof Event.CalfBorn ? onRecord : birth, now)
                        .stream())
                .distinct()
                .toList();
    }

    /** A left-over belongs to a feed: one of the record, or one of the same statement. */
    private static boolean amendsNothing(DialogInput.Said said, Target target, Herd herd) {
        List<Event> events =
                said.statement().facts().stream().map(SaidFact::event).toList();
        boolean left = events.stream().anyMatch(Event.ColostrumLeft.class::isInstance);
        boolean fedNow = events.stream().anyMatch(Event.ColostrumFed.class::isInstance);
        boolean fedBefore = target instanceof Target.Known known
                && herd.calf(known.id()).map(calf -> !calf.feeds().isEmpty()).orElse(false);
        return left && !fedNow && !fedBefore;
    }

    private DialogStep ordered(DialogInput.Ordered order, Herd herd, Instant now) {
        return switch (order.control()) {
            case CONFIRM_ENTRY -> confirm();
            case CANCEL_ENTRY -> pending == null ? tell(new Prompt.NothingPending()) : cancel(pending);
            case REPEAT_ENTRY -> tell(pending == null ? new Prompt.NothingPending() : readBack(pending));
            case UNDO_LAST_ENTRY -> undo(now, order.source());
            case WHAT_IS_DUE -> tell(new Prompt.TellDue());
            case HOW_IS_CALF ->
                tell(calfAsked(order, herd).<Prompt>map(Prompt.TellCalf::new).orElseGet(Prompt.NoSuchCalf::new));
            case PRINT_CARD ->
                tell(calfAsked(order, herd).<Prompt>map(Prompt.PrintCard::new).orElseGet(Prompt.NoSuchCalf::new));
            case PUT_IT_OFF -> tell(new Prompt.NothingToPutOff());
            case PAUSE_RECORDER -> tell(new Prompt.Paused());
            case WAKE_UP_RECORDER -> tell(new Prompt.Awake());
        };
    }

    /** A control that names no calf means the one named last. */
    private Optional<CalfId> calfAsked(DialogInput.Ordered order, Herd herd) {
        if (order.calf() == null) {
            return Optional.ofNullable(sameCalf);
        }
        return Targets.of(order.calf(), herd, sameCalf, UUID::randomUUID) instanceof Target.Known known
                ? Optional.of(known.id())
                : Optional.empty();
    }

    private DialogStep confirm() {
        if (pending == null || saving) {
            return tell(new Prompt.NothingPending());
        }
        if (!pending.canBeConfirmed()) {
            return tell(new Prompt.CannotConfirm(pending));
        }
        return new DialogStep(new Dialog(pending, true, lastSaved, sameCalf), List.of(), events(pending), List.of());
    }

    private static List<NewEvent> events(Pending pending) {
        List<NewEvent> events = new ArrayList<>();
        CalfId calf = calfOf(pending.target());
        Provenance how = pending.provenance();
        if (pending.target() instanceof Target.Opened opened) {
            Instant first = pending.statement().facts().get(0).occurredAt();
            boolean said =
                    pending.statement().facts().stream().anyMatch(fact -> fact.event() instanceof Event.CalfOpened);
            if (!said) {
                events.add(new NewEvent(calf, new Event.CalfOpened(opened.number(), opened.dam()), first, how));
            }
        }
        for (SaidFact fact : pending.statement().facts()) {
            events.add(new NewEvent(calf, withSound(fact.event(), how.sound()), fact.occurredAt(), how));
        }
        return events;
    }

    /** Free speech is kept as sound: its event says where. */
    private static Event withSound(Event event, @Nullable String sound) {
        if (event instanceof Event.VoiceNoteTaken) {
            return new Event.VoiceNoteTaken(sound);
        }
        if (event instanceof Event.TreatmentNoted treatment) {
            return new Event.TreatmentNoted(treatment.kind(), sound);
        }
        return event instanceof Event.VetCalled ? new Event.VetCalled(sound) : event;
    }

    private DialogStep cancel(Pending thrownAway) {
        DialogStep.Kept kept = new DialogStep.Kept(thrownAway.provenance(), "cancelled");
        return new DialogStep(answered(), List.of(new Prompt.Cancelled()), List.of(), List.of(kept));
    }

    private DialogStep undo(Instant now, Provenance.Source source) {
        if (lastSaved.isEmpty() || saving) {
            return tell(new Prompt.NothingToUndo());
        }
        List<NewEvent> withdrawals = lastSaved.stream()
                .map(id -> new NewEvent(null, new Event.EventWithdrawn(id), now, Provenance.of(source)))
                .toList();
        return new DialogStep(new Dialog(pending, true, lastSaved, sameCalf), List.of(), withdrawals, List.of());
    }

    private DialogStep committed(List<RecordedEvent> events, Herd herd) {
        boolean undone = events.stream().allMatch(saved -> saved.event() instanceof Event.EventWithdrawn);
        if (undone) {
            return new DialogStep(
                    new Dialog(pending, false, List.of(), sameCalf),
                    List.of(new Prompt.Undone(events.size())),
                    List.of(),
                    List.of());
        }
        List<Prompt> prompts = new ArrayList<>();
        CalfId calf = events.get(0).calf();
        String number = calf == null
                ? null
                : herd.calf(calf).flatMap(CalfRecord::number).orElse(null);
        prompts.add(new Prompt.Saved(events.size(), number));
        List<EventId> ids = events.stream().map(RecordedEvent::id).toList();
        List<Event> others = events.stream()
                .map(RecordedEvent::event)
                .filter(event -> !(event instanceof Event.BreathingNoted))
                .toList();
        CalfRecord of = calf == null ? null : herd.calf(calf).orElse(null);
        Caution.toTell(others, of, Set.copyOf(ids), herd).forEach(caution -> prompts.add(new Prompt.Warn(caution)));
        return new DialogStep(new Dialog(null, false, ids, sameCalf), prompts, List.of(), List.of());
    }

    private Dialog answered() {
        return new Dialog(null, false, lastSaved, sameCalf);
    }

    private DialogStep tell(Prompt... prompts) {
        return new DialogStep(this, List.of(prompts), List.of(), List.of());
    }

    private static DialogStep.Kept unconfirmed(Pending pending) {
        return new DialogStep.Kept(pending.provenance(), "not confirmed");
    }

    private static @Nullable CalfId calfOf(Target target) {
        if (target instanceof Target.Known known) {
            return known.id();
        }
        return target instanceof Target.Opened opened ? opened.id() : null;
    }
}
