package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HeatIndexTest {
    /**
     * A second opinion: the form ascribed to the National Research Council 1971, (1.8 T + 32) - (0.55 - 0.0055 RH) (1.8
     * T - 26), given from memory. Where both are used, in warm air, they are within 0.2 of each other.
     */
    @ParameterizedTest
    @CsvSource({"31, 40", "27, 80", "25, 50", "30, 60"})
    void an_older_formula_of_this_name_agrees(double celsius, double humidity) {
        double older = 1.8 * celsius + 32 - (0.55 - 0.0055 * humidity) * (1.8 * celsius - 26);
        assertThat(HeatIndex.of(
                                new Temperature(BigDecimal.valueOf(celsius), TemperatureUnit.CELSIUS),
                                BigDecimal.valueOf(humidity))
                        .doubleValue())
                .isCloseTo(older, Offset.offset(0.2));
    }
}
