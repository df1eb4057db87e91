package strawbed.calf;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.BreedNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CalfDried;
import strawbed.event.Event.CalfFound;
import strawbed.event.Event.CalfMoved;
import strawbed.event.Event.CalfNumbered;
import strawbed.event.Event.CalfOpened;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.CardPrinted;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumLeft;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.DamNoted;
import strawbed.event.Event.DamNursed;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Event.LickingNoted;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.PresentationNoted;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.SignNoted;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.Event.TwinNoted;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;

/**
 * All that is known of one calf. Immutable and safe for any thread; equal where the history is.
 *
 * <p>Two orders matter. What happened again and again (feeds, dips, breathing) is sorted by when it happened, then by
 * when it was told. Of what is true only once (sex, birth, number) the last told counts, because telling it again is
 * how people correct it. Withdrawn events count nowhere, but stay in the history.
 */
public final class CalfRecord {
    private static final Comparator<RecordedEvent> AS_IT_HAPPENED =
            Comparator.comparing(RecordedEvent::occurredAt).thenComparing(RecordedEvent::sequence);

    private final CalfId id;
    private final List<Entry> history;

    /** The events that count, in the order of the record. */
    private final List<Event> told;

    /** The events that count, as they happened, by kind; of {@code Event.class} all. Every rule asks for them often. */
    private final Map<Class<? extends Event>, List<Timed<Event>>> happened = new HashMap<>();

    /** An event of the history, and whether it no longer counts. */
    public record Entry(RecordedEvent recorded, boolean withdrawn) {}

    /** Takes every event of this calf in the order of the record, the withdrawn ones too. */
    public CalfRecord(CalfId id, List<Entry> history) {
        this.id = id;
        this.history = List.copyOf(history);
        List<RecordedEvent> counting = new ArrayList<>();
        for (Entry entry : this.history) {
            if (!entry.withdrawn()) {
                counting.add(entry.recorded());
            }
        }
        this.told = counting.stream().map(RecordedEvent::event).toList();
        counting.sort(AS_IT_HAPPENED);
        List<Timed<Event>> all = new ArrayList<>();
        for (RecordedEvent recorded : counting) {
            Timed<Event> timed = new Timed<>(recorded.occurredAt(), recorded.id(), recorded.event());
            all.add(timed);
            happened.computeIfAbsent(recorded.event().getClass(), kind -> new ArrayList<>(1))
                    .add(timed);
        }
        happened.put(Event.class, all);
        happened.replaceAll((kind, timed) -> List.copyOf(timed));
    }

    public CalfId id() {
        return id;
    }

    /** Every event of this calf in the order of the record, the withdrawn ones too. */
    public List<Entry> history() {
        return history;
    }

    // Any kind of event.

    /** The events of one kind that count, as they happened. */
    @SuppressWarnings("unchecked") // under a kind there are only events of that kind
    public <E extends Event> List<Timed<E>> all(Class<E> kind) {
        return (List<Timed<E>>) (List<?>) happened.getOrDefault(kind, List.of());
    }

    /** The earliest of one kind. */
    public <E extends Event> Optional<Timed<E>> first(Class<E> kind) {
        List<Timed<E>> all = all(kind);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /** The latest of one kind. */
    public <E extends Event> Optional<Timed<E>> last(Class<E> kind) {
        List<Timed<E>> all = all(kind);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** Whether there is one of this kind. */
    public boolean has(Class<? extends Event> kind) {
        return !all(kind).isEmpty();
    }

    // Who it is.

    /** When its record was opened; empty when the opening was withdrawn. */
    public Optional<Instant> opened() {
        return first(CalfOpened.class).map(Timed::at);
    }

    /** Its number now; where none was told, the one on its farm tag. */
    public Optional<String> number() {
        Optional<String> told = lastTold(
                Event.class,
                event -> event instanceof CalfOpened opened
                        ? opened.number()
                        : event instanceof CalfNumbered numbered ? numbered.number() : null);
        return told.or(() -> farmTags().reduce((earlier, later) -> later));
    }

    /** The numbers it can be called by: its own first, then its farm tags. */
    public List<String> numbers() {
        return Stream.concat(number().stream(), farmTags()).distinct().toList();
    }

    /** Whether it can be called by this number; leading zeros do not matter. */
    public boolean bears(String wanted) {
        return numbers().stream().anyMatch(number -> Numbers.same(number, wanted));
    }

    public List<Timed<EarTagFitted>> tags() {
        return all(EarTagFitted.class);
    }

    /** The number of the cow that bore it. */
    public Optional<String> dam() {
        return lastTold(
                Event.class,
                event -> event instanceof CalfOpened opened
                        ? opened.dam()
                        : event instanceof DamNoted noted ? noted.dam() : null);
    }

    /** The dam's calvings, this one counted. */
    public Optional<Integer> parity() {
        return lastTold(DamNoted.class, DamNoted::parity);
    }

    public Optional<String> breed() {
        return lastTold(BreedNoted.class, BreedNoted::breed);
    }

    public Optional<Term.Sex> sex() {
        return lastTold(SexNoted.class, SexNoted::sex);
    }

    /** That it is one of several, as it was said last. */
    public Optional<TwinNoted> twin() {
        return lastTold(TwinNoted.class, noted -> noted);
    }

    // Its birth, and its death.

    public Optional<When> born() {
        return lastTold(CalfBorn.class, CalfBorn::when);
    }

    public Optional<When> found() {
        return lastTold(CalfFound.class, CalfFound::when);
    }

    /** When it was born; where nobody saw it and no time was told, when it was found. */
    public Optional<When> birth() {
        return born().or(this::found);
    }

    /** Whether {@link #birth} is only the time it was found. */
    public boolean isBirthOnlyFound() {
        return born().isEmpty() && found().isPresent();
    }

    /** The best instant for its birth: the middle of {@link #birth}, else when its record was opened. */
    public Optional<Instant> bornAbout() {
        return birth().map(When::midpoint).or(this::opened);
    }

    public Optional<Term.CalvingEase> ease() {
        return lastTold(CalvingEaseNoted.class, CalvingEaseNoted::ease);
    }

    /** The calving ease score of 1 to 5. */
    public Optional<Integer> easeScore() {
        return lastTold(CalvingEaseNoted.class, CalvingEaseNoted::score);
    }

    public Optional<Term.Presentation> presentation() {
        return lastTold(PresentationNoted.class, PresentationNoted::presentation);
    }

    public Optional<CalfDied> death() {
        return lastTold(CalfDied.class, died -> died);
    }

    public boolean isAlive() {
        return death().isEmpty();
    }

    /** Whether its record was opened and it lives. */
    public boolean isOpen() {
        return has(CalfOpened.class) && isAlive();
    }

    // Its first hours.

    /** How it breathed when last looked at. */
    public Optional<Timed<BreathingNoted>> breathing() {
        return last(BreathingNoted.class);
    }

    /** Whether the dam licked it, as last seen. */
    public Optional<Boolean> licked() {
        return last(LickingNoted.class).map(noted -> noted.event().licked());
    }

    public boolean isDried() {
        return has(CalfDried.class);
    }

    /** When it first did this. */
    public Optional<Instant> reached(Term.Milestone milestone) {
        return all(MilestoneReached.class).stream()
                .filter(reached -> reached.event().milestone() == milestone)
                .map(Timed::at)
                .findFirst();
    }

    public List<Timed<SignNoted>> signs() {
        return all(SignNoted.class);
    }

    public List<Timed<NavelDipped>> dips() {
        return all(NavelDipped.class);
    }

    public List<Timed<TemperatureTaken>> temperatures() {
        return all(TemperatureTaken.class);
    }

    public List<Timed<CalfWeighed>> weights() {
        return all(CalfWeighed.class);
    }

    /** The place it was moved to last. */
    public Optional<String> place() {
        return last(CalfMoved.class).map(moved -> moved.event().place());
    }

    /** What was printed of it. */
    public List<Timed<CardPrinted>> prints() {
        return all(CardPrinted.class);
    }

    // Colostrum.

    public Optional<Timed<ColostrumTestedByBrix>> brix() {
        return last(ColostrumTestedByBrix.class);
    }

    public Optional<ColostrumSourceNoted> colostrumSource() {
        return last(ColostrumSourceNoted.class).map(Timed::event);
    }

    /** Its feeds as they happened. What was left belongs to the last feed at or before it; the last word on it counts. */
    public List<Feed> feeds() {
        return Feed.of(all(ColostrumFed.class), all(ColostrumLeft.class));
    }

    /** The first feed of which it took anything. */
    public Optional<Feed> firstFeed() {
        return feeds().stream().filter(feed -> feed.litres().signum() > 0).findFirst();
    }

    /** What it took in all measured feeds, in litres, exact; what it sucked from its dam is not known. */
    public BigDecimal volumeFedLitres() {
        return feeds().stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    public List<Timed<DamNursed>> nursings() {
        return all(DamNursed.class);
    }

    private Stream<String> farmTags() {
        return tags().stream()
                .map(Timed::event)
                .filter(tag -> tag.scheme() == Term.TagScheme.FARM)
                .map(EarTagFitted::number);
    }

    private <E extends Event, T> Optional<T> lastTold(Class<E> kind, Function<E, @Nullable T> part) {
        for (int i = told.size() - 1; i >= 0; i--) {
            if (kind.isInstance(told.get(i))) {
                T value = part.apply(kind.cast(told.get(i)));
                if (value != null) {
                    return Optional.of(value);
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CalfRecord calf && id.equals(calf.id) && history.equals(calf.history);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, history);
    }

    @Override
    public String toString() {
        return "calf " + id + " of " + history.size() + " events";
    }
}
