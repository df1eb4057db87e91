package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.apache.commons.statistics.interval.Interval;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A second opinion from Apache Commons Statistics on what the herd's figures are made of. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StatisticsTest {
    /** A second opinion by counting: a million samples, parted as the study found them. */
    @Test
    void predictive_values_agree_with_a_table_of_four_fields() {
        double positive = 275_000;
        double negative = 725_000;
        double found = positive * 0.694;
        double falselyFound = negative * (1 - 0.831);
        double passed = negative * 0.831;
        double falselyPassed = positive * (1 - 0.694);
        assertThat(TestAccuracy.BRIX_AT_22.trulyPositive().doubleValue())
                .isCloseTo(100 * found / (found + falselyFound), within(0.05));
        assertThat(TestAccuracy.BRIX_AT_22.trulyNegative().doubleValue())
                .isCloseTo(100 * passed / (passed + falselyPassed), within(0.05));
    }

    @Test
    void the_wilson_interval_is_that_of_the_reference_library() {
        for (int of = 1; of <= 400; of = of < 60 ? of + 1 : of + 17) {
            for (int count = 0; count <= of; count++) {
                Interval expected = BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(of, count, 0.05);
                Wilson interval = Wilson.of(count, of);
                // Its z is exact, ours has seven digits as tables print it.
                assertThat(interval.low().doubleValue())
                        .as("%d of %d", count, of)
                        .isCloseTo(expected.getLowerBound(), within(1e-7));
                assertThat(interval.high().doubleValue())
                        .as("%d of %d", count, of)
                        .isCloseTo(expected.getUpperBound(), within(1e-7));
            }
        }
    }

    @Test
    void the_interval_of_none_begins_at_nothing_and_that_of_all_ends_at_all() {
        for (int of = 1; of <= 200; of++) {
            assertThat(Wilson.of(0, of).low()).as("0 of %d", of).isBetween(BigDecimal.ZERO, new BigDecimal("1E-18"));
            assertThat(Wilson.of(of, of).high())
                    .as("%d of %d", of, of)
                    .isBetween(new BigDecimal("0.999999999999999999"), BigDecimal.ONE);
        }
    }

    @Test
    void the_chance_of_seeing_few_is_that_of_the_reference_library() {
        for (String share : new String[] {"0", "0.05", "0.1", "0.4", "0.95", "1"}) {
            for (int calves = 0; calves <= 30; calves++) {
                BinomialDistribution expected = BinomialDistribution.of(calves, Double.parseDouble(share));
                for (int most = 0; most <= calves; most++) {
                    assertThat(HerdImmunity.chanceOfSeeingAtMost(most, new BigDecimal(share), calves)
                                    .doubleValue())
                            .as("at most %d of %d with %s", most, calves, share)
                            .isCloseTo(expected.cumulativeProbability(most), within(1e-12));
                }
            }
        }
    }

    @Test
    void the_chance_of_seeing_none_is_exact() {
        assertThat(HerdImmunity.chanceOfSeeingAtMost(0, new BigDecimal("0.1"), 12))
                .isEqualByComparingTo("0.282429536481");
    }

    /**
     * Cans of frozen orange juice that leaked, of 50 each half hour. Source, from memory: Montgomery, Introduction to
     * Statistical Quality Control, control charts for fraction nonconforming: centre 0.2313, limits 0.0524 and 0.4102,
     * samples 15 and 23 outside.
     */
    @Test
    void the_control_chart_is_that_of_the_textbook() {
        int[] leaking = {
            12, 15, 8, 10, 4, 7, 16, 9, 14, 10, 5, 6, 17, 12, 22, 8, 10, 5, 13, 11, 20, 18, 24, 15, 9, 12, 7, 13, 9, 6
        };
        ControlChart chart = ControlChart.of(Arrays.stream(leaking)
                .mapToObj(count -> new Figure(count, 50, 0, 0))
                .toList());
        assertThat(chart.centre().doubleValue()).isCloseTo(0.2313, within(0.00005));
        assertThat(chart.points()).hasSize(30).allSatisfy(point -> {
            assertThat(point.low().doubleValue()).isCloseTo(0.0524, within(0.0001));
            assertThat(point.high().doubleValue()).isCloseTo(0.4102, within(0.0001));
        });
        assertThat(chart.points().stream().filter(ControlChart.Point::isOutside).map(point -> point.place() + 1))
                .containsExactly(15, 23);
    }

    @Test
    void limits_stay_between_none_and_all_and_a_stretch_without_calves_has_no_point() {
        ControlChart chart =
                ControlChart.of(List.of(new Figure(4, 4, 0, 0), new Figure(0, 0, 3, 0), new Figure(7, 8, 0, 0)));
        assertThat(chart.points()).extracting(ControlChart.Point::place).containsExactly(0, 2);
        assertThat(chart.points()).allSatisfy(point -> {
            assertThat(point.high()).isEqualByComparingTo("1");
            assertThat(point.low()).isBetween(BigDecimal.ZERO, chart.centre());
            assertThat(point.isOutside()).isFalse();
        });
        assertThat(ControlChart.of(List.of(new Figure(0, 0, 2, 0))).points()).isEmpty();
    }

    @Test
    void a_share_that_cannot_be_is_refused() {
        assertThatThrownBy(() -> new Share(1, 0)).hasMessageContaining("1 out of 0");
        assertThatThrownBy(() -> new Share(0, 0)).hasMessageContaining("0 out of 0");
        assertThatThrownBy(() -> new Share(-1, 3)).hasMessageContaining("-1 out of 3");
        assertThatThrownBy(() -> new Share(4, 3)).hasMessageContaining("4 out of 3");
        assertThat(new Share(3, 3).percent(1)).isEqualTo("100.0");
        assertThat(new Share(0, 1).percent(1)).isEqualTo("0.0");
    }

    @Test
    void a_chance_that_cannot_be_is_refused() {
        BigDecimal tenth = new BigDecimal("0.1");
        assertThatThrownBy(() -> HerdImmunity.chanceOfSeeingAtMost(-1, tenth, 3))
                .hasMessageContaining("most -1");
        assertThatThrownBy(() -> HerdImmunity.chanceOfSeeingAtMost(4, tenth, 3)).hasMessageContaining("among 3");
        assertThatThrownBy(() -> HerdImmunity.chanceOfSeeingAtMost(0, new BigDecimal("-0.1"), 3))
                .hasMessageContaining("-0.1");
        assertThatThrownBy(() -> HerdImmunity.chanceOfSeeingAtMost(0, new BigDecimal("1.1"), 3))
                .hasMessageContaining("1.1");
    }
}
