package strawbed.entry;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.statement.CalfReference;
import strawbed.statement.SaidFact;
import strawbed.statement.SpeechTime;
import strawbed.statement.Statement;

/**
 * A statement in the making: facts of one calf or of the barn, entered one after the other and confirmed once.
 *
 * <p>A fact is whole as soon as all is answered that has to be known. What is asked then may be left out by beginning the
 * next fact or finishing, so that the common facts need few presses. All facts of a draft that have no time of their own
 * happened at one moment, as when they are spoken in one breath: the moment at which the first of them was begun.
 */
public final class EntryDraft {
    private final CalfReference calf;
    private final SpeechTime moment;
    private final FarmChoices farm;
    private final List<Entry> done;
    private final @Nullable Entry current;
    private final @Nullable EntryDraft before;

    private EntryDraft(
            CalfReference calf,
            SpeechTime moment,
            FarmChoices farm,
            List<Entry> done,
            @Nullable Entry current,
            @Nullable EntryDraft before) {
        this.calf = calf;
        this.moment = moment;
        this.farm = farm;
        this.done = List.copyOf(done);
        this.current = current;
        this.before = before;
    }

    /** Nothing of this calf, or of the barn, yet. */
    public static EntryDraft start(CalfReference calf, SpeechTime moment, FarmChoices farm) {
        return new EntryDraft(calf, moment, farm, List.of(), null, null);
    }

    public CalfReference calf() {
        return calf;
    }

    /** What the times of the facts are counted from. */
    public SpeechTime moment() {
        return moment;
    }

    /** The first page. Where it has one group only, its kinds can be shown at once. */
    public List<EntryGroup> groups() {
        return Arrays.stream(EntryGroup.values()).filter(this::fits).toList();
    }

    private boolean fits(EntryGroup group) {
        return (group == EntryGroup.BARN) == (calf instanceof CalfReference.Barn);
    }

    /** The kind of the fact that is being made or was made last. */
    public Optional<EntryKind> kind() {
        return Optional.ofNullable(current).map(Entry::kind);
    }

    /** What is asked now; empty when nothing was begun, or the fact is complete. */
    public Optional<Step> step() {
        return current == null ? Optional.empty() : current.asking().step();
    }

    /** Whether the next fact can be begun, or all be finished, without losing what was answered. */
    public boolean isWhole() {
        return current == null || current.asking().isWhole();
    }

    /**
     * Begins a fact. One that is not whole is left behind; {@link #back} brings it back.
     *
     * @param now the moment of the press
     */
    public Outcome<EntryDraft> begin(EntryKind kind, Instant now) {
        if (!fits(kind.group())) {
            return new Outcome.Refused<>(new Refusal.NotOfThis());
        }
        List<Entry> whole = whole();
        SpeechTime from = whole.isEmpty() ? new SpeechTime(now, moment.zone()) : moment;
        Entry begun = new Entry(kind, new Asking(kind.steps(farm), Given.nothing(from)));
        return new Outcome.Taken<>(new EntryDraft(calf, from, farm, whole, begun, this));
    }

    /** Answers what is asked now. */
    public Outcome<EntryDraft> answer(Answer answer) {
        Entry entry = current;
        if (entry == null) {
            return new Outcome.Refused<>(new Refusal.NotAsked());
        }
        return entry.asking().answer(answer).map(asking -> with(new Entry(entry.kind(), asking)));
    }

    /** Asks when the fact was, which is now where nobody asks. It is the next step; an earlier answer to it is gone. */
    public Outcome<EntryDraft> askTime() {
        return current == null
                ? new Outcome.Refused<>(new Refusal.NotAsked())
                : new Outcome.Taken<>(with(current.askingTime()));
    }

    /** Tells when the fact was, in one press where the page with the times is shown beside it. */
    public Outcome<EntryDraft> at(Answer time) {
        Outcome<EntryDraft> asked = askTime();
        Outcome<EntryDraft> told =
                asked instanceof Outcome.Taken<EntryDraft> taken ? taken.next().answer(time) : asked;
        return told.map(draft -> with(draft.current));
    }

    private EntryDraft with(@Nullable Entry entry) {
        return new EntryDraft(calf, moment, farm, done, entry, this);
    }

    public boolean canGoBack() {
        return before != null;
    }

    /** As it was before the last press; itself where nothing was pressed. */
    public EntryDraft back() {
        return before == null ? this : before;
    }

    /** The facts that are whole, in their order, as they would be recorded. */
    public List<SaidFact> facts() {
        return whole().stream().map(Entry::fact).toList();
    }

    private List<Entry> whole() {
        return current == null || !current.asking().isWhole()
                ? done
                : Stream.concat(done.stream(), Stream.of(current)).toList();
    }

    /** Whether there is a statement to be confirmed: something was said, and nothing lacks what has to be known. */
    public boolean canFinish() {
        return isWhole() && !(whole().isEmpty() && calf.facts().isEmpty());
    }

    /** The statement, with what naming the calf says by itself; empty where it cannot be finished yet. */
    public Optional<Statement> finish() {
        if (!canFinish()) {
            return Optional.empty();
        }
        Stream<SaidFact> naming = calf.facts().stream().map(event -> new SaidFact(event, moment.start(), false));
        return Optional.of(
                new Statement(calf, Stream.concat(naming, facts().stream()).toList()));
    }

    /** A fact and its answers. */
    private record Entry(EntryKind kind, Asking asking) {
        SaidFact fact() {
            Given given = asking.given();
            Event event = kind.event(given);
            return new SaidFact(event, given.when().midpoint(), given.has(Question.WHEN));
        }

        /** Kinds with a time of their own have its steps already; of others it goes before what is still open. */
        Entry askingTime() {
            boolean own = asking.steps().stream().anyMatch(asked -> asked.step().question() == Question.WHEN);
            List<Asked> steps = own
                    ? asking.steps()
                    : Stream.concat(Stream.of(Asked.always(Steps.when())), asking.steps().stream())
                            .toList();
            return new Entry(
                    kind, new Asking(steps, asking.given().without(Question.WHEN, Question.EARLIEST, Question.LATEST)));
        }
    }
}
