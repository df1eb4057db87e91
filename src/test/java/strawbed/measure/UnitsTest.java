package strawbed.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Units against published figures: NIST Handbook 44, Appendix C (liquid measure, avoirdupois) and NIST SP 811
 * (temperature).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnitsTest {
    private static final BigDecimal CUBIC_INCH_IN_MILLILITRES = new BigDecimal("2.54").pow(3);

    /** NIST Handbook 44, Appendix C: 1 liquid quart = 0.946 352 946 L; 1 liquid pint = 0.473 176 473 L. */
    @ParameterizedTest
    @CsvSource({
        "1, QUART, 0.946352946",
        "2, QUART, 1.892705892",
        "3, QUART, 2.839058838",
        "4, QUART, 3.785411784",
        "1, PINT, 0.473176473",
        "3, LITRE, 3",
        "0, QUART, 0"
    })
    void a_volume_in_litres_is_exact(BigDecimal amount, VolumeUnit unit, BigDecimal litres) {
        assertThat(new Volume(amount, unit).inLitres()).isEqualByComparingTo(litres);
    }

    /** NIST Handbook 44, Appendix C: 1 gallon = 231 cubic inches = 4 quarts = 8 pints; 1 inch = 2.54 cm, exactly. */
    @Test
    void four_quarts_and_eight_pints_are_a_gallon_of_231_cubic_inches() {
        BigDecimal gallon =
                CUBIC_INCH_IN_MILLILITRES.multiply(new BigDecimal(231)).movePointLeft(3);

        assertThat(new Volume(new BigDecimal(4), VolumeUnit.QUART).inLitres()).isEqualByComparingTo(gallon);
        assertThat(new Volume(new BigDecimal(8), VolumeUnit.PINT).inLitres()).isEqualByComparingTo(gallon);
    }

    @ParameterizedTest
    @CsvSource({"4, QUART, 3.8", "2, QUART, 1.9", "0.5, QUART, 0.5", "3, LITRE, 3.0", "0.25, LITRE, 0.3"})
    void a_volume_for_reading_has_one_decimal(BigDecimal amount, VolumeUnit unit, String litres) {
        assertThat(new Volume(amount, unit).inLitresRounded()).hasToString(litres);
    }

    /** NIST Handbook 44, Appendix C: 1 pound avoirdupois = 0.453 592 37 kg, exactly. */
    @ParameterizedTest
    @CsvSource({
        "1, POUND, 0.45359237, 0.45",
        "95, POUND, 43.09127515, 43.09",
        "90, POUND, 40.8233133, 40.82",
        "41.5, KILOGRAM, 41.5, 41.50"
    })
    void a_weight_in_kilograms_is_exact(BigDecimal amount, MassUnit unit, BigDecimal exact, BigDecimal rounded) {
        BigDecimal kilograms = new Mass(amount, unit).inKilograms();

        assertThat(kilograms).isEqualByComparingTo(exact);
        assertThat(kilograms.setScale(2, RoundingMode.HALF_UP)).isEqualTo(rounded);
    }

    /** NIST SP 811, B.8: degree Celsius = (degree Fahrenheit - 32) / 1.8; water freezes at 32 F and boils at 212 F. */
    @ParameterizedTest
    @CsvSource({
        "32, FAHRENHEIT, 0.00",
        "212, FAHRENHEIT, 100.00",
        "-40, FAHRENHEIT, -40.00",
        "102, FAHRENHEIT, 38.89",
        "101.5, FAHRENHEIT, 38.61",
        "38.6, CELSIUS, 38.60",
        "-12.5, CELSIUS, -12.50"
    })
    void a_temperature_in_celsius_has_two_decimals(BigDecimal amount, TemperatureUnit unit, String celsius) {
        assertThat(new Temperature(amount, unit).inCelsius()).hasToString(celsius);
    }

    @Test
    void what_was_said_stays_as_it_was_said() {
        Volume quarts = new Volume(new BigDecimal("2"), VolumeUnit.QUART);

        assertThat(quarts.amount()).hasToString("2");
        assertThat(quarts.unit()).isEqualTo(VolumeUnit.QUART);
    }

    @Test
    void two_and_two_point_zero_are_the_same_amount() {
        assertThat(new Volume(new BigDecimal("2.0"), VolumeUnit.QUART))
                .isEqualTo(new Volume(new BigDecimal("2"), VolumeUnit.QUART));
        assertThat(new Mass(new BigDecimal("100"), MassUnit.POUND).amount()).hasToString("100");
        assertThat(new Temperature(new BigDecimal("100.0"), TemperatureUnit.FAHRENHEIT).amount())
                .hasToString("100");
    }

    @Test
    void there_is_no_volume_or_weight_below_zero() {
        assertThatThrownBy(() -> new Volume(new BigDecimal("-0.5"), VolumeUnit.QUART))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.5");
        assertThatThrownBy(() -> new Mass(new BigDecimal("-1"), MassUnit.POUND))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
    }
}
