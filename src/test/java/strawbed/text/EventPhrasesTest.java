package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.calf.Told;
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

/** One phrase and more for each kind of event, as shown and as said. The words are our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventPhrasesTest {
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final Messages MESSAGES = new Messages(Locale.US);
    private static final EventPhrases SHOWN = new EventPhrases(MESSAGES, ZONE);
    private static final EventPhrases SAID = new EventPhrases(new Spoken(MESSAGES), ZONE);
    private static final Instant HALF_PAST_FOUR = Instant.parse("2026-11-24T10:30:00Z");

    @ParameterizedTest
    @MethodSource("phrases")
    void an_event_reads_as_people_say_it(Event event, String shown, String said) {
        assertThat(SHOWN.of(event)).isEqualTo(shown);
        assertThat(SAID.of(event)).isEqualTo(said);
    }

    @Test
    void every_kind_of_event_is_in_the_table() {
        assertThat(phrases().<Object>map(row -> row.get()[0].getClass()))
                .contains((Object[]) Event.class.getPermittedSubclasses());
    }

    static Stream<Arguments> phrases() {
        return Stream.of(
                row(
                        new Event.CalfOpened("512", "417"),
                        "new calf 512 of cow 417",
                        "new calf five one two of cow four one seven"),
                row(new Event.CalfOpened(null, null), "new calf"),
                row(new Event.CalfOpened(null, "417"), "new calf of cow 417", "new calf of cow four one seven"),
                row(new Event.CalfNumbered("512"), "number 512", "number five one two"),
                row(new Event.DamNoted("417", null), "dam 417", "dam four one seven"),
                row(new Event.DamNoted(null, 3), "dam parity 3", "dam parity three"),
                row(new Event.BreedNoted("brown swiss"), "breed Brown Swiss"),
                row(new Event.TwinNoted("13", 2), "twin of calf 13", "twin of calf one three"),
                row(new Event.TwinNoted(null, 2), "twin"),
                row(new Event.TwinNoted(null, 3), "one of 3 calves", "one of three calves"),
                row(new Event.SexNoted(Term.Sex.FEMALE), "heifer"),
                row(new Event.SexNoted(Term.Sex.MALE), "bull"),
                row(new Event.EarTagFitted("4127", Term.TagScheme.FARM), "tag 4127", "tag four one two seven"),
                row(
                        new Event.EarTagFitted("840003123456789", Term.TagScheme.OFFICIAL),
                        "official tag 840 003 123 456 789",
                        "official tag eight four zero, zero zero three, one two three, four five six, seven eight nine"),
                row(new Event.CalfBorn(new When.At(HALF_PAST_FOUR)), "born 04:30", "born four thirty"),
                row(
                        new Event.CalfBorn(new When.Between(
                                Instant.parse("2026-11-24T08:00:00Z"), Instant.parse("2026-11-24T10:05:00Z"))),
                        "born between 02:00 and 04:05",
                        "born between two o'clock and four oh five"),
                row(
                        new Event.CalfFound(new When.At(Instant.parse("2026-11-24T22:30:00Z"))),
                        "found 16:30",
                        "found sixteen thirty"),
                row(
                        new Event.CalfFound(new When.Between(
                                Instant.parse("2026-11-24T05:00:00Z"), Instant.parse("2026-11-24T06:00:00Z"))),
                        "found between 23:00 and 00:00",
                        "found between twenty three hundred and midnight"),
                row(new Event.CalvingEaseNoted(Term.CalvingEase.UNASSISTED, null), "unassisted"),
                row(new Event.CalvingEaseNoted(Term.CalvingEase.C_SECTION, null), "C-section", "C section"),
                row(Told.score(3), "calving ease score 3", "calving ease score three"),
                row(new Event.PresentationNoted(Term.Presentation.BACKWARDS), "came backwards"),
                row(new Event.CalfDied(HALF_PAST_FOUR, Term.DeathTime.LATER), "died 04:30", "died four thirty"),
                row(new Event.CalfDied(HALF_PAST_FOUR, Term.DeathTime.AT_BIRTH), "born dead"),
                row(new Event.BreathingNoted(Term.Breathing.NONE), "not breathing"),
                row(new Event.BreathingStimulated(Term.Stimulation.STRAW_IN_THE_NOSE), "straw in the nose"),
                row(new Event.LickingNoted(true), "licked by the dam"),
                row(new Event.LickingNoted(false), "not licked by the dam"),
                row(new Event.CalfDried(Term.DryingMeans.TOWEL), "dried with a towel"),
                row(new Event.CalfDried(null), "dried"),
                row(new Event.ShelterGiven(Term.Shelter.HEAT_LAMP), "heat lamp on"),
                row(new Event.MilestoneReached(Term.Milestone.ON_ITS_BREASTBONE), "on its breastbone"),
                row(new Event.SignNoted(Term.Sign.SWOLLEN, "tongue", null), "tongue swollen"),
                row(new Event.SignNoted(Term.Sign.GUMS, null, "pale"), "gums pale"),
                row(new Event.SignNoted(Term.Sign.SUCK_REFLEX, null, "none"), "no suck reflex"),
                row(new Event.SignNoted(Term.Sign.SUCK_REFLEX, null, "strong"), "strong suck reflex"),
                row(new Event.SignNoted(Term.Sign.MECONIUM, null, null), "yellow stain"),
                row(
                        new Event.NavelDipped(Term.NavelAgent.IODINE, new BigDecimal("7")),
                        "navel dipped with iodine 7 percent",
                        "navel dipped with iodine seven percent"),
                row(new Event.NavelDipped(null, null), "navel dipped"),
                row(
                        new Event.NavelDipped(null, new BigDecimal("2")),
                        "navel dipped, 2 percent",
                        "navel dipped, two percent"),
                row(new Event.NavelDipped(Term.NavelAgent.CHLORHEXIDINE, null), "navel dipped with chlorhexidine"),
                row(new Event.NavelChecked(Term.NavelFinding.SWOLLEN), "navel swollen"),
                row(
                        new Event.TemperatureTaken(fahrenheit("101.5")),
                        "temperature 101.5 °F",
                        "temperature one hundred one point five degrees Fahrenheit"),
                row(
                        new Event.HeartRateCounted(120),
                        "heart rate 120 per minute",
                        "heart rate one hundred twenty per minute"),
                row(
                        new Event.BreathingRateCounted(45),
                        "breathing rate 45 per minute",
                        "breathing rate forty five per minute"),
                row(
                        new Event.CalfWeighed(new Mass(new BigDecimal("88"), MassUnit.POUND), null),
                        "weight 88 pounds",
                        "weight eighty eight pounds"),
                row(
                        new Event.CalfWeighed(
                                new Mass(new BigDecimal("40"), MassUnit.KILOGRAM), Term.WeighingMethod.TAPE),
                        "weight 40 kilograms, by tape",
                        "weight forty kilograms, by tape"),
                row(
                        new Event.SerumTested(Term.SerumMeasure.PROTEIN, new BigDecimal("5.6"), HALF_PAST_FOUR),
                        "serum protein 5.6 g/dL, blood drawn 04:30",
                        "serum protein five point six grams per deciliter, blood drawn four thirty"),
                row(
                        new Event.ColostrumTestedByBrix(new BigDecimal("24.5")),
                        "colostrum Brix 24.5 percent",
                        "colostrum Brix twenty four point five percent"),
                row(
                        new Event.ColostrumTestedByHydrometer(new BigDecimal("60"), fahrenheit("98")),
                        "hydrometer 60 mg/mL, milk at 98 °F",
                        "hydrometer sixty milligrams per milliliter, milk at ninety eight degrees Fahrenheit"),
                row(
                        new Event.ColostrumSourceNoted(
                                Term.ColostrumSource.COW, "417", null, Term.ColostrumTreatment.FROZEN),
                        "colostrum from cow 417, frozen",
                        "colostrum from cow four one seven, frozen"),
                row(
                        new Event.ColostrumSourceNoted(Term.ColostrumSource.REPLACER, null, null, null),
                        "colostrum replacer"),
                row(
                        new Event.ColostrumSourceNoted(null, null, null, Term.ColostrumTreatment.HEAT_TREATED),
                        "colostrum, heat treated"),
                row(
                        new Event.ColostrumFed(quarts("3.5"), Term.FeedingMethod.BOTTLE, fahrenheit("102")),
                        "3.5 quarts fed by bottle, warmed to 102 °F",
                        "three point five quarts fed by bottle, warmed to one hundred two degrees Fahrenheit"),
                row(new Event.ColostrumLeft(quarts("1")), "left 1 quart", "left one quart"),
                row(new Event.FeedRefused(), "feed refused"),
                row(new Event.DamNursed(), "nursed from the dam"),
                row(new Event.CalfMoved("hutch 12"), "moved to hutch 12", "moved to hutch twelve"),
                row(new Event.VetCalled(null), "veterinarian called"),
                row(new Event.TreatmentNoted(Term.Treatment.VACCINE, null), "vaccine noted"),
                row(new Event.VoiceNoteTaken(null), "voice note"),
                row(
                        new Event.BarnClimateNoted(fahrenheit("-4"), new BigDecimal("80")),
                        "-4 °F, humidity 80 percent",
                        "minus four degrees Fahrenheit, humidity eighty percent"),
                row(
                        new Event.ColostrumStored(
                                "12", quarts("2"), new BigDecimal("24"), Term.ColostrumTreatment.FROZEN),
                        "2 quarts of colostrum stored, batch 12, Brix 24 percent, frozen",
                        "two quarts of colostrum stored, batch one two, Brix twenty four percent, frozen"),
                row(new Event.ProtocolAdopted(new TreeMap<>()), "protocol taken up"),
                row(
                        new Event.CardPrinted(2, Term.Printout.HUTCH_CARD, Term.CardSize.A6),
                        "hutch card printed, print 2",
                        "hutch card printed, print two"),
                row(new Event.OperatorChosen("Ines"), "Ines works now"),
                row(new Event.OperatorChosen(null), "nobody is chosen"),
                row(
                        new Event.SoundsRemoved(12, 345),
                        "old sounds removed by the farm's rule: 12",
                        "old sounds removed by the farm's rule: twelve"),
                row(new Event.ClockChanged(Instant.EPOCH.plusSeconds(9), Instant.EPOCH), "the clock went back"),
                row(
                        new Event.ClockChanged(Instant.EPOCH, Instant.EPOCH.plusSeconds(9)),
                        "the clock jumped ahead, or the computer slept"),
                row(
                        new Event.ZoneChanged(ZoneOffset.UTC, ZoneId.of("America/Chicago")),
                        "time zone changed to America/Chicago"),
                row(
                        new Event.SerumTested(Term.SerumMeasure.IGG, new BigDecimal("18.5"), null),
                        "serum antibody 18.5 g/L",
                        "serum antibody eighteen point five grams per liter"),
                row(new Event.EventWithdrawn(new EventId(new UUID(0, 1))), "earlier entry undone"));
    }

    private static Arguments row(Event event, String shown, String said) {
        return arguments(event, shown, said);
    }

    /** A phrase without figures is said as it is shown. */
    private static Arguments row(Event event, String phrase) {
        return arguments(event, phrase, phrase);
    }

    private static Volume quarts(String amount) {
        return new Volume(new BigDecimal(amount), VolumeUnit.QUART);
    }

    private static Temperature fahrenheit(String amount) {
        return new Temperature(new BigDecimal(amount), TemperatureUnit.FAHRENHEIT);
    }
}
