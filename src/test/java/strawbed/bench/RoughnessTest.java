package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.audio.SoundCondition;
import strawbed.testkit.Tones;

/** That bad sound is as bad as it is said to be. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RoughnessTest {
    private static final int BEGINS = Sound.RATE / 2;
    private static final Sound SENTENCE = sentence();
    private static final Sound OTHER = Tones.sound(Tones.syllables(1.5, 0.1));

    private static Sound sentence() {
        double[] samples = new double[3 * Sound.RATE];
        Tones.mix(samples, Tones.syllables(2, 0.3), 0.5);
        return Tones.sound(samples);
    }

    private static Sound rough(String words) {
        List<Roughness> kinds = Roughness.all(OTHER, OTHER);
        return kinds.stream()
                .filter(kind -> kind.words().startsWith(words))
                .findFirst()
                .orElseThrow()
                .on()
                .apply(SENTENCE);
    }

    private static double mean(Sound sound) {
        short[] samples = sound.copySamples();
        double sum = 0;
        for (short sample : samples) {
            sum += sample;
        }
        return sum / samples.length;
    }

    private static Sound without(Sound whole) {
        short[] left = whole.copySamples();
        short[] said = SENTENCE.copySamples();
        for (int i = 0; i < left.length; i++) {
            left[i] = Mix.clipped(left[i] - (double) (i < said.length ? said[i] : 0));
        }
        return Sound.of(left, 0);
    }

    private static double decibels(double ratio) {
        return 20 * Math.log10(ratio);
    }

    @Test
    void each_kind_changes_the_sentence() {
        assertThat(Roughness.all(OTHER, OTHER))
                .hasSize(14)
                .allSatisfy(kind -> assertThat(kind.on().apply(SENTENCE)).isNotEqualTo(SENTENCE));
    }

    @Test
    void twenty_decibels_over_full_scale_is_called_too_loud_and_forty_down_too_quiet() {
        assertThat(SoundCondition.of(rough("20 dB over"))).isEqualTo(SoundCondition.TOO_LOUD);
        assertThat(SoundCondition.of(rough("40 dB down"))).isEqualTo(SoundCondition.TOO_QUIET);
    }

    @Test
    void an_offset_moves_all_by_a_quarter_of_full_scale() {
        assertThat(mean(rough("an offset"))).isCloseTo(mean(SENTENCE) + 8_192, within(1.0));
    }

    @Test
    void hum_lies_ten_decibels_under_the_speech() {
        double speech = Mix.activeLevel(SENTENCE.copySamples());
        assertThat(decibels(speech / without(rough("hum of 50")).rms())).isCloseTo(10, within(0.1));
    }

    @Test
    void the_read_back_is_twelve_decibels_down_and_late() {
        Sound echo = without(rough("its own"));
        double ratio = Mix.activeLevel(SENTENCE.copySamples()) / Mix.activeLevel(echo.copySamples());
        assertThat(decibels(ratio)).isCloseTo(12, within(0.2));
        int begins = (int) (0.62 * Sound.RATE);
        assertThat(echo.slice(0, begins).rms()).isZero();
        assertThat(echo.slice(begins, begins + Sound.RATE / 10).rms()).isPositive();
    }

    @Test
    void a_shout_lies_before_the_sentence_and_a_sneeze_behind_it() {
        Sound shout = rough("a shout");
        assertThat(shout.length()).isEqualTo(SENTENCE.length() + Sound.RATE);
        Sound later = shout.slice(BEGINS + Sound.RATE, shout.length());
        assertThat(later.copySamples())
                .isEqualTo(SENTENCE.slice(BEGINS, SENTENCE.length()).copySamples());
        assertThat(shout.slice(0, BEGINS).rms()).isZero();
        assertThat(shout.slice(BEGINS, BEGINS + Sound.RATE * 8 / 10).rms()).isGreaterThan(1_000);
        assertThat(shout.slice(BEGINS + Sound.RATE * 8 / 10 + 10, BEGINS + Sound.RATE)
                        .rms())
                .isZero();
        Sound sneeze = without(rough("a sneeze"));
        assertThat(sneeze.slice(0, 5 * Sound.RATE / 2).rms()).isZero();
        assertThat(sneeze.rms()).isGreaterThan(100);
    }

    /** By definition of a sampling rate of 8 kHz: nothing over 4 kHz is left. */
    @Test
    void eight_kilohertz_keep_a_low_tone_and_lose_a_high_one() {
        Sound low = Tones.sound(Tones.tone(1_000, 0.3, Sound.RATE, Sound.RATE));
        Sound high = Tones.sound(Tones.tone(6_000, 0.3, Sound.RATE, Sound.RATE));
        assertThat(decibels(Roughness.narrow(low).rms() / low.rms())).isCloseTo(0, within(0.3));
        assertThat(decibels(Roughness.narrow(high).rms() / high.rms())).isLessThan(-40);
        assertThat(Roughness.narrow(low).length()).isEqualTo(low.length());
    }
}
