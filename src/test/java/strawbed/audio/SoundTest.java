package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundTest {
    private static final Sound THREE = Sound.of(new short[] {1, -2, 3}, 100);

    @Test
    void a_sound_does_not_change_with_the_samples_it_was_made_of_or_gave_out() {
        short[] samples = {1, -2, 3};
        Sound sound = Sound.of(samples, 100);
        samples[0] = 9;
        sound.copySamples()[1] = 9;
        assertThat(sound).isEqualTo(THREE).hasSameHashCodeAs(THREE);
        assertThat(sound).isNotEqualTo(Sound.of(new short[] {1, -2, 3}, 101));
    }

    @Test
    void sixteen_samples_are_one_millisecond() {
        Sound sound = Sound.of(new short[8_000], 16_016);
        assertThat(sound.start()).isEqualTo(Duration.ofMillis(1001));
        assertThat(sound.duration()).isEqualTo(Duration.ofMillis(500));
    }

    @Test
    void a_slice_keeps_its_place_in_the_source() {
        assertThat(THREE.slice(1, 3)).isEqualTo(Sound.of(new short[] {-2, 3}, 101));
        assertThat(THREE.slice(3, 3).length()).isZero();
        assertThatThrownBy(() -> THREE.slice(1, 4)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void a_gap_between_joined_sounds_becomes_silence() {
        assertThat(THREE.join(Sound.of(new short[] {7}, 105)))
                .isEqualTo(Sound.of(new short[] {1, -2, 3, 0, 0, 7}, 100));
        assertThatIllegalArgumentException().isThrownBy(() -> THREE.join(Sound.of(new short[1], 102)));
    }

    @Test
    void bytes_come_low_byte_first() {
        assertThat(Sound.of(new short[] {0x0102, -1}, 0).littleEndianBytes()).containsExactly(2, 1, -1, -1);
    }

    @Test
    void the_root_mean_square_of_a_square_wave_is_its_height() {
        assertThat(Sound.of(new short[] {500, -500, 500, -500}, 0).rms()).isCloseTo(500, within(1e-9));
        assertThat(Sound.of(new short[0], 0).rms()).isZero();
    }

    @Test
    void a_sound_before_its_source_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Sound.of(new short[1], -1));
    }
}
