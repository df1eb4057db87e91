package strawbed.calf;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event.CalfOpened;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.RecordedEvent;

/**
 * All calves of the record, and what was said of the barn. Immutable and safe for any thread.
 *
 * <p>It depends on the events and their sequence only: not on the order in which they are handed over, and an event
 * handed over twice counts once.
 */
public final class Herd {
    /** Calves of one cow that are born this close together are twins. Common practice, no published source. */
    static final Duration TWINS_WITHIN = Duration.ofHours(24);

    /**
     * A calf that bears the number of a named twin is that twin only if it is this near in age: numbers come back, and
     * the birth of a calf that was opened late may be told wrong by days. Common practice, no published source.
     */
    public static final Duration NAMED_TWINS_WITHIN = Duration.ofDays(14);

    private final Map<CalfId, CalfRecord> calves = new LinkedHashMap<>();

    /** All that was told of no single calf, also what counts no more. */
    private final List<CalfRecord.Entry> ofTheBarn;

    private final List<RecordedEvent> barn;
    private final long lastSequence;

    /** Made when it is first asked for: most herds are never asked. */
    private volatile @Nullable Kinship kinship;

    private Herd(Collection<CalfRecord> calves, List<CalfRecord.Entry> ofTheBarn, long lastSequence) {
        calves.stream()
                .sorted(Comparator.comparingLong(Herd::opening))
                .forEach(calf -> this.calves.put(calf.id(), calf));
        this.ofTheBarn = List.copyOf(ofTheBarn);
        this.barn = ofTheBarn.stream()
                .filter(entry -> !entry.withdrawn() && !isWithdrawal(entry.recorded()))
                .map(CalfRecord.Entry::recorded)
                .toList();
        this.lastSequence = lastSequence;
    }

    public static Herd of(List<RecordedEvent> events) {
        return new Herd(List.of(), List.of(), 0).followedBy(bySequence(events));
    }

    /** The herd with these events added. What follows all others costs least. */
    public Herd plus(List<RecordedEvent> more) {
        NavigableMap<Long, RecordedEvent> sorted = bySequence(more);
        if (sorted.headMap(lastSequence, true).isEmpty()) {
            return followedBy(sorted);
        }
        List<RecordedEvent> all = new ArrayList<>();
        history().forEach(entry -> all.add(entry.recorded()));
        all.addAll(more);
        return of(all);
    }

    /** The herd with these events, which follow all others; of the calves only those they are about are made anew. */
    private Herd followedBy(NavigableMap<Long, RecordedEvent> events) {
        Map<CalfId, List<CalfRecord.Entry>> histories = new LinkedHashMap<>();
        List<CalfRecord.Entry> barnHistory = new ArrayList<>(ofTheBarn);
        for (RecordedEvent recorded : events.values()) {
            CalfId calf = recorded.calf();
            List<CalfRecord.Entry> history =
                    calf == null ? barnHistory : histories.computeIfAbsent(calf, id -> new ArrayList<>(historyOf(id)));
            history.add(new CalfRecord.Entry(recorded, false));
        }
        if (events.values().stream().anyMatch(Herd::isWithdrawal)) {
            withdraw(withdrawals(events.values()), histories, barnHistory);
        }
        Map<CalfId, CalfRecord> all = new LinkedHashMap<>(calves);
        histories.forEach((id, history) -> all.put(id, new CalfRecord(id, history)));
        return new Herd(all.values(), barnHistory, events.isEmpty() ? lastSequence : events.lastKey());
    }

    private Withdrawals withdrawals(Collection<RecordedEvent> more) {
        List<RecordedEvent> all = new ArrayList<>(more);
        entries().map(CalfRecord.Entry::recorded).filter(Herd::isWithdrawal).forEach(all::add);
        return Withdrawals.of(all);
    }

    /** Marks what counts no more and what counts again; of a calf that is not there yet, the history is put there. */
    private void withdraw(
            Withdrawals withdrawals,
            Map<CalfId, List<CalfRecord.Entry>> histories,
            List<CalfRecord.Entry> barnHistory) {
        for (CalfRecord calf : calves.values()) {
            if (calf.history().stream().anyMatch(entry -> entry.withdrawn() != withdrawals.reach(entry.recorded()))) {
                histories.computeIfAbsent(calf.id(), id -> new ArrayList<>(calf.history()));
            }
        }
        histories.values().forEach(history -> mark(withdrawals, history));
        mark(withdrawals, barnHistory);
    }

    private static void mark(Withdrawals withdrawals, List<CalfRecord.Entry> history) {
        history.replaceAll(entry -> new CalfRecord.Entry(entry.recorded(), withdrawals.reach(entry.recorded())));
    }

    /** The calves whose opening counts, the dead ones too, in the order in which they were opened. */
    public List<CalfRecord> calves() {
        return calves.values().stream()
                .filter(calf -> calf.has(CalfOpened.class))
                .toList();
    }

    /** The calf with this identity, also one whose opening was withdrawn. */
    public Optional<CalfRecord> calf(CalfId id) {
        return Optional.ofNullable(calves.get(id));
    }

    /** The youngest open calf that bears this number; leading zeros do not matter. */
    public Optional<CalfRecord> byNumber(String number) {
        return open().stream()
                .filter(calf -> calf.bears(number))
                .reduce((one, other) -> bornAbout(other).isBefore(bornAbout(one)) ? one : other);
    }

    /** The open calves of this cow in the order in which they were opened. */
    public List<CalfRecord> byDam(String dam) {
        return open().stream().filter(calf -> isOf(calf, dam)).toList();
    }

    /** The numbers by which open calves can be called. */
    public SortedSet<String> openNumbers() {
        SortedSet<String> numbers = new TreeSet<>();
        open().forEach(calf -> numbers.addAll(calf.numbers()));
        return numbers;
    }

    /** What was said of no single calf and counts, in the order of the record. */
    public List<RecordedEvent> barn() {
        return barn;
    }

    /** Everything that was told, in the order of the record, also what counts no more. */
    public List<CalfRecord.Entry> history() {
        return entries()
                .sorted(Comparator.comparingLong(entry -> entry.recorded().sequence()))
                .toList();
    }

    /**
     * The calves born together with this one, the dead ones too: of the same cow within 24 hours, or named as its twin
     * by either. Where several calves bore a named number, the one nearest in age is meant, and none that is further than
     * {@link #NAMED_TWINS_WITHIN} from it.
     */
    public List<CalfRecord> twinsOf(CalfRecord calf) {
        Kinship known = kinship;
        if (known == null) {
            known = new Kinship(calves());
            kinship = known;
        }
        return known.twinsOf(calf);
    }

    private Stream<CalfRecord.Entry> entries() {
        return Stream.concat(ofTheBarn.stream(), calves.values().stream().flatMap(calf -> calf.history().stream()));
    }

    private List<CalfRecord> open() {
        return calves().stream().filter(CalfRecord::isOpen).toList();
    }

    private static boolean isOf(CalfRecord calf, String dam) {
        return calf.dam().filter(own -> Numbers.same(own, dam)).isPresent();
    }

    private static Instant bornAbout(CalfRecord calf) {
        return calf.bornAbout().orElse(Instant.EPOCH);
    }

    private static NavigableMap<Long, RecordedEvent> bySequence(Collection<RecordedEvent> events) {
        NavigableMap<Long, RecordedEvent> sorted = new TreeMap<>();
        events.forEach(recorded -> sorted.put(recorded.sequence(), recorded));
        return sorted;
    }

    private List<CalfRecord.Entry> historyOf(CalfId id) {
        return calf(id).map(CalfRecord::history).orElseGet(List::of);
    }

    private static boolean isWithdrawal(RecordedEvent recorded) {
        return recorded.event() instanceof EventWithdrawn;
    }

    /** The place of its opening in the record; of a withdrawn one too, so that an undo moves no other calf. */
    private static long opening(CalfRecord calf) {
        for (CalfRecord.Entry entry : calf.history()) {
            if (entry.recorded().event() instanceof CalfOpened) {
                return entry.recorded().sequence();
            }
        }
        return calf.history().get(0).recorded().sequence();
    }
}
