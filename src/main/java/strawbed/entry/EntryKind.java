package strawbed.entry;

import static java.util.Objects.requireNonNull;
import static strawbed.entry.Asked.always;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.statement.Scale;

/** The second page: the kinds of facts, each with its steps and the event that the answers make. */
// What a function captures, the checker cannot see: these capture nothing, and the lists are never changed.
@SuppressWarnings("ImmutableEnumChecker")
public enum EntryKind {
    HEIFER(EntryGroup.BIRTH, given -> new Event.SexNoted(Term.Sex.FEMALE)),
    BULL(EntryGroup.BIRTH, given -> new Event.SexNoted(Term.Sex.MALE)),
    BORN(EntryGroup.BIRTH, farm -> Steps.ownTime(), given -> new Event.CalfBorn(given.when())),
    FOUND(EntryGroup.BIRTH, farm -> Steps.ownTime(), given -> new Event.CalfFound(given.when())),
    EASE(
            EntryGroup.BIRTH,
            farm -> List.of(always(Steps.choose(
                    Question.EASE,
                    Stream.concat(Option.words(Term.CalvingEase.class).stream(), Option.counts(1, 5).stream())
                            .toList()))),
            given -> new Event.CalvingEaseNoted(
                    given.word(Term.CalvingEase.class, Question.EASE), given.count(Question.EASE))),
    PRESENTATION(
            EntryGroup.BIRTH,
            farm -> List.of(always(Steps.choose(Question.PRESENTATION, Term.Presentation.class))),
            given -> new Event.PresentationNoted(
                    requireNonNull(given.word(Term.Presentation.class, Question.PRESENTATION)))),
    TWIN(EntryGroup.BIRTH, farm -> twinOf(), given -> new Event.TwinNoted(given.animal(Question.TWIN_OF), 2)),
    TRIPLET(EntryGroup.BIRTH, farm -> twinOf(), given -> new Event.TwinNoted(given.animal(Question.TWIN_OF), 3)),
    STILLBORN(EntryGroup.BIRTH, given -> new Event.CalfDied(given.when().midpoint(), Term.DeathTime.AT_BIRTH)),
    DIED(
            EntryGroup.BIRTH,
            farm -> Steps.ownTime(),
            given -> new Event.CalfDied(given.when().midpoint(), Term.DeathTime.LATER)),

    BREATHING(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.BREATHING, Term.Breathing.class))),
            given -> new Event.BreathingNoted(requireNonNull(given.word(Term.Breathing.class, Question.BREATHING)))),
    STIMULATED(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.STIMULATION, Term.Stimulation.class))),
            given -> new Event.BreathingStimulated(
                    requireNonNull(given.word(Term.Stimulation.class, Question.STIMULATION)))),
    LICKED(EntryGroup.FIRST_MINUTES, given -> new Event.LickingNoted(true)),
    NOT_LICKED(EntryGroup.FIRST_MINUTES, given -> new Event.LickingNoted(false)),
    DRIED(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.perhaps(Question.DRIED_WITH, Term.DryingMeans.class))),
            given -> new Event.CalfDried(given.word(Term.DryingMeans.class, Question.DRIED_WITH))),
    SHELTER(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.SHELTER, Term.Shelter.class))),
            given -> new Event.ShelterGiven(requireNonNull(given.word(Term.Shelter.class, Question.SHELTER)))),
    MILESTONE(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.MILESTONE, Term.Milestone.class))),
            given -> new Event.MilestoneReached(requireNonNull(given.word(Term.Milestone.class, Question.MILESTONE)))),
    SIGN(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(
                    Question.SIGN,
                    Stream.of(
                                    Term.Sign.WEAK,
                                    Term.Sign.LIMPING,
                                    Term.Sign.CANNOT_STAND,
                                    Term.Sign.MECONIUM,
                                    Term.Sign.SCOURING)
                            .<Option>map(Option.Word::new)
                            .toList()))),
            given -> new Event.SignNoted(requireNonNull(given.word(Term.Sign.class, Question.SIGN)), null, null)),
    SWOLLEN(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.SWOLLEN_PLACE, SwollenPlace.class))),
            given -> new Event.SignNoted(
                    Term.Sign.SWOLLEN, recordWord(given.word(SwollenPlace.class, Question.SWOLLEN_PLACE)), null)),
    GUMS(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.GUM_COLOUR, GumColour.class))),
            given -> new Event.SignNoted(
                    Term.Sign.GUMS, null, recordWord(given.word(GumColour.class, Question.GUM_COLOUR)))),
    SUCK_REFLEX(
            EntryGroup.FIRST_MINUTES,
            farm -> List.of(always(Steps.choose(Question.SUCK_REFLEX, ReflexStrength.class))),
            given -> new Event.SignNoted(
                    Term.Sign.SUCK_REFLEX, null, recordWord(given.word(ReflexStrength.class, Question.SUCK_REFLEX)))),

    NAVEL_DIPPED(
            EntryGroup.NAVEL,
            farm -> List.of(
                    always(Steps.perhaps(Question.DIPPED_IN, Term.NavelAgent.class)),
                    always(Steps.percent(Question.STRENGTH, 2, true, "7", "2", "0.5"))),
            given -> new Event.NavelDipped(
                    given.word(Term.NavelAgent.class, Question.DIPPED_IN), given.amount(Question.STRENGTH))),
    NAVEL_CHECKED(
            EntryGroup.NAVEL,
            farm -> List.of(always(Steps.choose(Question.NAVEL, Term.NavelFinding.class))),
            given -> new Event.NavelChecked(requireNonNull(given.word(Term.NavelFinding.class, Question.NAVEL)))),

    FED(
            EntryGroup.COLOSTRUM,
            farm -> List.of(
                    always(Steps.volume(farm, "1", "2", "2.5", "3", "3.5", "4")),
                    always(Steps.perhaps(Question.FED_HOW, Term.FeedingMethod.class)),
                    always(Steps.temperature(
                            Question.WARMED_TO,
                            farm,
                            Scale.OF_FEED,
                            true,
                            farm.metric() ? new String[] {"38", "39", "40"} : new String[] {"100", "102", "104"}))),
            given -> new Event.ColostrumFed(
                    requireNonNull(given.volume(Question.VOLUME)),
                    given.word(Term.FeedingMethod.class, Question.FED_HOW),
                    given.temperature(Question.WARMED_TO))),
    LEFT(
            EntryGroup.COLOSTRUM,
            farm -> List.of(always(Steps.volume(farm, "0.5", "1", "1.5", "2"))),
            given -> new Event.ColostrumLeft(requireNonNull(given.volume(Question.VOLUME)))),
    REFUSED(EntryGroup.COLOSTRUM, given -> new Event.FeedRefused()),
    NURSED(EntryGroup.COLOSTRUM, given -> new Event.DamNursed()),
    COLOSTRUM_BRIX(
            EntryGroup.COLOSTRUM,
            farm -> List.of(always(Steps.percent(Question.BRIX, 2, false))),
            given -> new Event.ColostrumTestedByBrix(requireNonNull(given.amount(Question.BRIX)))),
    HYDROMETER(
            EntryGroup.COLOSTRUM,
            farm -> List.of(
                    always(Steps.reading(Question.HYDROMETER, EntryUnit.MILLIGRAMS_A_MILLILITRE, 0)),
                    always(Steps.temperature(Question.MILK_TEMPERATURE, farm, Scale.OF_MILK, true))),
            given -> new Event.ColostrumTestedByHydrometer(
                    requireNonNull(given.whole(Question.HYDROMETER)), given.temperature(Question.MILK_TEMPERATURE))),
    SOURCE(EntryGroup.COLOSTRUM, farm -> source(), EntryKind::source),

    TEMPERATURE(
            EntryGroup.MEASURES,
            farm -> List.of(always(Steps.temperature(Question.TEMPERATURE, farm, Scale.OF_BODY, false))),
            given -> new Event.TemperatureTaken(requireNonNull(given.temperature(Question.TEMPERATURE)))),
    HEART_RATE(
            EntryGroup.MEASURES,
            farm -> List.of(always(Steps.reading(Question.A_MINUTE, EntryUnit.PER_MINUTE, 0))),
            given -> new Event.HeartRateCounted(
                    requireNonNull(given.whole(Question.A_MINUTE)).intValueExact())),
    BREATHING_RATE(
            EntryGroup.MEASURES,
            farm -> List.of(always(Steps.reading(Question.A_MINUTE, EntryUnit.PER_MINUTE, 0))),
            given -> new Event.BreathingRateCounted(
                    requireNonNull(given.whole(Question.A_MINUTE)).intValueExact())),
    WEIGHT(
            EntryGroup.MEASURES,
            farm -> List.of(
                    always(Steps.weight(farm)), always(Steps.perhaps(Question.WEIGHED_HOW, Term.WeighingMethod.class))),
            given -> new Event.CalfWeighed(
                    requireNonNull(given.mass(Question.WEIGHT)),
                    given.word(Term.WeighingMethod.class, Question.WEIGHED_HOW))),
    SERUM_PROTEIN(
            EntryGroup.MEASURES,
            farm -> serum(Steps.reading(Question.SERUM, EntryUnit.GRAMS_A_DECILITRE, 2)),
            given -> serum(Term.SerumMeasure.PROTEIN, given)),
    SERUM_BRIX(
            EntryGroup.MEASURES,
            farm -> serum(Steps.percent(Question.SERUM, 2, false)),
            given -> serum(Term.SerumMeasure.BRIX, given)),
    SERUM_IGG(
            EntryGroup.MEASURES,
            farm -> serum(Steps.reading(Question.SERUM, EntryUnit.GRAMS_A_LITRE, 2)),
            given -> serum(Term.SerumMeasure.IGG, given)),

    TAG(
            EntryGroup.CALF,
            farm -> List.of(always(Steps.tag())),
            given -> new Event.EarTagFitted(requireNonNull(given.digits(Question.TAG)), Term.TagScheme.FARM)),
    OFFICIAL_TAG(
            EntryGroup.CALF,
            farm -> List.of(always(Steps.officialTag())),
            given -> new Event.EarTagFitted(
                    requireNonNull(given.digits(Question.OFFICIAL_TAG)), Term.TagScheme.OFFICIAL)),
    MOVED(
            EntryGroup.CALF,
            farm -> List.of(
                    always(Steps.choose(
                            Question.PLACE,
                            Stream.concat(
                                            Option.words(NumberedPlace.class).stream(),
                                            Option.names(farm.places()).stream())
                                    .toList())),
                    new Asked(
                            Steps.called(Question.PLACE_NUMBER),
                            given -> given.word(NumberedPlace.class, Question.PLACE) != null)),
            given -> new Event.CalfMoved(place(given))),
    DAM(
            EntryGroup.CALF,
            farm -> List.of(always(Steps.called(Question.DAM))),
            given -> new Event.DamNoted(given.animal(Question.DAM), null)),
    PARITY(
            EntryGroup.CALF,
            farm -> List.of(always(Steps.choose(Question.PARITY, Option.counts(1, 12)))),
            given -> new Event.DamNoted(null, given.count(Question.PARITY))),
    BREED(
            EntryGroup.CALF,
            farm -> List.of(always(Steps.choose(Question.BREED, Option.names(farm.breeds())))),
            given -> new Event.BreedNoted(requireNonNull(given.name(Question.BREED)))),

    VET_CALLED(EntryGroup.CARE, given -> new Event.VetCalled(null)),
    TREATMENT(EntryGroup.CARE, given -> new Event.TreatmentNoted(Term.Treatment.TREATMENT, null)),
    VACCINE(EntryGroup.CARE, given -> new Event.TreatmentNoted(Term.Treatment.VACCINE, null)),
    NOTE(EntryGroup.CARE, given -> new Event.VoiceNoteTaken(null)),

    BARN_CLIMATE(
            EntryGroup.BARN,
            farm -> List.of(
                    always(Steps.temperature(Question.AIR, farm, null, false)),
                    always(Steps.percent(Question.HUMIDITY, 0, true))),
            given -> new Event.BarnClimateNoted(
                    requireNonNull(given.temperature(Question.AIR)), given.whole(Question.HUMIDITY))),
    STORED(
            EntryGroup.BARN,
            farm -> List.of(
                    always(Steps.called(Question.BATCH)),
                    always(Steps.volume(farm, "1", "2", "3", "4")),
                    always(Steps.percent(Question.BRIX, 2, true)),
                    always(Steps.perhaps(Question.TREATED_HOW, Term.ColostrumTreatment.class))),
            given -> new Event.ColostrumStored(
                    requireNonNull(given.animal(Question.BATCH)),
                    requireNonNull(given.volume(Question.VOLUME)),
                    given.amount(Question.BRIX),
                    given.word(Term.ColostrumTreatment.class, Question.TREATED_HOW)));

    private final EntryGroup group;
    private final Function<FarmChoices, List<Asked>> steps;
    private final Function<Given, Event> event;

    EntryKind(EntryGroup group, Function<Given, Event> event) {
        this(group, farm -> List.of(), event);
    }

    EntryKind(EntryGroup group, Function<FarmChoices, List<Asked>> steps, Function<Given, Event> event) {
        this.group = group;
        this.steps = steps;
        this.event = event;
    }

    public EntryGroup group() {
        return group;
    }

    List<Asked> steps(FarmChoices farm) {
        return steps.apply(farm);
    }

    /** What the answers say, once all that has to be known is known. */
    Event event(Given given) {
        return event.apply(given);
    }

    private static List<Asked> twinOf() {
        return List.of(always(Steps.perhapsCalled(Question.TWIN_OF)));
    }

    private static List<Asked> serum(Step value) {
        return List.of(always(value), always(Steps.drawn()));
    }

    private static Event serum(Term.SerumMeasure measure, Given given) {
        return new Event.SerumTested(measure, requireNonNull(given.amount(Question.SERUM)), given.drawn());
    }

    /** Where it comes from, or only what was done to it. A cow or a batch need not be known by its number. */
    private static List<Asked> source() {
        return List.of(
                always(Steps.choose(
                        Question.ORIGIN,
                        Stream.concat(
                                        Option.words(Term.ColostrumSource.class).stream(),
                                        Option.words(Term.ColostrumTreatment.class).stream())
                                .toList())),
                new Asked(Steps.perhapsCalled(Question.COW), given -> origin(given) == Term.ColostrumSource.COW),
                new Asked(Steps.perhapsCalled(Question.BATCH), given -> origin(given) == Term.ColostrumSource.BATCH),
                new Asked(
                        Steps.perhaps(Question.TREATED_HOW, Term.ColostrumTreatment.class),
                        given -> origin(given) != null),
                // A batch can also be said of what comes from a cow, from several, or out of a bag.
                new Asked(Steps.perhapsCalled(Question.BATCH), given -> origin(given) != null));
    }

    private static Term.@Nullable ColostrumSource origin(Given given) {
        return given.word(Term.ColostrumSource.class, Question.ORIGIN);
    }

    private static Event source(Given given) {
        Term.ColostrumTreatment alone = given.word(Term.ColostrumTreatment.class, Question.ORIGIN);
        return new Event.ColostrumSourceNoted(
                origin(given),
                given.animal(Question.COW),
                given.animal(Question.BATCH),
                alone != null ? alone : given.word(Term.ColostrumTreatment.class, Question.TREATED_HOW));
    }

    private static String place(Given given) {
        NumberedPlace numbered = given.word(NumberedPlace.class, Question.PLACE);
        return numbered == null
                ? requireNonNull(given.name(Question.PLACE))
                : numbered.word() + " " + requireNonNull(given.animal(Question.PLACE_NUMBER));
    }

    private static String recordWord(@Nullable Term term) {
        return requireNonNull(term).word();
    }
}
