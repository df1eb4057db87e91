package strawbed.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SettingTest {
    /** Above 60 C, which is 140 F, antibody is lost: McMartin 2006, as quoted in trade press. */
    @Test
    void colostrum_is_never_heated_above_sixty_degrees_celsius() {
        String key = Setting.HEAT_TREATMENT_MOST_FAHRENHEIT.key();
        assertThat(Protocol.faults(Map.of(key, "140"))).isEmpty();
        assertThat(Protocol.faults(Map.of(key, "145")))
                .singleElement()
                .satisfies(fault ->
                        assertThat(fault.sentence()).isEqualTo(key + " is 145, but must be a number from 130 to 140"));
        assertThat(Setting.HEAT_TREATMENT_MOST_FAHRENHEIT.source()).contains("McMartin 2006, as quoted in trade press");
    }

    @Test
    void no_name_is_both_a_section_and_a_setting() {
        List<String> settings =
                Arrays.stream(Setting.values()).map(Setting::key).toList();
        assertThat(new HashSet<>(settings)).hasSize(Setting.values().length);
        assertThat(Arrays.stream(Section.values()).map(Section::key)).doesNotContainAnyElementsOf(settings);
    }

    @Test
    void the_name_that_was_meant_is_found() {
        List<String> known = Arrays.stream(Setting.values()).map(Setting::key).toList();
        assertThat(NearNames.of("first_dip_minute", known)).first().isEqualTo("first_dip_minutes");
        assertThat(NearNames.of("First-Dip Minutes", known)).first().isEqualTo("first_dip_minutes");
        assertThat(NearNames.of("serum", List.of("navel", "serum", "signs")))
                .first()
                .isEqualTo("serum");
        assertThat(NearNames.of("watch", known)).containsExactly("watch_minutes");
        assertThat(NearNames.of("paint_the_barn_in_green", known)).isEmpty();
    }

    @Test
    void what_differs_from_the_usual_is_told_in_the_order_of_the_settings() {
        Protocol protocol = Protocol.of(Map.of("units", "US", "first_dip_minutes", "45", "dry_minutes", "30.0"));
        assertThat(protocol.changed()).containsExactly(Setting.FIRST_DIP_MINUTES, Setting.UNITS);
        assertThat(Protocol.usual().changed()).isEmpty();
    }
}
