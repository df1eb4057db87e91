package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import strawbed.calf.Told;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.protocol.Protocol;

/** The worked examples of the published figures and of common practice, each with its source beside it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CareExamplesTest {
    @ParameterizedTest(name = "{0}: {1} -> {2} ({3})")
    @CsvFileSource(
            resources = {
                "/care-examples.csv",
                "/colostrum-quality.csv",
                "/first-dose.csv",
                "/absorption.csv",
                "/stored-colostrum.csv"
            },
            numLinesToSkip = 1)
    void the_worked_examples_hold(String id, String input, String expected, String source, String flag) {
        assertThat(answer(input)).as("%s, %s", id, source).isEqualTo(expected);
        assertThat(source).as("the source of %s", id).isNotBlank();
        assertThat(flag).as("the flag of %s", id).isIn("P", "P2", "D", "C");
    }

    private static String answer(String input) {
        if (input.contains(";")) {
            return Story.answer(input);
        }
        List<String> words = Story.words(input);
        List<String> rest = words.subList(1, words.size());
        return switch (words.get(0)) {
            case "timing" ->
                ColostrumTiming.of(Told.duration(rest.get(0)), Protocol.usual()).name();
            case "brix" ->
                ColostrumClass.ofBrix(new BigDecimal(rest.get(0)), Protocol.usual())
                        .name();
            case "warmth" ->
                FeedWarmth.of(
                                new Temperature(
                                        number(rest, 0),
                                        TemperatureUnit.valueOf(rest.get(1).toUpperCase(Locale.ROOT))),
                                Protocol.usual())
                        .name();
            case "efficiency" ->
                Story.rounded(
                        Absorption.efficiency(number(rest, 0), number(rest, 1), number(rest, 2), Protocol.usual()));
            case "serum" ->
                Story.rounded(Absorption.serum(number(rest, 0), number(rest, 1), number(rest, 2), Protocol.usual()));
            case "needed" ->
                Story.rounded(Absorption.needed(number(rest, 0), number(rest, 1), number(rest, 2), Protocol.usual()));
            case "storage-limits" -> limits(StorageLimits.of(Protocol.usual()));
            case "odd" -> odd(rest);
            case "caution" -> cautions(rest);
            default -> throw new IllegalArgumentException("no such example: " + input);
        };
    }

    private static BigDecimal number(List<String> words, int i) {
        return new BigDecimal(words.get(i));
    }

    private static String limits(StorageLimits limits) {
        return "room " + limits.atRoom().toMinutes() + " min; thaw " + degrees(limits.thawWater()) + "; heat "
                + degrees(limits.heatTreatment()) + " for "
                + limits.heatTreatedFor().toMinutes() + " min";
    }

    private static String degrees(Temperature temperature) {
        return temperature.inFahrenheit().toPlainString() + " F " + temperature.inCelsius() + " C";
    }

    private static String cautions(List<String> fact) {
        String cautions = Caution.of(Story.event(fact), Protocol.usual()).stream()
                .map(Caution::name)
                .collect(Collectors.joining(" "));
        return cautions.isEmpty() ? "none" : cautions;
    }

    private static String odd(List<String> fact) {
        String odd = Plausibility.of(Story.event(fact)).stream()
                .map(oddity -> oddity.quantity() + " " + oddity.value().toPlainString() + " " + oddity.unit())
                .collect(Collectors.joining(" and "));
        return odd.isEmpty() ? "ordinary" : odd;
    }
}
