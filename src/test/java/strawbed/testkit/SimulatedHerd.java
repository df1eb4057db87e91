package strawbed.testkit;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Protocol;

/**
 * The record of an invented herd over years, event by event in its order; only what lies ahead of the calves of the last
 * weeks is in memory. About 27 events a calf. The same for the same seed, to the last byte.
 *
 * <p>Published: twins of 4.2 % of calvings and their sexes (Silva del Rio 2007, Journal of Dairy Science 90:1255), Brix of
 * colostrum 23.8 with a standard deviation of 3.5 (Quigley 2013, doi 10.3168/jds.2012-5823), and what
 * {@link SimulatedCalf} names. All other shares and times are invented.
 */
@SuppressWarnings("NullAway") // The null checker cannot see in the compiled records which parts may be missing.
public final class SimulatedHerd implements Iterator<RecordedEvent> {
    public static final ZoneId ZONE = ZoneId.of("America/Chicago");

    /** Calves get the numbers from 1 to this again and again. */
    static final int NUMBERS = 2000;

    private static final int BATCHES = 300;
    private static final double TWIN_CALVINGS = 0.042;
    private static final double TWO_BULLS = 0.301;
    private static final double BULL_AND_HEIFER = 0.436;
    private static final double CULLED_A_YEAR = 0.35;
    private static final int DAYS_OF_A_YEAR = 365;
    private static final Duration AIR_EVERY = Duration.ofHours(12);

    /** Told at one time by one person. */
    record Told(Instant recordedAt, long order, List<Fact> facts, boolean isUndone) {}

    /** Something that is told. */
    record Fact(@Nullable CalfId calf, Instant occurredAt, Event event) {}

    /** A cow of the herd; her calvings so far. */
    private record Cow(String number, int calvings) {}

    private final Chance chance;
    private final PriorityQueue<Told> ahead =
            new PriorityQueue<>(Comparator.comparing(Told::recordedAt).thenComparing(Told::order));
    private final Deque<RecordedEvent> ready = new ArrayDeque<>();
    private final Deque<Cow> cows = new ArrayDeque<>();
    private final double secondsBetweenCalvings;
    private final int calvesWanted;
    private Instant nextCalving;
    private Instant nextAir;
    private Instant nextStoring;
    private Instant nextProtocol;
    private int calves;
    private int newestCow;
    private int batch;
    private int protocols;
    private long order;
    private long sequence;

    /**
     * @param calves how many are born in all; a few more with a twin at the end
     * @param aDay how many are born a day
     * @param from when the farm takes up the record
     */
    public SimulatedHerd(int calves, double aDay, Instant from, long seed) {
        this.chance = new Chance(seed);
        this.calvesWanted = calves;
        this.secondsBetweenCalvings = Duration.ofDays(1).toSeconds() / aDay;
        int size = Math.max(2, (int) (aDay * DAYS_OF_A_YEAR));
        for (int i = 0; i < size; i++) {
            cows.add(new Cow(cowNumber(), chance.below(5)));
        }
        this.nextProtocol = from;
        this.nextAir = from.plusSeconds(1);
        this.nextStoring = from.plusSeconds(2);
        this.nextCalving = from.plusSeconds(3);
    }

    @Override
    public boolean hasNext() {
        while (ready.isEmpty() && (calves < calvesWanted || !ahead.isEmpty())) {
            plan();
            if (!ahead.isEmpty()) {
                record(ahead.remove());
            }
        }
        return !ready.isEmpty();
    }

    @Override
    public RecordedEvent next() {
        if (!hasNext()) {
            throw new NoSuchElementException("the herd has no more events");
        }
        return ready.remove();
    }

    /** All that is left. */
    public List<RecordedEvent> rest() {
        List<RecordedEvent> rest = new ArrayList<>();
        forEachRemaining(rest::add);
        return rest;
    }

    /** Whatever begins before the next thing that is told. */
    private void plan() {
        while (calves < calvesWanted && begins().compareTo(head()) <= 0) {
            if (nextCalving.equals(begins())) {
                calving();
                nextCalving = nextCalving.plusSeconds(chance.wait(secondsBetweenCalvings));
            } else if (nextAir.equals(begins())) {
                air();
                nextAir = nextAir.plus(AIR_EVERY);
            } else if (nextStoring.equals(begins())) {
                storing();
                nextStoring = nextStoring.plusSeconds(chance.wait(10 * secondsBetweenCalvings));
            } else {
                protocol();
                nextProtocol = nextProtocol.plus(Duration.ofDays(200 + chance.below(600)));
            }
        }
    }

    private Instant begins() {
        Instant barn = nextAir.isBefore(nextStoring) ? nextAir : nextStoring;
        Instant calf = nextCalving.isBefore(nextProtocol) ? nextCalving : nextProtocol;
        return barn.isBefore(calf) ? barn : calf;
    }

    private Instant head() {
        return ahead.isEmpty() ? Instant.MAX : ahead.element().recordedAt();
    }

    private void record(Told told) {
        List<EventId> ids = new ArrayList<>();
        for (int i = 0; i < told.facts().size(); i++) {
            ids.add(new EventId(chance.id(told.recordedAt())));
        }
        var how = SimulatedSpeech.of(told);
        for (int i = 0; i < ids.size(); i++) {
            Fact fact = told.facts().get(i);
            sequence++;
            ready.add(new RecordedEvent(
                    ids.get(i), sequence, told.recordedAt(), fact.occurredAt(), ZONE, fact.calf(), fact.event(), how));
        }
        if (told.isUndone()) {
            // As the dialog does it: a withdrawal is of no calf, and the last fact goes first.
            Instant then = told.recordedAt().plusSeconds(5 + chance.below(60));
            List<Fact> undo = new ArrayList<>();
            for (int i = ids.size() - 1; i >= 0; i--) {
                undo.add(new Fact(null, then, new Event.EventWithdrawn(ids.get(i))));
            }
            tell(then, undo, false);
            tell(then.plusSeconds(20), told.facts(), false);
        }
    }

    /** Puts what is told in its place. */
    void tell(Instant recordedAt, List<Fact> facts, boolean isUndone) {
        ahead.add(new Told(recordedAt.truncatedTo(ChronoUnit.MILLIS), order++, List.copyOf(facts), isUndone));
    }

    private void calving() {
        Cow cow = cows.remove();
        Cow again = new Cow(cow.number(), cow.calvings() + 1);
        cows.add(chance.is(CULLED_A_YEAR) ? new Cow(cowNumber(), 0) : again);
        if (!chance.is(TWIN_CALVINGS)) {
            new SimulatedCalf(this, chance, again.number(), again.calvings(), nextCalving, sex(0.5), born(), null)
                    .tell();
            return;
        }
        double pair = chance.share();
        boolean isFirstBull = pair < TWO_BULLS + BULL_AND_HEIFER;
        boolean isSecondBull = pair < TWO_BULLS;
        String first = born();
        String second = born();
        new SimulatedCalf(this, chance, again.number(), again.calvings(), nextCalving, sex(isFirstBull), first, second)
                .tell();
        Instant later = nextCalving.plusSeconds(300 + chance.below(3600));
        new SimulatedCalf(this, chance, again.number(), again.calvings(), later, sex(isSecondBull), second, first)
                .tell();
    }

    private Term.Sex sex(double bulls) {
        return sex(chance.is(bulls));
    }

    private static Term.Sex sex(boolean isBull) {
        return isBull ? Term.Sex.MALE : Term.Sex.FEMALE;
    }

    private String born() {
        calves++;
        return String.valueOf((calves - 1) % NUMBERS + 1);
    }

    private String cowNumber() {
        newestCow++;
        return String.valueOf(newestCow % 10_000);
    }

    /** The batch that somebody takes, of those stored last. */
    String someBatch() {
        return String.valueOf(Math.max(1, batch - chance.below(12)) % BATCHES);
    }

    private void air() {
        ZonedDateTime local = nextAir.atZone(ZONE);
        double season = -Math.cos(2 * Math.PI * local.getDayOfYear() / DAYS_OF_A_YEAR);
        long fahrenheit = Math.round(48 + 28 * season + chance.about(0, 9));
        BigDecimal humidity = chance.is(0.3) ? null : BigDecimal.valueOf(40 + chance.below(50));
        tellBarn(
                nextAir,
                new Event.BarnClimateNoted(
                        new Temperature(BigDecimal.valueOf(fahrenheit), TemperatureUnit.FAHRENHEIT), humidity));
    }

    private void storing() {
        batch++;
        Term.ColostrumTreatment treatment = chance.is(0.4)
                ? Term.ColostrumTreatment.FROZEN
                : chance.is(0.3) ? Term.ColostrumTreatment.HEAT_TREATED : null;
        tellBarn(
                nextStoring,
                new Event.ColostrumStored(
                        String.valueOf(batch % BATCHES),
                        new Volume(BigDecimal.valueOf(4 + chance.below(16)), VolumeUnit.QUART),
                        chance.is(0.2) ? null : chance.decimal(23.8, 3.5, 9, 35, 1),
                        treatment));
    }

    private void protocol() {
        SortedMap<String, String> settings = new TreeMap<>(Protocol.usual().settings());
        if (protocols > 0) {
            settings.put("target_within_hours", protocols % 2 == 0 ? "2" : "3");
            settings.put("good_from_brix_percent", String.valueOf(21 + protocols % 4));
            settings.put("due_list_hours", String.valueOf(24 * (1 + protocols % 3)));
        }
        protocols++;
        tellBarn(nextProtocol, new Event.ProtocolAdopted(settings));
    }

    private void tellBarn(Instant at, Event event) {
        tell(at.plusSeconds(4), List.of(new Fact(null, at, event)), chance.is(0.01));
    }
}
