package strawbed.report.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ScaleTest {
    @ParameterizedTest
    @CsvSource({
        "0, 87, 5, '0 20 40 60 80 100'",
        "0, 100, 5, '0 20 40 60 80 100'",
        "13, 34, 5, '10 15 20 25 30 35'",
        "25.9, 57, 5, '20 30 40 50 60'",
        "0, 6.1, 5, '0 2 4 6 8'",
        "0, 0, 4, '0 0.5 1'",
        "0, 5000, 5, '0 1000 2000 3000 4000 5000'",
        "99.5, 99.9, 4, '99.5 99.6 99.7 99.8 99.9'",
    })
    void an_axis_has_round_numbers_around_all_figures(double least, double most, int steps, String numbers) {
        assertThat(Scale.around(least, most, steps).numbers().stream()
                        .map(Scale::shown)
                        .collect(Collectors.joining(" ")))
                .isEqualTo(numbers);
    }

    @Test
    void all_figures_lie_on_the_axis_and_no_more_numbers_than_there_is_room_for() {
        Random random = new Random(3);
        for (int i = 0; i < 2000; i++) {
            double least = random.nextDouble() * Math.pow(10, random.nextInt(5) - 1);
            double most = least + random.nextDouble() * Math.pow(10, random.nextInt(5) - 1);
            Scale scale = Scale.around(least, most, 4);
            assertThat(scale.steps()).isBetween(1, 4);
            assertThat(scale.place(least))
                    .as("%s to %s: %s", least, most, scale)
                    .isBetween(-1e-3, 1.0);
            assertThat(scale.place(most)).as("%s to %s: %s", least, most, scale).isBetween(0.0, 1 + 1e-3);
        }
    }
}
