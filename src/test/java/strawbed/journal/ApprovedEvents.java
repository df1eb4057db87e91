package strawbed.journal;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.TreeMap;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** What each approved file says, by its name without the ending. */
final class ApprovedEvents {
    private static final Instant T = Instant.parse("2026-11-24T08:05:00Z");
    private static final Instant U = Instant.parse("2026-11-24T10:30:00.250Z");

    static final Map<String, Event> BY_NAME = Map.ofEntries(
            Map.entry("CalfOpened.v1", new Event.CalfOpened("130", "2207")),
            Map.entry("CalfOpened.v1.unknown", new Event.CalfOpened(null, null)),
            Map.entry("CalfNumbered.v1", new Event.CalfNumbered("0131")),
            Map.entry("DamNoted.v1", new Event.DamNoted("2207", 3)),
            Map.entry("DamNoted.v1.parity", new Event.DamNoted(null, 1)),
            Map.entry("BreedNoted.v1", new Event.BreedNoted("holstein")),
            Map.entry("TwinNoted.v1", new Event.TwinNoted("131", 2)),
            Map.entry("TwinNoted.v1.count", new Event.TwinNoted(null, 3)),
            Map.entry("SexNoted.v1", new Event.SexNoted(Term.Sex.FEMALE)),
            Map.entry("EarTagFitted.v1", new Event.EarTagFitted("840003123456789", Term.TagScheme.OFFICIAL)),
            Map.entry("CalfBorn.v1.at", new Event.CalfBorn(new When.At(T))),
            Map.entry("CalfBorn.v1.window", new Event.CalfBorn(new When.Between(T, U))),
            Map.entry("CalfFound.v1.at", new Event.CalfFound(new When.At(T))),
            Map.entry("CalfFound.v1.window", new Event.CalfFound(new When.Between(T, U))),
            Map.entry("CalvingEaseNoted.v1.ease", new Event.CalvingEaseNoted(Term.CalvingEase.VET_ASSIST, null)),
            Map.entry("CalvingEaseNoted.v1.score", score(2)),
            Map.entry("PresentationNoted.v1", new Event.PresentationNoted(Term.Presentation.BACKWARDS)),
            Map.entry("CalfDied.v1", new Event.CalfDied(T, Term.DeathTime.AT_BIRTH)),
            Map.entry("BreathingNoted.v1", new Event.BreathingNoted(Term.Breathing.GASPING)),
            Map.entry("BreathingStimulated.v1", new Event.BreathingStimulated(Term.Stimulation.STRAW_IN_THE_NOSE)),
            Map.entry("LickingNoted.v1", new Event.LickingNoted(true)),
            Map.entry("LickingNoted.v1.not", new Event.LickingNoted(false)),
            Map.entry("CalfDried.v1", new Event.CalfDried(Term.DryingMeans.TOWEL)),
            Map.entry("CalfDried.v1.unknown", new Event.CalfDried(null)),
            Map.entry("ShelterGiven.v1", new Event.ShelterGiven(Term.Shelter.HEAT_LAMP)),
            Map.entry("MilestoneReached.v1", new Event.MilestoneReached(Term.Milestone.ON_ITS_BREASTBONE)),
            Map.entry("SignNoted.v1", new Event.SignNoted(Term.Sign.SWOLLEN, "left knee", "hot")),
            Map.entry("SignNoted.v1.sign", new Event.SignNoted(Term.Sign.MECONIUM, null, null)),
            Map.entry("NavelDipped.v1", new Event.NavelDipped(Term.NavelAgent.IODINE, new BigDecimal("7"))),
            Map.entry("NavelDipped.v1.unknown", new Event.NavelDipped(null, null)),
            Map.entry("NavelChecked.v1", new Event.NavelChecked(Term.NavelFinding.WET)),
            Map.entry(
                    "TemperatureTaken.v1",
                    new Event.TemperatureTaken(new Temperature(new BigDecimal("101.5"), TemperatureUnit.FAHRENHEIT))),
            Map.entry("HeartRateCounted.v1", new Event.HeartRateCounted(120)),
            Map.entry("BreathingRateCounted.v1", new Event.BreathingRateCounted(48)),
            Map.entry(
                    "CalfWeighed.v1",
                    new Event.CalfWeighed(new Mass(new BigDecimal("85.5"), MassUnit.POUND), Term.WeighingMethod.TAPE)),
            Map.entry(
                    "CalfWeighed.v1.kilogram",
                    new Event.CalfWeighed(new Mass(new BigDecimal("40"), MassUnit.KILOGRAM), null)),
            Map.entry(
                    "ProtocolAdopted.v1",
                    new Event.ProtocolAdopted(
                            new TreeMap<>(Map.of("target_within_hours", "2", "watch_minutes", "30, 60")))),
            Map.entry(
                    "SerumTested.v1.antibody",
                    new Event.SerumTested(Term.SerumMeasure.IGG, new BigDecimal("18.5"), null)),
            Map.entry("SerumTested.v1", new Event.SerumTested(Term.SerumMeasure.PROTEIN, new BigDecimal("5.6"), T)),
            Map.entry(
                    "SerumTested.v1.undated",
                    new Event.SerumTested(Term.SerumMeasure.BRIX, new BigDecimal("8.4"), null)),
            Map.entry("ColostrumTested.v1.brix", new Event.ColostrumTestedByBrix(new BigDecimal("24.5"))),
            Map.entry(
                    "ColostrumTested.v1.hydrometer",
                    new Event.ColostrumTestedByHydrometer(
                            new BigDecimal("60"), new Temperature(new BigDecimal("72"), TemperatureUnit.FAHRENHEIT))),
            Map.entry(
                    "ColostrumTested.v1.hydrometer-only",
                    new Event.ColostrumTestedByHydrometer(new BigDecimal("60"), null)),
            Map.entry(
                    "ColostrumSourceNoted.v1",
                    new Event.ColostrumSourceNoted(
                            Term.ColostrumSource.COW, "2207", "14", Term.ColostrumTreatment.HEAT_TREATED)),
            Map.entry("ColostrumSourceNoted.v1.unknown", new Event.ColostrumSourceNoted(null, null, null, null)),
            Map.entry(
                    "ColostrumFed.v1",
                    new Event.ColostrumFed(
                            new Volume(new BigDecimal("3.5"), VolumeUnit.QUART),
                            Term.FeedingMethod.TUBE,
                            new Temperature(new BigDecimal("102"), TemperatureUnit.FAHRENHEIT))),
            Map.entry(
                    "ColostrumFed.v1.litre",
                    new Event.ColostrumFed(new Volume(new BigDecimal("2.5"), VolumeUnit.LITRE), null, null)),
            Map.entry("ColostrumLeft.v1", new Event.ColostrumLeft(new Volume(new BigDecimal("1"), VolumeUnit.PINT))),
            Map.entry("FeedRefused.v1", new Event.FeedRefused()),
            Map.entry("DamNursed.v1", new Event.DamNursed()),
            Map.entry("CalfMoved.v1", new Event.CalfMoved("hutch 12")),
            Map.entry("VetCalled.v1", new Event.VetCalled("0007.wav")),
            Map.entry("VetCalled.v1.silent", new Event.VetCalled(null)),
            Map.entry("TreatmentNoted.v1", new Event.TreatmentNoted(Term.Treatment.VACCINE, "0008.wav")),
            Map.entry("TreatmentNoted.v1.silent", new Event.TreatmentNoted(Term.Treatment.TREATMENT, null)),
            Map.entry(
                    "CardPrinted.v1",
                    new Event.CardPrinted(2, Term.Printout.HUTCH_CARD, Term.CardSize.FOUR_BY_SIX_INCH)),
            Map.entry(
                    "CardPrinted.v1.record-sheet",
                    new Event.CardPrinted(3, Term.Printout.RECORD_SHEET, Term.CardSize.A6_UPRIGHT)),
            Map.entry("OperatorChosen.v1", new Event.OperatorChosen("Ines")),
            Map.entry("OperatorChosen.v1.nobody", new Event.OperatorChosen(null)),
            Map.entry("SoundsRemoved.v1", new Event.SoundsRemoved(12, 5_000_000_000L)),
            Map.entry("ClockChanged.v1", new Event.ClockChanged(T, U)),
            Map.entry("ZoneChanged.v1", new Event.ZoneChanged(ZoneId.of("America/Chicago"), ZoneOffset.UTC)),
            Map.entry("VoiceNoteTaken.v1", new Event.VoiceNoteTaken("0009.wav")),
            Map.entry("VoiceNoteTaken.v1.silent", new Event.VoiceNoteTaken(null)),
            Map.entry(
                    "BarnClimateNoted.v1",
                    new Event.BarnClimateNoted(
                            new Temperature(new BigDecimal("-4.5"), TemperatureUnit.CELSIUS), new BigDecimal("81"))),
            Map.entry(
                    "BarnClimateNoted.v1.dry",
                    new Event.BarnClimateNoted(
                            new Temperature(new BigDecimal("20"), TemperatureUnit.FAHRENHEIT), null)),
            Map.entry(
                    "ColostrumStored.v1",
                    new Event.ColostrumStored(
                            "14",
                            new Volume(new BigDecimal("2"), VolumeUnit.QUART),
                            new BigDecimal("26"),
                            Term.ColostrumTreatment.FROZEN)),
            Map.entry(
                    "ColostrumStored.v1.untested",
                    new Event.ColostrumStored("15", new Volume(new BigDecimal("130"), VolumeUnit.LITRE), null, null)),
            Map.entry(
                    "EventWithdrawn.v1", new Event.EventWithdrawn(EventId.of("019bb5c0-0000-7000-8000-00000000002a"))));

    private ApprovedEvents() {}

    @SuppressWarnings("NullAway") // javac 17 leaves this compact constructor's @Nullable out of the class file
    private static Event score(int score) {
        return new Event.CalvingEaseNoted(null, score);
    }
}
