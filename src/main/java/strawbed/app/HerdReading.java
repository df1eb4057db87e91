package strawbed.app;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.care.CareWindow;
import strawbed.care.Farm;
import strawbed.event.CalfId;
import strawbed.event.Event.CardPrinted;
import strawbed.event.Event.ColostrumSourceNoted;
import strawbed.event.Event.TwinNoted;
import strawbed.event.RecordedEvent;
import strawbed.journal.RecordParts;
import strawbed.journal.RecordParts.Naming;

/**
 * Reads what a question needs and no more: a herd of few calves, about which the same can be said as about the whole
 * one. A calf too many does no harm, as each is judged by its own events, its twins and the barn.
 */
final class HerdReading {
    /** Longer than a reading of the air can hold. */
    private static final Duration AIR_HOLDS = Duration.ofDays(2);

    /** Calves of one cow within a day are twins, whatever the time of day. */
    private static final Duration TWINS = Duration.ofDays(2);

    /** Where many calves have borne a number, most of them did so before. */
    private static final Duration NUMBERS_COME_AGAIN = Duration.ofDays(60);

    private static final Instant EVER = Instant.MIN;

    private final RecordParts record;
    private final Instant until;
    private final Set<CalfId> read = new HashSet<>();
    private final List<RecordedEvent> events = new ArrayList<>();

    private HerdReading(RecordParts record, Instant until) {
        this.record = record;
        this.until = until;
    }

    /**
     * The calves that care is about now, see {@link CareWindow}, with their twins, the calves fed from colostrum that is
     * in stock, and the whole barn.
     *
     * @param until what was recorded later is left out
     */
    static Herd recent(RecordParts record, Instant now, Instant until) {
        HerdReading reading = new HerdReading(record, until);
        Instant from = CareWindow.from(now);
        Farm farm = Farm.of(Herd.of(reading.add(record.ofBarn(EVER))));
        Set<CalfId> calves = new HashSet<>(record.calvesRecorded(from, until));
        calves.addAll(record.calvesNaming(Naming.BATCH, olderStock(farm, from, now)));
        return reading.withTwins(calves, from);
    }

    /**
     * The calves of the last day alone, without their older twins: what a big record is called by in the first seconds,
     * while the rest is read. What is due and in stock cannot be told from it.
     */
    static Herd fresh(RecordParts record, Instant now, Instant until) {
        HerdReading reading = new HerdReading(record, until);
        Instant from = CareWindow.freshFrom(now);
        reading.add(record.ofBarn(from.minus(AIR_HOLDS)));
        reading.addCalves(record.calvesRecorded(from, until));
        return Herd.of(reading.events);
    }

    /**
     * Every calf that was born since this time, as far as it was told by now, with the whole barn.
     *
     * @param from a calf born since then has a fact that was recorded since then
     */
    static Herd bornSince(RecordParts record, Instant from) {
        HerdReading reading = new HerdReading(record, Instant.MAX);
        reading.add(record.since(from));
        reading.add(record.ofBarn(EVER));
        return Herd.of(reading.events);
    }

    /** @param from what is younger has its twins among these calves */
    private Herd withTwins(Set<CalfId> calves, Instant from) {
        Herd few = Herd.of(addCalves(calves));
        Instant young = from.plus(Herd.NAMED_TWINS_WITHIN).plus(TWINS);
        addTwins(few.calves().stream()
                .filter(calf -> bornAbout(calf).isBefore(young))
                .toList());
        return Herd.of(events);
    }

    /**
     * The calves that a number or id can mean, now or, if it means none now, once, with the twins of the one that is meant, its sisters and
     * brothers where it is called by its dam, and what of the barn has to do with it.
     *
     * @param until what was recorded later is left out
     */
    static Herd around(RecordParts record, String wanted, Instant now, Instant until) {
        HerdReading reading = new HerdReading(record, until);
        RecordReading.id(wanted).ifPresent(id -> reading.addCalves(List.of(id)));
        Instant from = now.minus(NUMBERS_COME_AGAIN);
        Herd late = reading.addNumbered(wanted, from);
        // Of calves of which nothing was recorded since then, none can have been born later.
        boolean isYoungest = late.byNumber(wanted)
                .filter(calf -> !bornAbout(calf).isBefore(from))
                .isPresent();
        Herd known = isYoungest ? late : reading.addNumbered(wanted, EVER);
        RecordReading.find(known, wanted).ifPresent(calf -> reading.addAround(calf, now));
        return Herd.of(reading.events);
    }

    private Herd addNumbered(String number, Instant since) {
        addCalves(record.calvesNaming(Naming.NUMBER, Map.of(number, since)));
        return Herd.of(events);
    }

    private void addAround(CalfRecord calf, Instant now) {
        addTwins(List.of(calf));
        if (calf.number().isEmpty()) {
            addCalves(record.calvesNaming(
                    Naming.DAM, calf.dam().map(dam -> Map.of(dam, EVER)).orElseGet(Map::of)));
        }
        add(record.protocols());
        add(record.stored(calf.all(ColostrumSourceNoted.class).stream()
                .map(noted -> noted.event().batch())
                .filter(Objects::nonNull)
                .collect(Collectors.toSet())));
        // What was printed long after needs no air.
        List<Instant> times = calf.history().stream()
                .filter(entry -> !(entry.recorded().event() instanceof CardPrinted))
                .map(entry -> entry.recorded().occurredAt())
                .sorted()
                .toList();
        add(record.air(
                times.get(0).minus(AIR_HOLDS), times.get(times.size() - 1).plus(AIR_HOLDS)));
        add(record.air(now.minus(AIR_HOLDS), now));
    }

    /** Batches whose last colostrum is older, with the time from which on calves were fed from it. */
    private static Map<String, Instant> olderStock(Farm farm, Instant from, Instant now) {
        Map<String, Instant> older = new HashMap<>();
        farm.stored().stream()
                .map(stored -> stored.event().batch())
                .distinct()
                .forEach(batch -> farm.storedAs(batch, now)
                        .filter(stored -> stored.at().isBefore(from))
                        .ifPresent(stored -> older.put(batch, stored.at())));
        return older;
    }

    /**
     * First those that name one of these as their twin, then all that can be meant by a number that one of them names: of
     * several, the nearest in age is the twin.
     */
    private void addTwins(List<CalfRecord> calves) {
        Map<String, Instant> numbers = new HashMap<>();
        Map<String, Instant> dams = new HashMap<>();
        for (CalfRecord calf : calves) {
            calf.numbers().forEach(number -> earliest(numbers, number, twinsFrom(calf)));
            calf.dam().ifPresent(dam -> earliest(dams, dam, bornAbout(calf).minus(TWINS)));
        }
        addCalves(record.calvesNaming(Naming.DAM, dams));
        Set<CalfId> naming = record.calvesNaming(Naming.TWIN, numbers);
        addCalves(naming);
        Map<String, Instant> named = new HashMap<>();
        Stream.concat(calves.stream(), part(naming).calves().stream())
                .forEach(calf ->
                        calf.twin().map(TwinNoted::of).ifPresent(number -> earliest(named, number, twinsFrom(calf))));
        addCalves(record.calvesNaming(Naming.NUMBER, named));
    }

    /** Adds those that are not there yet. */
    private List<RecordedEvent> addCalves(Collection<CalfId> calves) {
        List<CalfId> more = calves.stream().filter(read::add).toList();
        return add(record.ofCalves(more));
    }

    private Herd part(Set<CalfId> calves) {
        return Herd.of(known(record.ofCalves(calves)));
    }

    /** Adds what was recorded by then, and gives it. */
    private List<RecordedEvent> add(List<RecordedEvent> more) {
        List<RecordedEvent> known = known(more);
        events.addAll(known);
        return known;
    }

    private List<RecordedEvent> known(List<RecordedEvent> some) {
        return some.stream()
                .filter(recorded -> !recorded.recordedAt().isAfter(until))
                .toList();
    }

    private static void earliest(Map<String, Instant> since, String name, Instant from) {
        since.merge(name, from, (one, other) -> one.isBefore(other) ? one : other);
    }

    private static Instant twinsFrom(CalfRecord calf) {
        return bornAbout(calf).minus(Herd.NAMED_TWINS_WITHIN);
    }

    private static Instant bornAbout(CalfRecord calf) {
        return calf.bornAbout().orElse(Instant.EPOCH);
    }
}
