package strawbed.bench;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/**
 * An invented record of many open calves, all born within a day, each with 10 to 25 events: the older the calf, the
 * more. The barn is cold, one protocol was adopted, and one calf in thirty has a withdrawn event. The same for the same
 * seed.
 */
final class BusyNight {
    static final Instant NOW = Instant.parse("2026-03-02T06:00:00Z");

    private static final int DAY_MINUTES = 24 * 60;
    private static final int LEAST_EVENTS = 10;
    private static final int MOST_EVENTS = 25;
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");

    private final Random random;
    private final List<Happened> happened = new ArrayList<>();

    /** Something that happened to a calf, or to none. */
    private record Happened(Instant at, @Nullable CalfId calf, Event event) {}

    private BusyNight(long seed) {
        this.random = new Random(seed);
    }

    /** The whole record up to {@link #NOW}, in its order. */
    static List<RecordedEvent> of(int calves, long seed) {
        BusyNight night = new BusyNight(seed);
        night.barn();
        for (int i = 0; i < calves; i++) {
            night.calf(i);
        }
        return night.recorded();
    }

    /** What is told of one calf of this record in one statement of three facts. */
    static List<RecordedEvent> statement(List<RecordedEvent> record) {
        RecordedEvent last = record.get(record.size() - 1);
        List<RecordedEvent> told = new ArrayList<>();
        for (Event event :
                List.of(dipped(), temperature("101.3"), new Event.MilestoneReached(Term.Milestone.SUCKING))) {
            told.add(recorded(last.sequence() + 1 + told.size(), new Happened(NOW, last.calf(), event)));
        }
        return told;
    }

    private void barn() {
        Instant begin = NOW.minus(Duration.ofMinutes(DAY_MINUTES));
        happened.add(new Happened(begin, null, new Event.ProtocolAdopted(new TreeMap<>())));
        for (int hour = 0; hour < 24; hour += 2) {
            happened.add(new Happened(
                    begin.plus(Duration.ofHours(hour)),
                    null,
                    new Event.BarnClimateNoted(
                            new Temperature(BigDecimal.valueOf(20 + random.nextInt(30)), TemperatureUnit.FAHRENHEIT),
                            BigDecimal.valueOf(60))));
        }
    }

    private void calf(int i) {
        CalfId calf = new CalfId(UUID.nameUUIDFromBytes(("calf " + i).getBytes(StandardCharsets.UTF_8)));
        int age = random.nextInt(DAY_MINUTES);
        Instant birth = NOW.minus(Duration.ofMinutes(age));
        int count = LEAST_EVENTS + (MOST_EVENTS - LEAST_EVENTS) * age / DAY_MINUTES + random.nextInt(3) - 1;
        List<Event> events = firstDay(i, birth);
        int[] minutes = {
            0, 0, 0, 1, 1, 2, 5, 9, 12, 14, 16, 25, 40, 41, 45, 60, 75, 76, 90, 480, 481, 490, 600, 720, 721
        };
        for (int k = 0; k < Math.max(LEAST_EVENTS, Math.min(count, events.size())); k++) {
            happened.add(new Happened(birth.plus(Duration.ofMinutes(Math.min(minutes[k], age))), calf, events.get(k)));
        }
    }

    private List<Event> firstDay(int i, Instant birth) {
        boolean hard = random.nextInt(10) == 0;
        boolean coldCalf = random.nextInt(8) == 0;
        return List.of(
                new Event.CalfOpened(String.valueOf(i), String.valueOf(100_000 + i)),
                random.nextInt(10) == 0
                        ? new Event.CalfFound(new When.At(birth))
                        : new Event.CalfBorn(new When.At(birth)),
                new Event.SexNoted(random.nextBoolean() ? Term.Sex.FEMALE : Term.Sex.MALE),
                new Event.CalvingEaseNoted(
                        hard ? Term.CalvingEase.DIFFICULT_ASSIST : Term.CalvingEase.UNASSISTED, null),
                new Event.BreathingNoted(random.nextInt(20) == 0 ? Term.Breathing.GASPING : Term.Breathing.WELL),
                new Event.BreathingNoted(Term.Breathing.WELL),
                new Event.LickingNoted(random.nextBoolean()),
                new Event.MilestoneReached(Term.Milestone.ON_ITS_BREASTBONE),
                new Event.CalfDried(Term.DryingMeans.TOWEL),
                dipped(),
                temperature(coldCalf ? "99.1" : "101.8"),
                new Event.ShelterGiven(Term.Shelter.JACKET),
                new Event.MilestoneReached(Term.Milestone.STANDING),
                new Event.ColostrumTestedByBrix(new BigDecimal("23.5")),
                temperature("101.4"),
                fed("4"),
                new Event.ColostrumLeft(new Volume(BigDecimal.ONE, VolumeUnit.QUART)),
                new Event.CalfWeighed(new Mass(BigDecimal.valueOf(80 + random.nextInt(25)), MassUnit.POUND), null),
                new Event.EarTagFitted(String.valueOf(i), Term.TagScheme.FARM),
                fed("2"),
                dipped(),
                temperature("101.9"),
                new Event.SignNoted(Term.Sign.SUCK_REFLEX, null, null),
                new Event.NavelChecked(Term.NavelFinding.CLEAN),
                new Event.CalfMoved("hutch " + i));
    }

    private List<RecordedEvent> recorded() {
        List<RecordedEvent> recorded = new ArrayList<>();
        happened.sort(Comparator.comparing(Happened::at));
        for (Happened each : happened) {
            recorded.add(recorded(recorded.size() + 1L, each));
            if (each.event() instanceof Event.EarTagFitted && random.nextInt(30) == 0) {
                Event undo = new Event.EventWithdrawn(
                        recorded.get(recorded.size() - 1).id());
                recorded.add(recorded(recorded.size() + 1L, new Happened(each.at(), each.calf(), undo)));
            }
        }
        return recorded;
    }

    private static RecordedEvent recorded(long sequence, Happened happened) {
        return new RecordedEvent(
                new EventId(new UUID(0x7000L, sequence)),
                sequence,
                happened.at(),
                happened.at(),
                ZONE,
                happened.calf(),
                happened.event(),
                Provenance.of(Provenance.Source.COMMAND));
    }

    private static Event dipped() {
        return new Event.NavelDipped(Term.NavelAgent.IODINE, BigDecimal.valueOf(7));
    }

    private static Event temperature(String fahrenheit) {
        return new Event.TemperatureTaken(new Temperature(new BigDecimal(fahrenheit), TemperatureUnit.FAHRENHEIT));
    }

    private static Event fed(String quarts) {
        return new Event.ColostrumFed(
                new Volume(new BigDecimal(quarts), VolumeUnit.QUART), Term.FeedingMethod.BOTTLE, null);
    }
}
