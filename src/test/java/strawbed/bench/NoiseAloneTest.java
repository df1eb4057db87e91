package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.testkit.Tones;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NoiseAloneTest {
    private final NoiseAlone noise = new NoiseAlone(new Babble(List.of(Tones.sound(Tones.syllables(2, 0.3)))));

    @Test
    void the_five_noises_take_turns() {
        assertThat(IntStream.range(0, 6).mapToObj(NoiseAlone::name))
                .containsExactly("pink noise", "fan", "bangs", "cow calls", "overlapping voices", "pink noise");
        assertThat(NoiseAlone.kinds()).isEqualTo(5);
    }

    @Test
    void each_lasts_a_minute_and_has_the_same_level_in_the_mean() {
        for (int minute = 0; minute < 5; minute++) {
            Sound sound = noise.minute(minute);
            assertThat(sound.duration()).isEqualTo(Duration.ofMinutes(1));
            // Bangs are clipped now and then, which takes a little away.
            assertThat(sound.rms()).as(NoiseAlone.name(minute)).isCloseTo(NoiseAlone.LEVEL, within(75.0));
        }
    }

    @Test
    void a_minute_is_the_same_each_time_and_no_two_are_alike() {
        assertThat(noise.minute(1)).isEqualTo(noise.minute(1)).isNotEqualTo(noise.minute(6));
    }
}
