package strawbed.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.measure.Mass;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.statement.Doubt;
import strawbed.statement.SaidFact;

/** An unusual figure with its usual range, in the unit in which the figure was said. */
final class UsualRange {
    private static final BigDecimal FAHRENHEIT_STEP = new BigDecimal("1.8");
    private static final BigDecimal FAHRENHEIT_ZERO = new BigDecimal(32);

    private final Wording wording;
    private final Figures figures;

    UsualRange(Wording wording, Figures figures) {
        this.wording = wording;
        this.figures = figures;
    }

    /** "15 quarts is more than usual (0 to 6.3 quarts)." */
    String sentence(Doubt.Implausible odd, List<SaidFact> facts) {
        Scale scale = facts.stream()
                .map(SaidFact::event)
                .flatMap(this::scales)
                .filter(said ->
                        said.key().equals(odd.quantity()) && said.exact().compareTo(odd.value()) == 0)
                .findFirst()
                .orElseGet(
                        () -> new Scale(odd.quantity(), odd.value(), odd.value(), UnaryOperator.identity(), bare(odd)));
        String value = wording.at(
                MessageKey.dotted("quantity " + odd.quantity()), scale.words().apply(scale.said()));
        BigDecimal low = rounded(scale.fromBase().apply(odd.low()));
        BigDecimal high = rounded(scale.fromBase().apply(odd.high()));
        MessageKey key = odd.value().compareTo(odd.low()) < 0
                ? MessageKey.DOUBT_IMPLAUSIBLE_LOW
                : MessageKey.DOUBT_IMPLAUSIBLE_HIGH;
        return wording.text(key, value, figures.number(low), scale.words().apply(high));
    }

    /**
     * A figure that was said in a unit of its own.
     *
     * @param exact in the unit of the range
     * @param said as it was said
     * @param fromBase from the unit of the range to the one that was said
     */
    private record Scale(
            String key,
            BigDecimal exact,
            BigDecimal said,
            UnaryOperator<BigDecimal> fromBase,
            Function<BigDecimal, String> words) {}

    private Stream<Scale> scales(Event event) {
        if (event instanceof Event.ColostrumFed fed) {
            return Stream.concat(
                    Stream.of(volume("feed", fed.volume())), temperature("feed temperature", fed.warmedTo()));
        }
        if (event instanceof Event.CalfWeighed weighed) {
            Mass mass = weighed.weight();
            BigDecimal one = new Mass(BigDecimal.ONE, mass.unit()).inKilograms();
            return Stream.of(new Scale(
                    "weight",
                    mass.inKilograms(),
                    mass.amount(),
                    kilograms -> kilograms.divide(one, 3, RoundingMode.HALF_UP),
                    amount -> figures.mass(new Mass(amount, mass.unit()))));
        }
        if (event instanceof Event.TemperatureTaken taken) {
            return temperature("calf temperature", taken.temperature());
        }
        if (event instanceof Event.ColostrumTestedByHydrometer tested) {
            return temperature("milk temperature", tested.milk());
        }
        return event instanceof Event.BarnClimateNoted noted
                ? temperature("barn temperature", noted.temperature())
                : Stream.empty();
    }

    private Scale volume(String key, Volume volume) {
        BigDecimal one = new Volume(BigDecimal.ONE, volume.unit()).inLitres();
        return new Scale(
                key,
                volume.inLitres(),
                volume.amount(),
                litres -> litres.divide(one, 3, RoundingMode.HALF_UP),
                amount -> figures.volume(new Volume(amount, volume.unit())));
    }

    private Stream<Scale> temperature(String key, @Nullable Temperature temperature) {
        return Optional.ofNullable(temperature).stream()
                .map(said -> new Scale(
                        key,
                        said.inCelsius(),
                        said.amount(),
                        said.unit() == TemperatureUnit.CELSIUS
                                ? UnaryOperator.identity()
                                : celsius -> celsius.multiply(FAHRENHEIT_STEP).add(FAHRENHEIT_ZERO),
                        amount -> figures.temperature(new Temperature(amount, said.unit()))));
    }

    private Function<BigDecimal, String> bare(Doubt.Implausible odd) {
        return switch (odd.unit()) {
            case "%" -> figures::percent;
            case "per minute" -> amount -> wording.text(MessageKey.PER_MINUTE, figures.number(amount));
            case "g/L" -> amount -> wording.counted(MessageKey.GRAMS_A_LITRE, amount);
            case "g/dL" -> amount -> wording.counted(MessageKey.GRAMS_A_DECILITRE, amount);
            case "mg/mL" -> amount -> wording.counted(MessageKey.MILLIGRAMS_A_MILLILITRE, amount);
            case "C" -> amount -> wording.counted(MessageKey.CELSIUS, amount);
            case "kg" -> amount -> wording.counted(MessageKey.KILOGRAM_MANY, amount);
            case "L" -> amount -> wording.counted(MessageKey.LITRE_MANY, amount);
            default -> throw new IllegalArgumentException("there is no word for the unit " + odd.unit());
        };
    }

    private static BigDecimal rounded(BigDecimal figure) {
        return figure.setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    }
}
