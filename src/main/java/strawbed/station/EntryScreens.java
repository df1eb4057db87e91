package strawbed.station;

import static strawbed.text.MessageKey.*;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.entry.Answer;
import strawbed.entry.CalfDraft;
import strawbed.entry.CalfKind;
import strawbed.entry.EntryDraft;
import strawbed.entry.EntryGroup;
import strawbed.entry.EntryKind;
import strawbed.entry.FarmChoices;
import strawbed.entry.Outcome;
import strawbed.entry.Refusal;
import strawbed.statement.CalfReference;
import strawbed.statement.SaidFact;
import strawbed.statement.SpeechTime;
import strawbed.text.CalfNames;
import strawbed.text.EntryPhrases;
import strawbed.text.EventPhrases;
import strawbed.text.MessageKey;

/** The pages on which facts are entered by keys: whose they are, what happened, and what has to be known of it. */
final class EntryScreens {
    /** On the first page beside the groups: what is entered most. */
    private static final List<EntryKind> COMMON =
            List.of(EntryKind.HEIFER, EntryKind.BULL, EntryKind.NAVEL_DIPPED, EntryKind.FED);

    private static final int LAST_FACTS = 2;

    /** As many calves as an upright screen has room for above two rows of keys. */
    private static final int CALVES = 9;

    private final Frame frame;
    private final CalfScreens calves;
    private final ZoneId zone;
    private final FarmChoices farm;
    private final EntryPhrases phrases;
    private final EventPhrases events;
    private final CalfNames names;
    private final StepPages pages;

    EntryScreens(Frame frame, CalfScreens calves, ZoneId zone, FarmChoices farm) {
        this.frame = frame;
        this.calves = calves;
        this.zone = zone;
        this.farm = farm;
        this.phrases = new EntryPhrases(frame.messages(), zone);
        this.events = new EventPhrases(frame.messages(), zone);
        this.names = new CalfNames(frame.messages());
        this.pages = new StepPages(frame, phrases);
    }

    // Whose facts.

    Screen whose(Place.WhoseFacts place, Known known) {
        List<Key> listed = CalfScreens.young(known).stream()
                .map(calf -> calves.key(calf, begin(calf, known, place.mends()), known))
                .toList();
        List<Key> others = List.of(
                named(STATION_NEW_CALF, CalfKind.NEW, place.mends(), known),
                named(STATION_OF_A_COW, CalfKind.OF_COW, place.mends(), known),
                named(STATION_NUMBER_IT, CalfKind.RENUMBERED, place.mends(), known),
                frame.key(
                        STATION_BARN,
                        Rank.USUAL,
                        new Act.Go(entering(new CalfReference.Barn(), known, place.mends()))));
        return frame.near(
                known,
                frame.text(STATION_WHOSE),
                new Body.Choices(
                        frame.page(listed, CALVES, place.page(), page -> new Place.WhoseFacts(page, place.mends()))),
                others,
                new Act.Go(new Place.Now()));
    }

    private Key named(MessageKey label, CalfKind kind, Optional<UUID> mends, Known known) {
        CalfDraft draft = CalfDraft.start(kind, moment(known, mends));
        return frame.key(label, Rank.USUAL, new Act.Go(new Place.Naming(draft, Typed.NOTHING, mends)));
    }

    /** Facts of a calf on the list. */
    Act begin(CalfRecord calf, Known known, Optional<UUID> mends) {
        return new Act.Go(entering(reference(calf, known), known, mends));
    }

    private static CalfReference reference(CalfRecord calf, Known known) {
        return calf.number()
                .<CalfReference>map(CalfReference.Numbered::new)
                .or(() -> calf.dam().map(dam -> ofCow(calf, dam, known)))
                .orElseGet(() -> new CalfReference.Listed(calf.id()));
    }

    private static CalfReference ofCow(CalfRecord calf, String dam, Known known) {
        List<CalfRecord> ofTheCow = known.herd().byDam(dam);
        int place = ofTheCow.stream().map(CalfRecord::id).toList().indexOf(calf.id());
        return new CalfReference.OfCow(dam, ofTheCow.size() > 1 && place >= 0 ? place + 1 : null);
    }

    private Place.Entering entering(CalfReference calf, Known known, Optional<UUID> mends) {
        return new Place.Entering(
                EntryDraft.start(calf, moment(known, mends), farm), Optional.empty(), Typed.NOTHING, mends);
    }

    /** What mends a statement happened when that was said. */
    private SpeechTime moment(Known known, Optional<UUID> mends) {
        return new SpeechTime(
                mends.flatMap(id -> known.open().stream()
                                .filter(open -> open.id().equals(id))
                                .findFirst())
                        .map(open -> open.statement().from())
                        .orElse(known.now()),
                zone);
    }

    Screen naming(Place.Naming place, Known known) {
        CalfDraft draft = place.draft();
        Act back = new Act.Go(
                draft.canGoBack()
                        ? new Place.Naming(draft.back(), Typed.NOTHING, place.mends())
                        : new Place.WhoseFacts(0, place.mends()));
        Optional<CalfReference> whole = draft.step().isEmpty() ? draft.reference() : Optional.empty();
        if (whole.isPresent()) {
            return entering(entering(whole.get(), known, place.mends()), known, back);
        }
        return pages.of(
                draft.step().orElseThrow(),
                place.typed(),
                known,
                new StepPages.Around(
                        phrases.label(draft.kind()),
                        List.of(),
                        back,
                        typed -> new Place.Naming(draft, typed, place.mends()),
                        answer -> named(draft, place, answer)));
    }

    private Place named(CalfDraft draft, Place.Naming place, Answer answer) {
        Outcome<CalfDraft> outcome = draft.answer(answer);
        return outcome instanceof Outcome.Taken<CalfDraft> taken
                ? new Place.Naming(taken.next(), Typed.NOTHING, place.mends())
                : new Place.Naming(draft, place.typed().refused(why(outcome)), place.mends());
    }

    private static Refusal why(Outcome<?> outcome) {
        return ((Outcome.Refused<?>) outcome).why();
    }

    // What happened.

    Screen entering(Place.Entering place, Known known) {
        EntryDraft draft = place.draft();
        Act back = new Act.Go(
                place.group().isPresent()
                        ? with(place, Optional.empty())
                        : draft.canGoBack()
                                ? new Place.Entering(draft.back(), Optional.empty(), Typed.NOTHING, place.mends())
                                : new Place.WhoseFacts(0, place.mends()));
        return entering(place, known, back);
    }

    private Screen entering(Place.Entering place, Known known, Act back) {
        EntryDraft draft = place.draft();
        if (place.group().isPresent()) {
            return kinds(place, place.group().get(), known, back);
        }
        return draft.step()
                .filter(step -> !place.typed().isLeft())
                .map(step -> pages.of(
                        step,
                        place.typed(),
                        known,
                        new StepPages.Around(
                                name(draft),
                                keysOfStep(place),
                                back,
                                typed -> new Place.Entering(draft, Optional.empty(), typed, place.mends()),
                                answer -> answered(place, answer))))
                .orElseGet(() -> groups(place, known, back));
    }

    /** A fact that is whole can be followed by the next, or all be finished. */
    private List<Key> keysOfStep(Place.Entering place) {
        EntryDraft draft = place.draft();
        List<Key> keys = new ArrayList<>();
        if (draft.isWhole()) {
            keys.add(frame.go(
                    STATION_NEXT_FACT, new Place.Entering(draft, Optional.empty(), Typed.LEFT, place.mends())));
            finish(place).ifPresent(keys::add);
        }
        return keys;
    }

    private Optional<Key> finish(Place.Entering place) {
        return place.draft()
                .finish()
                .map(statement -> frame.key(STATION_DONE, Rank.YES, new Act.Enter(statement, place.mends())));
    }

    private Place answered(Place.Entering place, Answer answer) {
        Outcome<EntryDraft> outcome = place.draft().answer(answer);
        return outcome instanceof Outcome.Taken<EntryDraft> taken
                ? new Place.Entering(taken.next(), Optional.empty(), Typed.NOTHING, place.mends())
                : new Place.Entering(
                        place.draft(), Optional.empty(), place.typed().refused(why(outcome)), place.mends());
    }

    private Screen groups(Place.Entering place, Known known, Act back) {
        EntryDraft draft = place.draft();
        List<EntryGroup> groups = draft.groups();
        if (groups.size() == 1) {
            return kinds(place, groups.get(0), known, back);
        }
        List<Key> keys = Stream.concat(
                        COMMON.stream().map(kind -> kind(place, kind, known)),
                        groups.stream()
                                .map(group -> Key.of(
                                        phrases.label(group), Rank.USUAL, new Act.Go(with(place, Optional.of(group))))))
                .toList();
        return frame.near(known, heading(draft), new Body.Choices(keys), keysOfGroups(place), back);
    }

    private Screen kinds(Place.Entering place, EntryGroup group, Known known, Act back) {
        List<Key> keys =
                group.kinds().stream().map(kind -> kind(place, kind, known)).toList();
        return frame.near(known, heading(place.draft()), new Body.Choices(keys), keysOfGroups(place), back);
    }

    private List<Key> keysOfGroups(Place.Entering place) {
        List<Key> keys = new ArrayList<>();
        if (place.draft().kind().isPresent() && place.draft().isWhole()) {
            Outcome<EntryDraft> asked = place.draft().askTime();
            if (asked instanceof Outcome.Taken<EntryDraft> taken) {
                keys.add(frame.go(
                        STATION_TIME,
                        new Place.Entering(taken.next(), Optional.empty(), Typed.NOTHING, place.mends())));
            }
        }
        finish(place).ifPresent(keys::add);
        return keys;
    }

    private Key kind(Place.Entering place, EntryKind kind, Known known) {
        Outcome<EntryDraft> begun = place.draft()
                .begin(kind, place.mends().isPresent() ? place.draft().moment().start() : known.now());
        Place next = begun instanceof Outcome.Taken<EntryDraft> taken
                ? new Place.Entering(taken.next(), Optional.empty(), Typed.NOTHING, place.mends())
                : place;
        return Key.of(phrases.label(kind), Rank.USUAL, new Act.Go(next));
    }

    private static Place.Entering with(Place.Entering place, Optional<EntryGroup> group) {
        return new Place.Entering(place.draft(), group, Typed.NOTHING, place.mends());
    }

    private String name(EntryDraft draft) {
        return frame.capitalised(names.of(draft.calf()));
    }

    /** With the last facts of it: they are all read back before they are saved. */
    private String heading(EntryDraft draft) {
        List<SaidFact> all = draft.facts();
        if (all.isEmpty()) {
            return frame.text(STATION_WHAT_HAPPENED, name(draft));
        }
        List<SaidFact> shown = all.subList(Math.max(0, all.size() - LAST_FACTS), all.size());
        String facts = shown.stream().map(fact -> events.of(fact.event())).collect(Collectors.joining(", "));
        return frame.text(STATION_WHAT_ELSE, name(draft), (shown.size() < all.size() ? "... " : "") + facts);
    }
}
