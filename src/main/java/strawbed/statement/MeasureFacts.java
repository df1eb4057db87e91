package strawbed.statement;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.grammar.ParseTree;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;

/** The facts of the grammar file measures.abnf, and of the barn. */
final class MeasureFacts {
    static final Map<String, FactReader> READERS = Map.ofEntries(
            Map.entry(
                    "temperature",
                    (tree, speech) -> new Event.TemperatureTaken(
                            degrees(tree.child("degrees").orElseThrow(), Scale.OF_BODY))),
            Map.entry("heart_rate", (tree, speech) -> new Event.HeartRateCounted(count(tree))),
            Map.entry("breath_rate", (tree, speech) -> new Event.BreathingRateCounted(count(tree))),
            Map.entry("weighed", (tree, speech) -> weighed(tree)),
            Map.entry(
                    "tag",
                    (tree, speech) -> new Event.EarTagFitted(
                            SpokenNumber.digits(tree.child("tag_number").orElseThrow()), Term.TagScheme.FARM)),
            Map.entry(
                    "official_tag",
                    (tree, speech) -> new Event.EarTagFitted(
                            SpokenNumber.digits(tree.child("official_number").orElseThrow()), Term.TagScheme.OFFICIAL)),
            Map.entry("moved", (tree, speech) -> moved(tree.child("place").orElseThrow())),
            Map.entry("serum", MeasureFacts::serum),
            Map.entry("vet_called", (tree, speech) -> new Event.VetCalled(null)),
            Map.entry(
                    "treatment_noted",
                    (tree, speech) -> new Event.TreatmentNoted(Tags.term(Term.Treatment.class, tree), null)),
            Map.entry("voice_note", (tree, speech) -> new Event.VoiceNoteTaken(null)),
            Map.entry("barn_climate", (tree, speech) -> barnClimate(tree)));

    private static final BigDecimal HALF = new BigDecimal("0.5");

    private MeasureFacts() {}

    /** A temperature whose scale was said, or is told by the range. */
    static Temperature degrees(ParseTree tree, Scale scale) {
        BigDecimal value =
                withHalf(tree, SpokenNumber.decimal(tree.descendant("decimal").orElseThrow()));
        TemperatureUnit unit = tree.descendant("scale")
                .map(said -> "celsius".equals(said.tag()) ? TemperatureUnit.CELSIUS : TemperatureUnit.FAHRENHEIT)
                .orElseGet(() -> scale.unitOf(value));
        return new Temperature(value, unit);
    }

    private static BigDecimal withHalf(ParseTree tree, BigDecimal value) {
        return "half".equals(tree.tag()) ? value.add(HALF) : value;
    }

    private static int count(ParseTree tree) {
        return SpokenNumber.whole(tree.child("count").orElseThrow());
    }

    private static Event weighed(ParseTree tree) {
        ParseTree mass = tree.child("mass").orElseThrow();
        BigDecimal amount =
                withHalf(mass, SpokenNumber.decimal(mass.descendant("decimal").orElseThrow()));
        boolean pounds = "pound".equals(mass.child("mass_unit").map(Tags::tag).orElseThrow());
        return new Event.CalfWeighed(
                new Mass(amount, pounds ? MassUnit.POUND : MassUnit.KILOGRAM),
                Tags.termIn(Term.WeighingMethod.class, tree, "weighed_how"));
    }

    private static Event moved(ParseTree place) {
        Optional<ParseTree> named = place.child("place_name");
        if (named.isPresent()) {
            return new Event.CalfMoved(named.get().name());
        }
        String number = Tags.number(place.child("place_number").orElseThrow());
        return new Event.CalfMoved(Tags.tag(place) + " " + number);
    }

    private static Event serum(ParseTree tree, SpeechTime speech) {
        BigDecimal value = SpokenNumber.decimal(tree.descendant("small_decimal").orElseThrow());
        return new Event.SerumTested(Tags.term(Term.SerumMeasure.class, tree), value, drawnAt(tree, speech));
    }

    private static @Nullable Instant drawnAt(ParseTree tree, SpeechTime speech) {
        Optional<ParseTree> drawn = tree.child("drawn");
        if (drawn.isEmpty()) {
            return null;
        }
        return drawn.get()
                .child("clock")
                .map(clock -> SpokenTime.clock(clock, speech))
                .orElseGet(() -> speech.start()
                        .minus(SpokenTime.ago(drawn.get().child("ago").orElseThrow())));
    }

    private static Event barnClimate(ParseTree tree) {
        return new Event.BarnClimateNoted(
                degrees(tree.child("degrees").orElseThrow(), Scale.OF_AIR),
                tree.child("humidity")
                        .map(humidity -> new BigDecimal(SpokenNumber.digits(humidity)))
                        .orElse(null));
    }
}
