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
import strawbed.protocol.Setting;

/** The worked examples of the published figures and of common practice, each with its source beside it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CareExamplesTest {
    @ParameterizedTest(name = "{0}: {1} -> {2} ({3})")
    @CsvFileSource(
            resources = {
                "/care-examples.csv",
                "/due-times.csv",
                "/barn-climate.csv",
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
            case "heat-index" ->
                HeatIndex.of(
                                new Temperature(new BigDecimal(rest.get(0)), TemperatureUnit.CELSIUS),
                                new BigDecimal(rest.get(1)))
                        .stripTrailingZeros()
                        .toPlainString();
            case "critical" ->
                CriticalTemperature.fahrenheitAt(Told.duration(rest.get(0))).toPlainString();
            case "usual" -> Protocol.usual().value(Setting.valueOf(rest.get(0)));
            case "accuracy" ->
                accuracy(TestAccuracy.of(
                        TestAccuracy.Positive.valueOf(rest.get(0)), rest.get(1), rest.get(2), rest.get(3)));
            case "accuracy-at-22" -> accuracy(TestAccuracy.BRIX_AT_22);
            case "odd" -> odd(rest);
            case "caution" -> cautions(rest);
            default -> throw new IllegalArgumentException("no such example: " + input);
        };
    }

    private static String accuracy(TestAccuracy accuracy) {
        return accuracy.trulyPositive() + " " + accuracy.trulyNegative();
    }

    private static BigDecimal number(List<String> words, int i) {
        return new BigDecimal(words.get(i));
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
