package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.testkit.Tones;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EndpointerTest {
    private final Endpointer endpointer = new Endpointer();

    private List<Sound> utterances(double[] samples) {
        return utterances(Tones.sound(samples), 320);
    }

    private List<Sound> utterances(Sound sound, int block) {
        List<Sound> utterances = new ArrayList<>();
        for (int at = 0; at < sound.length(); at += block) {
            endpointer
                    .accept(sound.slice(at, Math.min(at + block, sound.length())))
                    .ifPresent(utterances::add);
        }
        endpointer.finish().ifPresent(utterances::add);
        return utterances;
    }

    /** Two groups of syllables, from 2 to 3 s and from 5 to 6.5 s, in 8 s of noise. */
    private static double[] twoGroups(double speech, double noise) {
        double[] samples = Tones.noise(8, noise, new Random(3));
        Tones.mix(samples, Tones.syllables(1, speech), 2);
        Tones.mix(samples, Tones.syllables(1.5, speech), 5);
        return samples;
    }

    private static void assertTwoGroups(List<Sound> utterances) {
        assertThat(utterances).hasSize(2);
        assertCovers(utterances.get(0), 2.03, 2.97);
        assertCovers(utterances.get(1), 5.03, 6.47);
    }

    private static void assertCovers(Sound utterance, double from, double to) {
        double start = (double) utterance.startSample() / Sound.RATE;
        double end = start + (double) utterance.length() / Sound.RATE;
        assertThat(start).isBetween(from - 0.45, from);
        assertThat(end).isBetween(to, to + 0.4);
    }

    @ParameterizedTest
    @CsvSource({"0.9,0.03", "0.5,0.001", "0.1,0.005", "0.01,0.0001", "0.01,0.0005", "0.9,0.00002", "1.5,0.01"})
    void two_groups_of_syllables_in_noise_are_two_utterances(double speech, double noise) {
        assertTwoGroups(utterances(twoGroups(speech, noise)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 100, 319, 321, 1000, 4000})
    void the_size_of_the_blocks_does_not_matter(int block) {
        assertTwoGroups(utterances(Tones.sound(twoGroups(0.3, 0.003)), block));
    }

    @Test
    void an_offset_does_not_matter() {
        double[] samples = twoGroups(0.1, 0.002);
        assertTwoGroups(utterances(Arrays.stream(samples).map(x -> x + 0.25).toArray()));
    }

    @Test
    void an_utterance_holds_the_samples_of_its_place_in_the_source() {
        Sound sound = Tones.sound(twoGroups(0.3, 0.003));
        for (Sound utterance : utterances(sound, 320)) {
            int at = (int) utterance.startSample();
            assertThat(utterance).isEqualTo(sound.slice(at, at + utterance.length()));
        }
    }

    @Test
    void a_word_cut_off_at_both_ends_is_one_utterance_with_and_without_silence_around() {
        double[] word = Tones.syllables(0.3, 0.3);
        assertThat(utterances(word)).containsExactly(Tones.sound(word));
        double[] padded = new double[Sound.RATE];
        Tones.mix(padded, word, 0.3);
        assertThat(utterances(padded)).hasSize(1);
        double[] atStart = new double[Sound.RATE];
        Tones.mix(atStart, word, 0);
        assertThat(utterances(atStart)).hasSize(1);
    }

    @Test
    void silence_noise_and_hum_give_nothing() {
        assertThat(utterances(new double[5 * Sound.RATE])).isEmpty();
        assertThat(utterances(Tones.noise(10, 0.05, new Random(4)))).isEmpty();
        assertThat(utterances(Tones.noise(10, 0.0001, new Random(5)))).isEmpty();
        assertThat(utterances(Tones.tone(120, 0.3, Sound.RATE, 10 * Sound.RATE)))
                .isEmpty();
    }

    @Test
    void a_fan_that_starts_is_learned_and_speech_over_it_is_heard() {
        double[] samples = Tones.noise(20, 0.001, new Random(6));
        Tones.mix(samples, Tones.noise(15, 0.02, new Random(7)), 5);
        Tones.mix(samples, Tones.syllables(1, 0.5), 15);
        List<Sound> utterances = utterances(samples);
        assertThat(utterances).hasSize(1);
        assertCovers(utterances.get(0), 15.05, 15.95);
    }

    @Test
    void a_click_is_dropped() {
        double[] samples = Tones.noise(5, 0.002, new Random(8));
        Tones.mix(samples, Tones.tone(800, 0.8, Sound.RATE, Sound.RATE * 7 / 100), 3);
        assertThat(utterances(samples)).isEmpty();
    }

    @Test
    void speech_without_a_pause_is_cut_after_fifteen_seconds_and_nothing_is_lost() {
        double[] samples = Tones.noise(24, 0.001, new Random(9));
        Tones.mix(samples, Tones.syllables(20, 0.3), 2);
        List<Sound> utterances = utterances(samples);
        assertThat(utterances).hasSize(2);
        assertThat(utterances.get(0).duration()).isEqualTo(Duration.ofSeconds(15));
        assertThat(utterances.get(1).startSample()).isEqualTo(utterances.get(0).startSample() + 15 * Sound.RATE);
        assertCovers(utterances.get(1), utterances.get(1).startSample() / 16_000.0, 21.95);
    }

    @Test
    void a_hole_in_the_sound_is_silence_and_a_long_one_ends_the_utterance() {
        Sound sound = Tones.sound(Tones.syllables(1, 0.3));
        List<Sound> ended = new ArrayList<>();
        for (long start : new long[] {0, 18_000, 1_000_000}) {
            for (int at = 0; at < sound.length(); at += 320) {
                Sound block = Sound.of(sound.slice(at, at + 320).copySamples(), start + at);
                endpointer.accept(block).ifPresent(ended::add);
            }
        }
        endpointer.finish().ifPresent(ended::add);
        assertThat(ended).hasSize(2);
        assertCovers(ended.get(0), 0.45, 2.1);
        assertThat(ended.get(1).startSample()).isEqualTo(1_000_000);
    }

    @Test
    void it_tells_when_speech_goes_on() {
        double[] samples = Tones.noise(4, 0.001, new Random(10));
        Tones.mix(samples, Tones.syllables(1, 0.3), 2.5);
        Sound sound = Tones.sound(samples);
        List<Integer> speaking = new ArrayList<>();
        for (int block = 0; block < 200; block++) {
            endpointer.accept(sound.slice(block * 320, block * 320 + 320));
            if (endpointer.isSpeaking() && block > 75) {
                speaking.add(block);
            }
        }
        assertThat(speaking.get(0)).isBetween(126, 131);
        assertThat(speaking.get(speaking.size() - 1)).isBetween(185, 192);
    }

    @Test
    void blocks_out_of_order_or_too_long_are_refused() {
        endpointer.accept(Sound.of(new short[320], 320));
        assertThatIllegalArgumentException().isThrownBy(() -> endpointer.accept(Sound.of(new short[320], 0)));
        assertThatIllegalArgumentException().isThrownBy(() -> endpointer.accept(Sound.of(new short[4001], 640)));
    }
}
