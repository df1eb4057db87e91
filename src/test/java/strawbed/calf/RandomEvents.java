package strawbed.calf;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** Any events in any order, the same for the same seed. */
public final class RandomEvents {
    private static final List<String> NUMBERS = List.of("412", "0412", "7", "000", "A12", "");
    private static final List<String> CALVES = List.of("A", "B", "C");

    private final Random random;

    public RandomEvents(long seed) {
        this.random = new Random(seed);
    }

    /** This many events of three calves and the barn, within two days, in no order of time. */
    public Told told(int count) {
        Told told = new Told();
        for (int i = 0; i < count; i++) {
            String calf = pick(CALVES);
            told.tell(random.nextInt(20) == 0 ? null : Told.calf(calf), instant(), event(told.events()));
        }
        return told;
    }

    /** One event of any kind; a withdrawal names an earlier one, or one that never was. */
    public Event event(List<RecordedEvent> earlier) {
        List<Supplier<Event>> kinds = List.of(
                () -> new Event.CalfOpened(maybe(number()), maybe(number())),
                () -> new Event.CalfNumbered(number()),
                () -> new Event.DamNoted(number(), maybe(1 + random.nextInt(9))),
                () -> new Event.BreedNoted("Holstein"),
                () -> new Event.TwinNoted(maybe(number()), 2 + random.nextInt(4)),
                () -> new Event.SexNoted(any(Term.Sex.class)),
                () -> new Event.EarTagFitted(number(), any(Term.TagScheme.class)),
                () -> new Event.CalfBorn(when()),
                () -> new Event.CalfFound(when()),
                () -> random.nextBoolean()
                        ? new Event.CalvingEaseNoted(any(Term.CalvingEase.class), null)
                        : Told.score(1 + random.nextInt(5)),
                () -> new Event.PresentationNoted(any(Term.Presentation.class)),
                () -> new Event.CalfDied(instant(), any(Term.DeathTime.class)),
                () -> new Event.BreathingNoted(any(Term.Breathing.class)),
                () -> new Event.BreathingStimulated(any(Term.Stimulation.class)),
                () -> new Event.LickingNoted(random.nextBoolean()),
                () -> new Event.CalfDried(maybe(any(Term.DryingMeans.class))),
                () -> new Event.ShelterGiven(any(Term.Shelter.class)),
                () -> new Event.MilestoneReached(any(Term.Milestone.class)),
                () -> new Event.SignNoted(any(Term.Sign.class), maybe("head"), maybe("blue")),
                () -> new Event.NavelDipped(maybe(any(Term.NavelAgent.class)), maybe(decimal(20))),
                () -> new Event.NavelChecked(any(Term.NavelFinding.class)),
                () -> new Event.TemperatureTaken(temperature()),
                () -> new Event.HeartRateCounted(random.nextInt(400)),
                () -> new Event.BreathingRateCounted(random.nextInt(400)),
                () -> new Event.CalfWeighed(
                        new Mass(decimal(100), any(MassUnit.class)), maybe(any(Term.WeighingMethod.class))),
                () -> new Event.SerumTested(any(Term.SerumMeasure.class), decimal(20), maybe(instant())),
                () -> new Event.ColostrumTestedByBrix(decimal(50)),
                () -> new Event.ColostrumTestedByHydrometer(decimal(200), maybe(temperature())),
                () -> new Event.ColostrumSourceNoted(
                        maybe(any(Term.ColostrumSource.class)), maybe(number()), maybe("b1"), null),
                () -> new Event.ColostrumFed(volume(), maybe(any(Term.FeedingMethod.class)), maybe(temperature())),
                () -> new Event.ColostrumLeft(volume()),
                Event.FeedRefused::new,
                Event.DamNursed::new,
                () -> new Event.CalfMoved("hutch 3"),
                () -> new Event.VetCalled(maybe("v.wav")),
                () -> new Event.TreatmentNoted(any(Term.Treatment.class), maybe("t.wav")),
                () -> new Event.VoiceNoteTaken(maybe("n.wav")),
                () -> new Event.BarnClimateNoted(temperature(), maybe(decimal(120))),
                () -> new Event.ColostrumStored("b1", volume(), maybe(decimal(50)), null),
                () -> new Event.ProtocolAdopted(
                        new TreeMap<>(Map.of("target_within_hours", pick(List.of("1.5", "2", "3", "x"))))),
                () -> new Event.CardPrinted(1 + random.nextInt(3), any(Term.Printout.class), any(Term.CardSize.class)),
                () -> new Event.OperatorChosen(maybe("Ines")),
                () -> new Event.SoundsRemoved(3, 4_000_000),
                () -> new Event.ClockChanged(Instant.EPOCH, Instant.EPOCH.plusSeconds(60)),
                () -> new Event.ZoneChanged(ZoneOffset.UTC, ZoneId.of("America/Chicago")),
                () -> new Event.EventWithdrawn(
                        earlier.isEmpty()
                                ? EventId.of("00000000-0000-7000-8000-000000000000")
                                : pick(earlier).id()));
        return pick(kinds).get();
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private <T extends Enum<T>> T any(Class<T> terms) {
        return pick(List.of(terms.getEnumConstants()));
    }

    private <T> @Nullable T maybe(T value) {
        return random.nextBoolean() ? value : null;
    }

    private String number() {
        return pick(NUMBERS);
    }

    private BigDecimal decimal(int below) {
        return BigDecimal.valueOf(random.nextInt(below * 10), 1);
    }

    private Volume volume() {
        return new Volume(decimal(8), any(VolumeUnit.class));
    }

    private Temperature temperature() {
        return new Temperature(decimal(110), any(TemperatureUnit.class));
    }

    private Instant instant() {
        return Told.MIDNIGHT.plus(Duration.ofMinutes(random.nextInt(2 * 24 * 60)));
    }

    private When when() {
        Instant earliest = instant();
        return random.nextBoolean() ? new When.At(earliest) : new When.Between(earliest, earliest.plusSeconds(7200));
    }
}
