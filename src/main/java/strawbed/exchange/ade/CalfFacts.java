package strawbed.exchange.ade;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Event.BreedNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CalfFound;
import strawbed.event.Event.CalfNumbered;
import strawbed.event.Event.CalfOpened;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.DamNoted;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Event.PresentationNoted;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.TwinNoted;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;

/** What is true of a calf only once, with the event that told it last: that event is exported, earlier ones are not. */
final class CalfFacts {
    private final CalfRecord record;
    private final List<RecordedEvent> counting;

    /** A value with the event that told it. */
    record Told<T>(T value, RecordedEvent by) {}

    CalfFacts(CalfRecord record) {
        this.record = record;
        this.counting = record.history().stream()
                .filter(entry -> !entry.withdrawn())
                .map(CalfRecord.Entry::recorded)
                .toList();
    }

    CalfRecord record() {
        return record;
    }

    CalfId id() {
        return record.id();
    }

    /** The events that count, in the order of the record. */
    List<RecordedEvent> counting() {
        return counting;
    }

    List<RecordedEvent> openings() {
        return events(CalfOpened.class);
    }

    Optional<Told<String>> number() {
        return last(
                Event.class,
                event -> event instanceof CalfOpened opened
                        ? said(opened.number())
                        : event instanceof CalfNumbered numbered ? said(numbered.number()) : null);
    }

    Optional<Told<String>> dam() {
        return last(
                Event.class,
                event -> event instanceof CalfOpened opened
                        ? said(opened.dam())
                        : event instanceof DamNoted noted ? said(noted.dam()) : null);
    }

    Optional<Told<Integer>> parity() {
        return last(DamNoted.class, DamNoted::parity);
    }

    Optional<Told<String>> breed() {
        return last(BreedNoted.class, noted -> said(noted.breed()));
    }

    Optional<Told<TwinNoted>> twin() {
        return last(TwinNoted.class, noted -> noted);
    }

    Optional<Told<Term.Sex>> sex() {
        return last(SexNoted.class, SexNoted::sex);
    }

    Optional<Told<When>> born() {
        return last(CalfBorn.class, CalfBorn::when);
    }

    /** When it was born, where that is known to the moment. */
    Optional<Instant> bornAt() {
        return born().map(Told::value)
                .flatMap(when -> when instanceof When.At at ? Optional.of(at.at()) : Optional.empty());
    }

    Optional<Told<When>> found() {
        return last(CalfFound.class, CalfFound::when);
    }

    Optional<Told<Term.CalvingEase>> ease() {
        return last(CalvingEaseNoted.class, CalvingEaseNoted::ease);
    }

    Optional<Told<Integer>> easeScore() {
        return last(CalvingEaseNoted.class, CalvingEaseNoted::score);
    }

    Optional<Told<Term.Presentation>> presentation() {
        return last(PresentationNoted.class, PresentationNoted::presentation);
    }

    Optional<Told<CalfDied>> death() {
        return last(CalfDied.class, died -> died);
    }

    /** The tags of a scheme that bear a number, in the order in which they were told. */
    List<Told<EarTagFitted>> tags(Term.TagScheme scheme) {
        List<Told<EarTagFitted>> tags = new ArrayList<>();
        for (RecordedEvent recorded : counting) {
            if (recorded.event() instanceof EarTagFitted tag
                    && tag.scheme() == scheme
                    && !tag.number().isBlank()) {
                tags.add(new Told<>(tag, recorded));
            }
        }
        return List.copyOf(tags);
    }

    /** How a remark calls it: by its number, else by its identity. */
    String name() {
        return number().map(Told::value).orElseGet(() -> id().toString());
    }

    /** The events that told what is true now. */
    Set<EventId> lastTold() {
        return Stream.<Optional<? extends Told<?>>>of(
                        number(),
                        dam(),
                        parity(),
                        breed(),
                        twin(),
                        sex(),
                        born(),
                        found(),
                        ease(),
                        easeScore(),
                        presentation(),
                        death())
                .flatMap(Optional::stream)
                .map(told -> told.by().id())
                .collect(Collectors.toSet());
    }

    private List<RecordedEvent> events(Class<? extends Event> kind) {
        return counting.stream()
                .filter(recorded -> kind.isInstance(recorded.event()))
                .toList();
    }

    private <E extends Event, T> Optional<Told<T>> last(Class<E> kind, Function<E, @Nullable T> part) {
        for (int i = counting.size() - 1; i >= 0; i--) {
            RecordedEvent recorded = counting.get(i);
            if (kind.isInstance(recorded.event())) {
                T value = part.apply(kind.cast(recorded.event()));
                if (value != null) {
                    return Optional.of(new Told<>(value, recorded));
                }
            }
        }
        return Optional.empty();
    }

    private static @Nullable String said(@Nullable String text) {
        return text == null || text.isBlank() ? null : text;
    }
}
