package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.audio.Sound;
import strawbed.testkit.Tones;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MixTest {
    private static final int SECONDS = 4;

    private final Sound speech = speech();

    @ParameterizedTest
    @EnumSource
    void the_level_is_that_of_active_speech_over_that_of_the_noise(Noise noise) {
        double[] made = noise.made(speech.length(), new SplittableRandom(7));
        short[] mixed = Mix.of(speech, made, 10).copySamples();
        short[] said = speech.copySamples();
        double[] left = IntStream.range(0, mixed.length)
                .mapToDouble(i -> mixed[i] - said[i])
                .toArray();

        assertThat(20 * Math.log10(Mix.activeLevel(said) / Mix.rms(left))).isCloseTo(10, within(0.1));
    }

    @Test
    void quiet_around_speech_does_not_count_as_speech() {
        assertThat(Mix.activeLevel(speech.copySamples())).isCloseTo(0.1 * 32_768 / Math.sqrt(2), within(20.0));
    }

    @ParameterizedTest
    @EnumSource
    void the_same_seed_gives_the_same_noise_and_another_seed_another(Noise noise) {
        assertThat(noise.made(1_000, new SplittableRandom(1)))
                .isEqualTo(noise.made(1_000, new SplittableRandom(1)))
                .isNotEqualTo(noise.made(1_000, new SplittableRandom(2)));
    }

    /** By definition: equal power in each octave. */
    @Test
    void pink_noise_loses_three_decibels_an_octave() {
        double[] pink = Noise.pink(1 << 18, new SplittableRandom(3));

        assertThat(power(pink, 400, 800) - power(pink, 1_600, 3_200)).isCloseTo(0, within(1.5));
        assertThat(power(pink, 200, 400) - power(pink, 800, 1_600)).isCloseTo(0, within(1.5));
    }

    /** The power of a band in dB, summed over single frequencies (Goertzel's algorithm would be quicker). */
    private static double power(double[] samples, int from, int to) {
        double sum = 0;
        int block = 1_600;
        for (int hertz = from; hertz < to; hertz += 10) {
            for (int start = 0; start + block <= samples.length; start += 8 * block) {
                double cos = 0;
                double sin = 0;
                for (int i = 0; i < block; i++) {
                    double angle = 2 * Math.PI * hertz * i / Sound.RATE;
                    cos += samples[start + i] * Math.cos(angle);
                    sin += samples[start + i] * Math.sin(angle);
                }
                sum += cos * cos + sin * sin;
            }
        }
        return 10 * Math.log10(sum);
    }

    private static Sound speech() {
        double[] samples = new double[SECONDS * Sound.RATE];
        Tones.mix(samples, Tones.tone(500, 0.1, Sound.RATE, Sound.RATE), 1);
        return Tones.sound(samples);
    }
}
