package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TallyTest {
    /**
     * R. G. Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in Medicine 17 (1998), table
     * I, method 3; from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "81, 263, 30.8% (25.5-36.6)",
        "15, 148, 10.1% (6.2-16.0)",
        "0, 20, 0.0% (0.0-16.1)",
        "1, 29, 3.4% (0.6-17.2)",
        "0, 0, -"
    })
    void a_part_is_written_with_its_interval(int count, int total, String written) {
        assertThat(Tally.written(count, total)).isEqualTo(written);
    }

    @Test
    void outcomes_are_counted_each_for_itself() {
        Tally tally = Tally.of(List.of(Outcome.RIGHT, Outcome.WRONG, Outcome.RIGHT, Outcome.NOT_UNDERSTOOD));

        assertThat(tally.total()).isEqualTo(4);
        assertThat(tally.count(Outcome.RIGHT)).isEqualTo(2);
        assertThat(tally.share(Outcome.WRONG)).isEqualTo(0.25);
        assertThat(tally.count(Outcome.ASKED_RIGHT)).isZero();
    }
}
