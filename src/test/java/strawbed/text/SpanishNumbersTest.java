package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.time.ZoneOffset;
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

/** Number words: Real Academia Española, Ortografía de la lengua española, 2010, from memory. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpanishNumbersTest {
    private static final Spoken SPOKEN = new Spoken(new Messages(Language.SPANISH.locale()));
    private static final Figures FIGURES = new Figures(SPOKEN, ZoneOffset.UTC);

    @ParameterizedTest
    @CsvSource({
        "0, cero",
        "1, uno",
        "16, dieciséis",
        "20, veinte",
        "21, veintiuno",
        "22, veintidós",
        "26, veintiséis",
        "29, veintinueve",
        "30, treinta",
        "31, treinta y uno",
        "45, cuarenta y cinco",
        "99, noventa y nueve",
        "100, cien",
        "101, ciento uno",
        "112, ciento doce",
        "121, ciento veintiuno",
        "200, doscientos",
        "240, doscientos cuarenta",
        "500, quinientos",
        "555, quinientos cincuenta y cinco",
        "700, setecientos",
        "900, novecientos",
        "999, novecientos noventa y nueve",
        "1000, uno cero cero cero",
        "-5, menos cinco",
        "3.5, tres punto cinco",
        "101.25, ciento uno punto dos cinco"
    })
    void a_number_is_said(BigDecimal number, String said) {
        assertThat(SPOKEN.number(number)).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "1, un cuarto",
        "2, dos cuartos",
        "21, veintiún cuartos",
        "31, treinta y un cuartos",
        "3.5, tres punto cinco cuartos",
        "1.1, uno punto uno cuartos"
    })
    void a_number_agrees_with_a_masculine_thing(BigDecimal number, String said) {
        assertThat(FIGURES.volume(new Volume(number, VolumeUnit.QUART))).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "1, una libra",
        "81, ochenta y una libras",
        "21, veintiuna libras",
        "88, ochenta y ocho libras",
        "100, cien libras",
        "101, ciento una libras",
        "200, doscientas libras",
        "510, quinientas diez libras",
        "90.5, noventa punto cinco libras"
    })
    void a_number_agrees_with_a_feminine_thing(BigDecimal number, String said) {
        assertThat(FIGURES.mass(new Mass(number, MassUnit.POUND))).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "101, FAHRENHEIT, ciento un grados Fahrenheit",
        "101.5, FAHRENHEIT, ciento uno punto cinco grados Fahrenheit",
        "39, CELSIUS, treinta y nueve grados centígrados"
    })
    void a_temperature_is_said(BigDecimal number, TemperatureUnit unit, String said) {
        assertThat(FIGURES.temperature(new Temperature(number, unit))).isEqualTo(said);
    }

    /** On the clock of 24 hours, as the screen shows it; the wording is our own. */
    @ParameterizedTest
    @CsvSource({
        "00:00, la medianoche",
        "00:05, las cero y cinco",
        "01:00, la una en punto",
        "01:30, la una treinta",
        "04:00, las cuatro en punto",
        "04:05, las cuatro y cinco",
        "04:30, las cuatro treinta",
        "12:00, las doce en punto",
        "14:00, las catorce horas",
        "16:45, las dieciséis cuarenta y cinco",
        "21:21, las veintiuna veintiuno",
        "23:59, las veintitrés cincuenta y nueve"
    })
    void a_clock_time_is_said(LocalTime time, String said) {
        assertThat(SPOKEN.clock(time)).isEqualTo(said);
    }
}
