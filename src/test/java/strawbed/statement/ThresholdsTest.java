package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ThresholdsTest {
    @Test
    void the_programs_own_file_is_whole_and_in_order() {
        Thresholds set = Thresholds.set();

        assertThat(set.readings()).isPositive();
        assertThat(set.lag()).isLessThanOrEqualTo(set.askLag());
        assertThat(set.askLag()).isLessThanOrEqualTo(set.missing());
        assertThat(set.margin()).as("a wrong calf is worse").isLessThanOrEqualTo(set.otherCalf());
        assertThat(set.free()).isLessThanOrEqualTo(set.rejectFree());
    }

    @Test
    void one_number_is_changed_by_its_name_in_the_file() {
        Thresholds set = Thresholds.set();

        assertThat(set.with("ask-lag", 7).askLag()).isEqualTo(7);
        assertThat(set.with("ask-lag", 7).with("ask-lag", set.askLag())).isEqualTo(set);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set.with("hearing", 1))
                .withMessageContaining("hearing");
    }

    @Test
    void a_missing_or_broken_number_is_named() {
        Map<String, Object> numbers = new HashMap<>(Thresholds.set().numbers());
        numbers.put("margin", "half");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Thresholds.of(numbers))
                .withMessageContaining("margin")
                .withMessageContaining("half");
        numbers.remove("margin");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Thresholds.of(numbers))
                .withMessageContaining("margin");
    }
}
