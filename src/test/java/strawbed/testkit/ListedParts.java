package strawbed.testkit;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.calf.Numbers;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventSource;
import strawbed.journal.RecordParts;

/** Parts of a record in memory, by the words of {@link RecordParts} and without any index. */
public final class ListedParts implements RecordParts {
    private final List<RecordedEvent> events;

    /** @param events the whole record in its order */
    public ListedParts(List<RecordedEvent> events) {
        this.events = List.copyOf(events);
    }

    @Override
    public EventSource asItIs() {
        return EventSource.of(events);
    }

    @Override
    public List<CalfId> calves() {
        return List.copyOf(calvesOf(event -> event.event() instanceof Event.CalfOpened));
    }

    @Override
    public Set<CalfId> calvesRecorded(Instant from, Instant until) {
        return calvesOf(event -> !(event.event() instanceof Event.CardPrinted)
                && !day(event.recordedAt()).isBefore(day(from))
                && !day(event.recordedAt()).isAfter(day(until)));
    }

    @Override
    public Set<CalfId> calvesNaming(Naming how, Map<String, Instant> since) {
        Map<CalfId, Instant> newest = new LinkedHashMap<>();
        for (RecordedEvent event : events) {
            if (event.calf() != null) {
                newest.merge(event.calf(), event.recordedAt(), (one, other) -> one.isAfter(other) ? one : other);
            }
        }
        return calvesOf(event -> since.entrySet().stream()
                .anyMatch(wanted -> isSame(how, name(how, event.event()), wanted.getKey())
                        && event.calf() != null
                        && !day(Objects.requireNonNull(newest.get(event.calf())))
                                .isBefore(day(wanted.getValue()))));
    }

    @Override
    public List<RecordedEvent> ofCalves(Collection<CalfId> calves) {
        Set<CalfId> wanted = Set.copyOf(calves);
        return part(event -> event.calf() != null && wanted.contains(event.calf()));
    }

    @Override
    public List<RecordedEvent> since(Instant day) {
        long first = events.stream()
                .filter(event -> !day(event.recordedAt()).isBefore(day(day)))
                .mapToLong(RecordedEvent::sequence)
                .min()
                .orElse(Long.MAX_VALUE);
        Set<CalfId> wanted = calvesOf(event -> event.sequence() >= first);
        return part(event -> event.sequence() >= first || (event.calf() != null && wanted.contains(event.calf())));
    }

    @Override
    public long last() {
        return events.isEmpty() ? 0 : events.get(events.size() - 1).sequence();
    }

    @Override
    public List<RecordedEvent> ofBarn(Instant from) {
        long operator = events.stream()
                .filter(event -> event.calf() == null && event.event() instanceof Event.OperatorChosen)
                .mapToLong(RecordedEvent::sequence)
                .max()
                .orElse(0);
        return part(event -> event.calf() == null
                && !(event.event() instanceof Event.EventWithdrawn)
                && (!day(event.occurredAt()).isBefore(day(from))
                        || event.event() instanceof Event.ProtocolAdopted
                        || event.sequence() == operator));
    }

    @Override
    public List<RecordedEvent> protocols() {
        return part(event -> event.calf() == null && event.event() instanceof Event.ProtocolAdopted);
    }

    @Override
    public List<RecordedEvent> air(Instant from, Instant until) {
        return part(event -> event.calf() == null
                && event.event() instanceof Event.BarnClimateNoted
                && !day(event.occurredAt()).isBefore(day(from))
                && !day(event.occurredAt()).isAfter(day(until)));
    }

    @Override
    public List<RecordedEvent> stored(Collection<String> batches) {
        return part(event -> event.calf() == null
                && event.event() instanceof Event.ColostrumStored stored
                && batches.contains(stored.batch()));
    }

    private Set<CalfId> calvesOf(Predicate<RecordedEvent> which) {
        return events.stream()
                .filter(which)
                .map(RecordedEvent::calf)
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private List<RecordedEvent> part(Predicate<RecordedEvent> which) {
        Set<EventId> ids = new HashSet<>();
        events.stream().filter(which).forEach(event -> ids.add(event.id()));
        boolean grows = true;
        while (grows) {
            grows = false;
            for (RecordedEvent event : events) {
                if (event.event() instanceof Event.EventWithdrawn withdrawal && ids.contains(withdrawal.event())) {
                    grows |= ids.add(event.id());
                }
            }
        }
        List<RecordedEvent> part = new ArrayList<>();
        events.stream().filter(event -> ids.contains(event.id())).forEach(part::add);
        return part;
    }

    private static boolean isSame(Naming how, Stream<String> names, String wanted) {
        return names.anyMatch(name -> how == Naming.BATCH ? name.equals(wanted) : Numbers.same(name, wanted));
    }

    private static Stream<String> name(Naming how, Event event) {
        return switch (how) {
            case NUMBER -> number(event);
            case DAM -> dam(event);
            case TWIN -> event instanceof Event.TwinNoted noted ? known(noted.of()) : Stream.of();
            case BATCH -> event instanceof Event.ColostrumSourceNoted noted ? known(noted.batch()) : Stream.of();
        };
    }

    private static Stream<String> number(Event event) {
        if (event instanceof Event.CalfOpened opened) {
            return known(opened.number());
        }
        if (event instanceof Event.CalfNumbered numbered) {
            return Stream.of(numbered.number());
        }
        return event instanceof Event.EarTagFitted tag ? Stream.of(tag.number()) : Stream.of();
    }

    private static Stream<String> dam(Event event) {
        if (event instanceof Event.CalfOpened opened) {
            return known(opened.dam());
        }
        return event instanceof Event.DamNoted noted ? known(noted.dam()) : Stream.of();
    }

    private static Stream<String> known(@Nullable String name) {
        return Stream.ofNullable(name);
    }

    private static LocalDate day(Instant time) {
        if (time.isAfter(Instant.parse("9999-12-31T00:00:00Z"))) {
            return LocalDate.parse("9999-12-31");
        }
        return time.isBefore(Instant.parse("0000-01-01T00:00:00Z"))
                ? LocalDate.parse("0000-01-01")
                : time.atZone(ZoneOffset.UTC).toLocalDate();
    }
}
