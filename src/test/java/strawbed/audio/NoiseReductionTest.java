package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.testkit.Tones;

/** Two seconds of noise with a tone in the middle of them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NoiseReductionTest {
    private static final int SECOND = Sound.RATE;
    private static final double QUIET = 0.01;
    private static final double LOUD = 0.2;

    private final Sound noisy = noisy();

    @Test
    void noise_goes_down_and_by_no_more_than_was_asked_for() {
        double before = decibels(noisy, 0.2, 0.6);

        assertThat(decibels(new NoiseReduction(12).changed(noisy), 0.2, 0.6) - before)
                .isBetween(-12.0, -4.0);
        assertThat(decibels(new NoiseReduction(3).changed(noisy), 0.2, 0.6) - before)
                .isBetween(-3.0, -1.5);
    }

    @Test
    void speech_keeps_its_level_and_its_place() {
        Sound clearer = new NoiseReduction(12).changed(noisy);

        assertThat(decibels(clearer, 0.9, 1.1) - decibels(noisy, 0.9, 1.1)).isCloseTo(0, within(0.5));
        assertThat(clearer.length()).isEqualTo(noisy.length());
        assertThat(clearer.startSample()).isEqualTo(noisy.startSample());
    }

    @Test
    void a_tone_in_quiet_comes_out_as_it_went_in() {
        assertThat(error(Tones.sound(Tones.syllables(1, LOUD)))).isLessThan(-20);
    }

    @Test
    void full_scale_does_not_wrap_around() {
        assertThat(error(Tones.sound(Tones.syllables(1, 1)))).isLessThan(-20);
    }

    @Test
    void bit_by_bit_it_keeps_each_sample_in_its_place() {
        Sound tone = Tones.sound(Tones.syllables(1, LOUD));
        for (int bit : new int[] {100, 386, 512, 1_600}) {
            NoiseReduction reduction = new NoiseReduction(12);
            Sound changed = reduction.accept(tone.slice(0, 0));
            for (int at = 0; at < tone.length(); at += bit) {
                changed = changed.join(reduction.accept(tone.slice(at, Math.min(tone.length(), at + bit))));
            }
            changed = changed.join(reduction.finish());

            assertThat(changed.length()).isEqualTo(tone.length());
            assertThat(error(tone, changed)).as("bits of %d", bit).isLessThan(-20);
        }
    }

    @Test
    void what_the_place_sounds_like_is_known_when_speech_begins() {
        Sound place = noisy.slice(0, SECOND / 2);
        Sound next = noisy.slice(SECOND / 2, SECOND / 2 + 1_600);
        NoiseReduction reduction = new NoiseReduction(12);
        reduction.hush(place);

        Sound first = reduction.accept(next);

        assertThat(20 * Math.log10(first.rms() / next.rms())).isLessThan(-4);
    }

    @Test
    void one_utterance_leaves_nothing_to_the_next() {
        NoiseReduction reduction = new NoiseReduction(12);
        reduction.accept(Tones.sound(Tones.syllables(1, 1)));
        reduction.finish();

        Sound again = reduction.changed(noisy);

        assertThat(again.startSample()).isEqualTo(noisy.startSample());
        assertThat(again.length()).isEqualTo(noisy.length());
    }

    /** What noise reduction changed, against the sound, in dB. */
    private static double error(Sound tone) {
        return error(tone, new NoiseReduction(12).changed(tone));
    }

    private static double error(Sound tone, Sound changed) {
        short[] before = tone.copySamples();
        short[] after = changed.copySamples();

        double difference = 0;
        double all = 0;
        for (int i = 0; i < before.length; i++) {
            difference += Math.pow(before[i] - after[i], 2);
            all += Math.pow(before[i], 2);
        }
        return 10 * Math.log10(difference / all);
    }

    @Test
    void silence_and_what_is_shorter_than_a_frame_stay_as_they_are() {
        Sound silence = Sound.of(new short[SECOND], 0);
        Sound click = Sound.of(new short[] {100, -100}, 0);

        assertThat(new NoiseReduction(12).changed(silence)).isEqualTo(silence);
        assertThat(new NoiseReduction(12).changed(click)).isEqualTo(click);
    }

    @Test
    void noise_is_never_turned_up() {
        assertThatIllegalArgumentException().isThrownBy(() -> new NoiseReduction(0));
    }

    private static Sound noisy() {
        double[] samples = Tones.noise(2, QUIET, new Random(1));
        Tones.mix(samples, Tones.tone(1_000, LOUD, Sound.RATE, SECOND / 2), 0.75);
        return Sound.of(Tones.sound(samples).copySamples(), 800);
    }

    private static double decibels(Sound sound, double from, double to) {
        return 20
                * Math.log10(
                        sound.slice((int) (from * SECOND), (int) (to * SECOND)).rms());
    }
}
