package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.event.Event;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumTestedByBrix;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Event.HeartRateCounted;
import strawbed.event.Event.TemperatureTaken;
import strawbed.event.Term;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.testkit.Listener;
import strawbed.testkit.NumberWords;

/** Amounts as people say them. The ways of saying are common American usage; no published source. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenNumbersTest {
    private static final Listener LISTENER = Listener.onTheTablesFarm();

    @Test
    void every_brix_value_with_one_decimal_is_read() {
        for (int tenths = 1; tenths <= 999; tenths++) {
            String words = NumberWords.of(tenths / 10) + " point " + NumberWords.of(tenths % 10);
            BigDecimal value = BigDecimal.valueOf(tenths, 1).stripTrailingZeros();

            assertThat(statement("calf twelve colostrum brix " + words).facts())
                    .as(words)
                    .extracting(SaidFact::event)
                    .containsExactly(new ColostrumTestedByBrix(value));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "two quarts, 2, QUART",
        "one quart, 1, QUART",
        "half a quart, 0.5, QUART",
        "a quart, 1, QUART",
        "a quart and a half, 1.5, QUART",
        "a quarter of a liter, 0.25, LITRE",
        "three quarters of a quart, 0.75, QUART",
        "three quarters a pint, 0.75, PINT",
        "two and a half quarts, 2.5, QUART",
        "two and one half quarts, 2.5, QUART",
        "one and a quarter liters, 1.25, LITRE",
        "three and three quarters pints, 3.75, PINT",
        "three point five liters, 3.5, LITRE",
        "two point two five quarts, 2.25, QUART",
        "zero point five quarts, 0.5, QUART",
        "oh point seven five litres, 0.75, LITRE"
    })
    void halves_and_quarters_of_a_volume_are_read(String words, BigDecimal amount, VolumeUnit unit) {
        Volume volume = new Volume(amount, unit);

        assertThat(LISTENER.event("calf twelve fed " + words)).isEqualTo(fed(volume));
        assertThat(LISTENER.event("calf twelve " + words + " fed")).isEqualTo(fed(volume));
        assertThat(LISTENER.facts("calf twelve fed four quarts left " + words))
                .extracting(SaidFact::event)
                .contains(new Event.ColostrumLeft(volume));
    }

    @Test
    void every_whole_and_half_volume_up_to_six_quarts_is_read() {
        for (int whole = 1; whole <= 6; whole++) {
            String unit = whole == 1 ? " quart" : " quarts";
            assertThat(LISTENER.event("calf twelve fed " + NumberWords.of(whole) + unit))
                    .isEqualTo(fed(new Volume(new BigDecimal(whole), VolumeUnit.QUART)));
        }
        for (int whole = 1; whole <= 5; whole++) {
            assertThat(LISTENER.event("calf twelve fed " + NumberWords.of(whole) + " and a half quarts"))
                    .isEqualTo(fed(new Volume(BigDecimal.valueOf(whole * 10L + 5, 1), VolumeUnit.QUART)));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "forty one twenty seven, 4127",
        "four one two seven, 4127",
        "zero zero seven, 007",
        "oh four one, 041",
        "one hundred five, 105",
        "twelve, 12",
        "twelve oh seven, 1207",
        "twenty twenty, 2020",
        "twenty oh one, 2001",
        "sixty fifteen, 6015",
        "forty one, 41",
        "ninety nine ninety nine, 9999",
        "one two three four five six, 123456"
    })
    void a_tag_keeps_its_digits(String words, String number) {
        assertThat(LISTENER.event("calf twelve tag " + words)).isEqualTo(new EarTagFitted(number, Term.TagScheme.FARM));
    }

    @Test
    void a_tag_spelt_digit_by_digit_keeps_its_leading_zeros() {
        long seed = 7;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            List<Integer> digits =
                    random.ints(2 + random.nextInt(7), 0, 10).boxed().toList();
            String number = digits.stream().map(String::valueOf).collect(Collectors.joining());
            String words = digits.stream().map(NumberWords::of).collect(Collectors.joining(" "));

            assertThat(LISTENER.event("calf twelve tag " + words))
                    .as("seed %d, \"%s\"", seed, words)
                    .isEqualTo(new EarTagFitted(number, Term.TagScheme.FARM));
        }
    }

    @Test
    void every_official_number_of_fifteen_digits_is_read_whole() {
        long seed = 8;
        Random random = new Random(seed);
        for (int i = 0; i < 100; i++) {
            String number = "840" + "%012d".formatted(random.nextLong(274_877_906_944L));
            String words = number.chars()
                    .mapToObj(digit -> NumberWords.of(digit - '0'))
                    .collect(Collectors.joining(" "));

            assertThat(LISTENER.event("calf twelve official tag " + words))
                    .as("seed %d, %s", seed, number)
                    .isEqualTo(new EarTagFitted(number, Term.TagScheme.OFFICIAL));
        }
    }

    /** A calf is 32 to 43 C, which is 90 to 109 F (common practice, no published source): the scales never meet. */
    @Test
    void a_body_temperature_without_scale_is_told_by_its_range() {
        for (int degrees = 32; degrees <= 43; degrees++) {
            assertThat(LISTENER.event("calf twelve temperature " + NumberWords.of(degrees)))
                    .isEqualTo(taken(degrees, TemperatureUnit.CELSIUS));
        }
        for (int degrees = 90; degrees <= 99; degrees++) {
            assertThat(LISTENER.event("calf twelve temperature " + NumberWords.of(degrees)))
                    .isEqualTo(taken(degrees, TemperatureUnit.FAHRENHEIT));
        }
        for (int degrees = 101; degrees <= 109; degrees++) {
            assertThat(LISTENER.event("calf twelve temp one oh " + NumberWords.of(degrees - 100)))
                    .isEqualTo(taken(degrees, TemperatureUnit.FAHRENHEIT));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "one hundred two, 102, FAHRENHEIT",
        "a hundred and one, 101, FAHRENHEIT",
        "one oh one point five, 101.5, FAHRENHEIT",
        "one hundred and one and a half, 101.5, FAHRENHEIT",
        "one hundred one point five degrees fahrenheit, 101.5, FAHRENHEIT",
        "thirty eight point six, 38.6, CELSIUS",
        "thirty eight point six degrees celsius, 38.6, CELSIUS",
        "thirty nine centigrade, 39, CELSIUS"
    })
    void a_temperature_is_read_with_its_scale(String words, BigDecimal degrees, TemperatureUnit unit) {
        assertThat(LISTENER.event("calf twelve temperature " + words))
                .isEqualTo(new TemperatureTaken(new Temperature(degrees, unit)));
    }

    @ParameterizedTest
    @CsvSource({"thirty nine, 39, CELSIUS", "one hundred two, 102, FAHRENHEIT"})
    void warmed_colostrum_has_the_scale_of_its_range(String words, BigDecimal degrees, TemperatureUnit unit) {
        assertThat(LISTENER.event("calf twelve fed two quarts by bottle warmed to " + words))
                .isEqualTo(new ColostrumFed(
                        new Volume(new BigDecimal(2), VolumeUnit.QUART),
                        Term.FeedingMethod.BOTTLE,
                        new Temperature(degrees, unit)));
    }

    @Test
    void every_weight_of_a_calf_is_read_in_pounds_and_kilograms() {
        for (int amount = 34; amount <= 99; amount++) {
            assertThat(LISTENER.event("calf twelve weight " + NumberWords.of(amount) + " pounds"))
                    .isEqualTo(weighed(amount, MassUnit.POUND));
        }
        for (int amount = 101; amount <= 154; amount++) {
            String rest = NumberWords.of(amount - 100);
            String pair = "one " + NumberWords.minute(amount - 100);
            assertThat(LISTENER.event("calf twelve weighs one hundred " + rest + " pounds"))
                    .isEqualTo(weighed(amount, MassUnit.POUND));
            assertThat(LISTENER.event("calf twelve weight " + pair + " pounds"))
                    .isEqualTo(weighed(amount, MassUnit.POUND));
        }
        for (int amount = 15; amount <= 70; amount++) {
            assertThat(LISTENER.event("calf twelve weight " + NumberWords.of(amount) + " kilos"))
                    .isEqualTo(weighed(amount, MassUnit.KILOGRAM));
        }
    }

    @Test
    void every_heart_rate_of_a_calf_is_read() {
        List<Integer> rates = IntStream.rangeClosed(101, 199).boxed().toList();
        for (int rate : rates) {
            assertThat(LISTENER.event("calf twelve heart rate one hundred " + NumberWords.of(rate - 100)))
                    .isEqualTo(new HeartRateCounted(rate));
        }
    }

    private static Statement statement(String words) {
        Interpretation meaning = LISTENER.hears(words);
        return meaning instanceof Interpretation.Unsure unsure
                ? unsure.best()
                : ((Interpretation.Understood) meaning).statement();
    }

    @SuppressWarnings("NullAway") // The null checker cannot see in a compiled record what may be missing.
    private static ColostrumFed fed(Volume volume) {
        return new ColostrumFed(volume, null, null);
    }

    @SuppressWarnings("NullAway")
    private static CalfWeighed weighed(int amount, MassUnit unit) {
        return new CalfWeighed(new Mass(new BigDecimal(amount), unit), null);
    }

    private static TemperatureTaken taken(int degrees, TemperatureUnit unit) {
        return new TemperatureTaken(new Temperature(new BigDecimal(degrees), unit));
    }
}
