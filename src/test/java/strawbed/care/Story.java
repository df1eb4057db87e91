package strawbed.care;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Protocol;

/**
 * A worked example in one line: facts with their times, parted by semicolons, and one question at the end.
 *
 * <p>{@code 06:00 born; 07:10 fed 2.0 litre bottle; ask 07:41 NAVEL_REDIP}. A fact that begins with {@code B} is the
 * other calf's, and what is said of the barn is no calf's. Times are those of {@link Told}.
 */
final class Story {
    private static final Set<String> OF_THE_BARN = Set.of("barn", "stored", "protocol");

    /** When no question names a time, all that was told is past. */
    private static final Instant LATER = Instant.parse("2030-01-01T00:00:00Z");

    private final Told told = new Told();

    static String answer(String line) {
        Story story = new Story();
        List<String> parts =
                Arrays.stream(line.split(";", -1)).map(String::strip).toList();
        parts.subList(0, parts.size() - 1).forEach(story::tell);
        return story.ask(words(parts.get(parts.size() - 1)));
    }

    /** One fact without its time, such as {@code weighed 43 kilogram}. */
    static Event event(List<String> words) {
        return switch (words.get(0)) {
            case "opened" -> new Event.CalfOpened(null, words.get(1));
            case "ease" -> new Event.CalvingEaseNoted(enumOf(Term.CalvingEase.class, words.get(1)), null);
            case "score" -> Told.score(Integer.parseInt(words.get(1)));
            case "sex" -> new Event.SexNoted(enumOf(Term.Sex.class, words.get(1)));
            case "one-of" -> new Event.TwinNoted(null, Integer.parseInt(words.get(1)));
            case "breathing" -> new Event.BreathingNoted(enumOf(Term.Breathing.class, words.get(1)));
            case "licked" -> new Event.LickingNoted(Boolean.parseBoolean(words.get(1)));
            case "dried" -> new Event.CalfDried(null);
            case "reached" -> new Event.MilestoneReached(enumOf(Term.Milestone.class, words.get(1)));
            case "sign" ->
                new Event.SignNoted(
                        enumOf(Term.Sign.class, words.get(1)), null, words.size() > 2 ? words.get(2) : null);
            case "dipped" ->
                new Event.NavelDipped(
                        words.size() > 1 ? enumOf(Term.NavelAgent.class, words.get(1)) : null,
                        words.size() > 2 ? decimal(words.get(2)) : null);
            case "temperature" -> new Event.TemperatureTaken(temperature(words.subList(1, 3)));
            case "weighed" ->
                new Event.CalfWeighed(
                        new Mass(decimal(words.get(1)), enumOf(MassUnit.class, words.get(2))),
                        words.size() > 3 ? enumOf(Term.WeighingMethod.class, words.get(3)) : null);
            case "fed" ->
                new Event.ColostrumFed(
                        new Volume(decimal(words.get(1)), enumOf(VolumeUnit.class, words.get(2))),
                        words.size() > 3 ? enumOf(Term.FeedingMethod.class, words.get(3)) : null,
                        words.size() > 4 ? temperature(words.subList(4, 6)) : null);
            case "left" ->
                new Event.ColostrumLeft(new Volume(decimal(words.get(1)), enumOf(VolumeUnit.class, words.get(2))));
            case "breed" -> new Event.BreedNoted(words.get(1).replace('_', ' '));
            case "source" -> source(words);
            case "treated" -> treated(enumOf(Term.ColostrumTreatment.class, words.get(1)));
            case "stored" ->
                new Event.ColostrumStored(
                        words.get(1),
                        new Volume(decimal(words.get(2)), enumOf(VolumeUnit.class, words.get(3))),
                        words.size() > 4 && !words.get(4).equals("-") ? decimal(words.get(4)) : null,
                        words.size() > 5 ? enumOf(Term.ColostrumTreatment.class, words.get(5)) : null);
            case "protocol" -> new Event.ProtocolAdopted(new TreeMap<>(Map.of(words.get(1), words.get(2))));
            case "sheltered" -> new Event.ShelterGiven(enumOf(Term.Shelter.class, words.get(1)));
            case "vet" -> new Event.VetCalled(null);
            case "navel" -> new Event.NavelChecked(enumOf(Term.NavelFinding.class, words.get(1)));
            case "nursed" -> new Event.DamNursed();
            case "tagged" -> new Event.EarTagFitted(words.get(1), Term.TagScheme.FARM);
            case "moved" -> new Event.CalfMoved(words.get(1));
            case "brix" -> new Event.ColostrumTestedByBrix(decimal(words.get(1)));
            case "hydrometer" ->
                new Event.ColostrumTestedByHydrometer(
                        decimal(words.get(1)), words.size() > 2 ? temperature(words.subList(2, 4)) : null);
            case "serum" ->
                new Event.SerumTested(
                        enumOf(Term.SerumMeasure.class, words.get(1)),
                        decimal(words.get(2)),
                        words.size() > 3 ? Told.time(words.get(3)) : null);
            case "heart" -> new Event.HeartRateCounted(Integer.parseInt(words.get(1)));
            case "breaths" -> new Event.BreathingRateCounted(Integer.parseInt(words.get(1)));
            case "barn" ->
                new Event.BarnClimateNoted(
                        temperature(words.subList(1, 3)), words.size() > 3 ? decimal(words.get(3)) : null);
            default -> throw new IllegalArgumentException("no such fact: " + words);
        };
    }

    /** The number behind it is the cow's, else the batch's. */
    private static Event source(List<String> words) {
        Term.ColostrumSource source = enumOf(Term.ColostrumSource.class, words.get(1));
        String number = words.size() > 2 ? words.get(2) : null;
        return source == Term.ColostrumSource.COW
                ? new Event.ColostrumSourceNoted(source, number, null, null)
                : new Event.ColostrumSourceNoted(source, null, number, null);
    }

    /** The null checker cannot see in the compiled record that its source may be missing. */
    @SuppressWarnings("NullAway")
    private static Event treated(Term.ColostrumTreatment treatment) {
        return new Event.ColostrumSourceNoted(null, null, null, treatment);
    }

    static List<String> words(String text) {
        return List.of(text.split(" ", -1));
    }

    private void tell(String fact) {
        List<String> words = words(fact);
        String calf = words.get(0).equals("B") ? "B" : "A";
        List<String> rest = calf.equals("B") ? words.subList(1, words.size()) : words;
        String time = rest.get(0);
        Event event = timed(time, rest.subList(1, rest.size()));
        boolean isOfTheBarn = OF_THE_BARN.contains(rest.get(1));
        told.tell(isOfTheBarn ? null : Told.calf(calf), Told.time(time), event);
    }

    private static Event timed(String time, List<String> words) {
        return switch (words.get(0)) {
            case "born" ->
                new Event.CalfBorn(
                        words.size() > 1
                                ? new When.Between(Told.time(words.get(1)), Told.time(words.get(2)))
                                : Told.at(time));
            case "found" -> new Event.CalfFound(Told.at(time));
            case "died" -> new Event.CalfDied(Told.time(time), Term.DeathTime.LATER);
            default -> event(words);
        };
    }

    private String ask(List<String> question) {
        return switch (question.get(0)) {
            case "ask" -> states(Told.time(question.get(1)), kind(question.get(2)));
            case "settled" ->
                joined(items(Told.time(question.get(1)), kind(question.get(2))).stream()
                        .map(Story::settled));
            case "because" ->
                joined(items(Told.time(question.get(1)), kind(question.get(2))).stream()
                        .map(item -> item.ground().event() == null
                                ? "birth"
                                : clock(item.ground().event().at())));
            case "window" -> window(kind(question.get(1)));
            case "cautions" -> cautions();
            case "first-feed" -> answer(dose().ageAtFirstFeed(), Story::text);
            case "timing" -> answer(dose().timing(), ColostrumTiming::name);
            case "target-reached" -> answer(dose().ageAtTarget(), Story::text);
            case "target" -> answer(dose().targetLitres(), Story::plain);
            case "share" -> answer(dose().shareOfBirthWeight(), BigDecimal::toPlainString);
            case "litres" -> answer(dose().litres(), Story::plain);
            case "size" -> answer(dose().size(), DoseSize::name);
            case "meets-target" -> answer(dose().meetsTarget(), String::valueOf);
            case "suckled" -> String.valueOf(dose().suckled());
            case "dose-assumes" -> names(dose().assumptions());
            case "grade" -> answer(quality().then(ColostrumQuality::grade), ColostrumClass::name);
            case "antibody" -> answer(quality().then(ColostrumQuality::antibody), Story::antibody);
            case "mass" -> answer(mass(), mass -> rounded(mass.grams()));
            case "mass-range" -> answer(mass(), mass -> rounded(mass.least()) + " " + rounded(mass.most()));
            case "mass-grade" -> answer(mass().then(mass -> mass.grade(protocol())), AntibodyMass.MassGrade::name);
            case "mass-sure" -> answer(mass(), mass -> String.valueOf(mass.isGradeSure(protocol())));
            case "mass-at-least" -> answer(mass(), mass -> String.valueOf(mass.isAtLeast()));
            case "mass-assumes" -> answer(mass(), mass -> names(mass.assumptions()));
            case "expected" -> answer(Absorption.expectedSerum(dose(), farm()), Story::range);
            case "expected-assumes" ->
                answer(Absorption.expectedSerum(dose(), farm()), range -> names(range.assumptions()));
            case "mass-for" -> answer(Absorption.massFor(decimal(question.get(1)), dose()), Story::range);
            case "efficiency" -> answer(Absorption.observed(dose(), farm()), Story::range);
            case "efficiency-assumes" ->
                answer(Absorption.observed(dose(), farm()), range -> names(range.assumptions()));
            case "timing-at" ->
                answer(
                        FirstDose.of(record(), protocol(), Told.time(question.get(1)))
                                .timing(),
                        ColostrumTiming::name);
            case "shown-weight" ->
                answer(
                        BirthWeight.of(record()),
                        weight -> weight.shownKilograms().toPlainString());
            case "stock" -> stock(Told.time(question.get(1)));
            case "stock-left" ->
                joined(StoredColostrum.of(told.herd(), LATER).stream()
                        .map(each -> answer(each.leftLitres(), Story::plain)));
            case "stock-fed" ->
                joined(StoredColostrum.of(told.herd(), LATER).stream().map(each -> plain(each.fedLitres())));
            case "stock-heat-treated" ->
                joined(StoredColostrum.of(told.herd(), LATER).stream()
                        .map(each -> String.valueOf(each.isHeatTreated())));
            case "stock-grade" ->
                joined(StoredColostrum.of(told.herd(), LATER).stream()
                        .map(each -> answer(each.grade(), ColostrumClass::name)));
            case "age-basis" -> AgeStart.of(record()).orElseThrow().basis().name();
            default -> throw new IllegalArgumentException("no such question: " + question);
        };
    }

    /** All but the one that holds for every calf beside its dam. */
    private String cautions() {
        return joined(Caution.of(record(), told.herd()).stream()
                .filter(caution -> caution != Caution.FRESH_COW)
                .map(Caution::name));
    }

    private static String joined(Stream<String> words) {
        String joined = words.collect(Collectors.joining(" "));
        return joined.isEmpty() ? "none" : joined;
    }

    private CalfRecord record() {
        return told.record();
    }

    private Farm farm() {
        return Farm.of(told.herd());
    }

    private Protocol protocol() {
        return farm().protocolFor(record());
    }

    private FirstDose dose() {
        return FirstDose.of(record(), protocol(), LATER);
    }

    private Judged<ColostrumQuality> quality() {
        return ColostrumQuality.of(dose(), farm());
    }

    private Judged<AntibodyMass> mass() {
        return AntibodyMass.of(dose(), farm());
    }

    private String stock(Instant now) {
        return joined(StoredColostrum.of(told.herd(), now).stream()
                .map(each -> each.stored().event().batch() + " " + each.stateAt(now)));
    }

    /** What was judged, or why nothing was. */
    static <T> String answer(Judged<T> judged, Function<T, String> text) {
        return judged.value()
                .map(text)
                .orElseGet(() -> "not judged: " + judged.whyNot().orElseThrow());
    }

    private static String antibody(Antibody antibody) {
        return rounded(antibody.gramsPerLitre())
                + (antibody.isEstimate() ? " give or take " + plain(antibody.spread()) : "");
    }

    private static String range(Absorption.Range range) {
        String least = rounded(range.least());
        String most = rounded(range.most());
        return least.equals(most) ? least : least + " " + most;
    }

    private static String names(Set<Assumption> assumptions) {
        return joined(assumptions.stream().sorted().map(Assumption::name));
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    static String rounded(BigDecimal number) {
        return number.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    private String states(Instant now, DueKind kind) {
        return joined(items(now, kind).stream().map(item -> item.state().name()));
    }

    /** What settled it and when, and whether that was in time; else its state. */
    private static String settled(DueItem item) {
        if (item.settled() instanceof Settled.Done done) {
            return "DONE " + clock(done.by().at()) + (item.wasInTime().orElseThrow() ? " in-time" : " late");
        }
        if (item.settled() instanceof Settled.Needless needless) {
            return needless.why() + " "
                    + clock(Objects.requireNonNull(needless.by()).at());
        }
        return item.state().name();
    }

    /** From, due and limit of each item in hours and minutes since midnight of the story's day. */
    private String window(DueKind kind) {
        return items(Told.MIDNIGHT, kind).stream()
                .map(item -> clock(item.from()) + " " + clock(item.dueAt()) + " " + clock(item.hardLimit()))
                .collect(Collectors.joining(" and "));
    }

    private List<DueItem> items(Instant now, DueKind kind) {
        return DueList.of(record(), Farm.of(told.herd()), now).stream()
                .filter(item -> item.kind() == kind)
                .sorted(Comparator.comparing(DueItem::dueAt))
                .toList();
    }

    private static String clock(@Nullable Instant at) {
        return at == null ? "-" : text(Duration.between(Told.MIDNIGHT, at));
    }

    private static String text(Duration known) {
        return String.format(
                Locale.ROOT, "%02d:%02d:%02d", known.toHours(), known.toMinutesPart(), known.toSecondsPart());
    }

    private static DueKind kind(String name) {
        return DueKind.valueOf(name);
    }

    private static Temperature temperature(List<String> words) {
        return new Temperature(decimal(words.get(0)), enumOf(TemperatureUnit.class, words.get(1)));
    }

    private static BigDecimal decimal(String text) {
        return new BigDecimal(text);
    }

    private static <T extends Enum<T>> T enumOf(Class<T> kind, String name) {
        return Enum.valueOf(kind, name.toUpperCase(Locale.ROOT));
    }
}
