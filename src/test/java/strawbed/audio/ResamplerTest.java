package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.testkit.Tones;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ResamplerTest {
    private static double[] resampled(double[] samples, int rate) {
        Resampler resampler = new Resampler(rate);
        List<Double> out = new ArrayList<>();
        for (double sample : samples) {
            resampler.push(sample);
            while (resampler.hasNext()) {
                out.add(resampler.next());
            }
        }
        resampler.finish();
        while (resampler.hasNext()) {
            out.add(resampler.next());
        }
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double rmsInside(double[] samples) {
        double sum = 0;
        int edge = samples.length / 10;
        for (int i = edge; i < samples.length - edge; i++) {
            sum += samples[i] * samples[i];
        }
        return Math.sqrt(sum / (samples.length - 2 * edge));
    }

    /** The wanted samples are the tone itself, computed at 16 kHz. */
    @ParameterizedTest
    @ValueSource(ints = {8_000, 11_025, 22_050, 24_000, 32_000, 44_100, 48_000, 96_000})
    void a_tone_comes_out_as_the_same_tone_at_the_same_time(int rate) {
        double[] out = resampled(Tones.tone(1_000, 1, rate, rate), rate);
        double[] wanted = Tones.tone(1_000, 1, Sound.RATE, Sound.RATE);
        assertThat(out).hasSize(Sound.RATE);
        for (int i = 200; i < Sound.RATE - 200; i++) {
            assertThat(out[i]).isCloseTo(wanted[i], within(0.001));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {8_000, 11_025, 22_050, 44_100, 48_000})
    void the_top_of_the_speech_band_passes(int rate) {
        double hertz = 0.85 * Math.min(rate, Sound.RATE) / 2;
        double[] out = resampled(Tones.tone(hertz, 1, rate, rate), rate);
        assertThat(20 * Math.log10(rmsInside(out) * Math.sqrt(2))).isCloseTo(0, within(1.0));
    }

    @ParameterizedTest
    @ValueSource(ints = {22_050, 32_000, 44_100, 48_000, 96_000})
    void a_tone_above_the_new_band_does_not_fold_back(int rate) {
        double[] out = resampled(Tones.tone(10_000, 1, rate, rate), rate);
        assertThat(20 * Math.log10(rmsInside(out) * Math.sqrt(2))).isLessThan(-60);
    }

    /** A tone of 3 kHz at 8 kHz has an image at 5 kHz; what is left besides the tone must be small. */
    @Test
    void a_higher_rate_adds_no_mirror_image() {
        double[] out = resampled(Tones.tone(3_000, 1, 8_000, 8_000), 8_000);
        double[] wanted = Tones.tone(3_000, 1, Sound.RATE, Sound.RATE);
        double[] rest = new double[out.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = out[i] - wanted[i];
        }
        assertThat(20 * Math.log10(rmsInside(rest) * Math.sqrt(2))).isLessThan(-60);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 441, 1000})
    void short_inputs_give_their_share_of_samples(int count) {
        assertThat(resampled(new double[count], 44_100)).hasSize((count * 160 + 440) / 441);
    }
}
