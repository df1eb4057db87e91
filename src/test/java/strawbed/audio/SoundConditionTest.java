package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.testkit.Tones;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundConditionTest {
    private static final double SECONDS = 3;
    private static final double BEFORE = 0.5;

    /** Two seconds of speech, with half a second of the place before and behind it. */
    private static double[] amid(double amplitude, double noise) {
        double[] samples = Tones.noise(SECONDS, noise, new Random(1));
        Tones.mix(samples, Tones.syllables(2, amplitude), BEFORE);
        return samples;
    }

    private static SoundCondition condition(double[] samples) {
        return SoundCondition.of(Tones.sound(samples));
    }

    @Test
    void speech_of_a_usual_level_in_a_quiet_place_is_good() {
        assertThat(condition(amid(0.3, 0.001))).isEqualTo(SoundCondition.GOOD);
    }

    @Test
    void the_same_forty_decibels_down_is_too_quiet() {
        assertThat(condition(amid(0.003, 0.00001))).isEqualTo(SoundCondition.TOO_QUIET);
    }

    @Test
    void the_same_driven_into_full_scale_is_too_loud_and_what_only_touches_it_is_not() {
        assertThat(condition(amid(3, 0.001))).isEqualTo(SoundCondition.TOO_LOUD);
        assertThat(condition(amid(0.99, 0.001))).isEqualTo(SoundCondition.GOOD);
    }

    @Test
    void noise_of_nearly_the_level_of_the_speech_is_too_noisy_and_so_is_noise_alone() {
        assertThat(condition(amid(0.3, 0.1))).isEqualTo(SoundCondition.TOO_NOISY);
        assertThat(condition(amid(0, 0.1))).isEqualTo(SoundCondition.TOO_NOISY);
    }

    @Test
    void an_offset_and_rumble_as_loud_as_the_speech_change_nothing() {
        double[] samples = amid(0.3, 0.001);
        double[] rumble = Tones.tone(6, 0.15, Sound.RATE, samples.length);
        for (int i = 0; i < samples.length; i++) {
            samples[i] += 0.25 + rumble[i];
        }
        assertThat(condition(samples)).isEqualTo(SoundCondition.GOOD);
    }

    /** By definition: a sine of amplitude 0.1 has a root mean square of 0.0707, which is -23 dB of full scale. */
    @Test
    void the_level_is_that_of_the_time_in_which_somebody_speaks() {
        double[] samples = Tones.noise(SECONDS, 0.001, new Random(2));
        Tones.mix(samples, Tones.tone(2_000, 0.1, Sound.RATE, Sound.RATE), 1);
        // 0.2 s after the tone still count, as P.56 bridges short pauses.
        double bridged = 10 * Math.log10(1 / 1.2);
        SoundMeasure measure = SoundMeasure.of(Tones.sound(samples));
        assertThat(measure.level()).isCloseTo(-23 + bridged, within(0.3));
        // White noise of 0.001 is -60 dB; little of it lies in what the high-pass takes.
        assertThat(measure.overNoise()).isCloseTo(37 + bridged, within(1.0));
        assertThat(measure.clipped()).isZero();
    }

    @Test
    void at_its_limit_a_sound_is_good_and_of_several_faults_one_is_told() {
        assertThat(SoundCondition.of(new SoundMeasure(-54, 15, 0.03))).isEqualTo(SoundCondition.GOOD);
        assertThat(SoundCondition.of(new SoundMeasure(-54, 14.9, 0.03))).isEqualTo(SoundCondition.TOO_NOISY);
        assertThat(SoundCondition.of(new SoundMeasure(-54.1, 14.9, 0.03))).isEqualTo(SoundCondition.TOO_QUIET);
        assertThat(SoundCondition.of(new SoundMeasure(-54.1, 14.9, 0.031))).isEqualTo(SoundCondition.TOO_LOUD);
    }

    @Test
    void a_hole_in_the_sound_says_nothing_of_the_place() {
        Sound noisy = Tones.sound(amid(0.3, 0.1));
        Sound later = Sound.of(noisy.copySamples(), noisy.length() + Sound.RATE);
        assertThat(SoundCondition.of(noisy.join(later))).isEqualTo(SoundCondition.TOO_NOISY);
    }

    @Test
    void digital_silence_before_the_speech_is_a_place_without_noise() {
        double[] samples = new double[(int) (SECONDS * Sound.RATE)];
        Tones.mix(samples, Tones.syllables(2, 0.3), BEFORE);
        assertThat(condition(samples)).isEqualTo(SoundCondition.GOOD);
    }

    @Test
    void a_sound_without_anything_in_it_is_too_quiet() {
        assertThat(condition(new double[0])).isEqualTo(SoundCondition.TOO_QUIET);
        assertThat(condition(new double[100])).isEqualTo(SoundCondition.TOO_QUIET);
        assertThat(condition(new double[Sound.RATE])).isEqualTo(SoundCondition.TOO_QUIET);
    }
}
