package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Units;

/** Check values: NIST Handbook 44, Appendix C, and NIST SP 811; the rounding steps are common practice. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShownUnitsTest {
    @ParameterizedTest
    @CsvSource({
        "4, QUART, METRIC, 3.8, LITRE",
        "3, LITRE, US, 3.25, QUART",
        "1.9, LITRE, US, 2, QUART",
        "1, PINT, METRIC, 0.5, LITRE",
        "3.33, LITRE, METRIC, 3.33, LITRE",
        "1, PINT, US, 1, PINT",
        "3.3, QUART, AS_SPOKEN, 3.3, QUART",
        "3.33, LITRE, AS_SPOKEN, 3.33, LITRE"
    })
    void volumes(BigDecimal said, VolumeUnit unit, Units units, BigDecimal shown, VolumeUnit shownUnit) {
        assertThat(new ShownUnits(units).of(new Volume(said, unit))).isEqualTo(new Volume(shown, shownUnit));
    }

    @ParameterizedTest
    @CsvSource({
        "95, POUND, METRIC, 43, KILOGRAM",
        "90, POUND, METRIC, 41, KILOGRAM",
        "88, POUND, METRIC, 40, KILOGRAM",
        "91, POUND, METRIC, 41.5, KILOGRAM",
        "43, KILOGRAM, US, 95, POUND",
        "43.2, KILOGRAM, METRIC, 43.2, KILOGRAM",
        "88.5, POUND, US, 88.5, POUND",
        "88.5, POUND, AS_SPOKEN, 88.5, POUND",
        "43.2, KILOGRAM, AS_SPOKEN, 43.2, KILOGRAM"
    })
    void weights(BigDecimal said, MassUnit unit, Units units, BigDecimal shown, MassUnit shownUnit) {
        assertThat(new ShownUnits(units).of(new Mass(said, unit))).isEqualTo(new Mass(shown, shownUnit));
    }

    @ParameterizedTest
    @CsvSource({
        "102, FAHRENHEIT, METRIC, 38.9, CELSIUS",
        "101.5, FAHRENHEIT, METRIC, 38.6, CELSIUS",
        "140, FAHRENHEIT, METRIC, 60, CELSIUS",
        "39.0, CELSIUS, US, 102.2, FAHRENHEIT",
        "39.04, CELSIUS, METRIC, 39.04, CELSIUS",
        "101.55, FAHRENHEIT, US, 101.55, FAHRENHEIT",
        "101.55, FAHRENHEIT, AS_SPOKEN, 101.55, FAHRENHEIT",
        "-4, CELSIUS, AS_SPOKEN, -4, CELSIUS"
    })
    void temperatures(BigDecimal said, TemperatureUnit unit, Units units, BigDecimal shown, TemperatureUnit shownUnit) {
        assertThat(new ShownUnits(units).of(new Temperature(said, unit))).isEqualTo(new Temperature(shown, shownUnit));
    }
}
