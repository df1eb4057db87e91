package strawbed.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.testkit.Tones;

/** Three seconds that begin ten seconds into their source: a tone from 0.5 to 1.5 s and another from 2 to 2.6 s. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EnvelopeTest {
    private static final double START = 10;
    private final Envelope envelope = Envelope.of(sound(0.001));

    @Test
    void words_that_account_for_all_sound_leave_nothing_out() {
        assertThat(envelope.longestWithout(List.of(word(0.5, 1.5), word(2, 2.6))))
                .isZero();
    }

    @Test
    void a_word_that_was_not_taken_is_left_out() {
        assertThat(envelope.longestWithout(List.of(word(0.5, 1.5))))
                .isCloseTo(Duration.ofMillis(600), Duration.ofMillis(20));
    }

    @Test
    void the_middle_that_no_word_covers_is_left_out() {
        assertThat(envelope.longestWithout(List.of(word(0.5, 0.7), word(1.2, 1.5), word(2, 2.6))))
                .as("half a second, less what lies close beside words")
                .isCloseTo(Duration.ofMillis(420), Duration.ofMillis(20));
    }

    @Test
    void what_is_quieter_than_the_words_does_not_count() {
        assertThat(envelope.longestWithout(List.of(word(0.5, 1.5), word(2, 2.6))))
                .isZero();
        assertThat(Envelope.of(sound(0.05)).longestWithout(List.of(word(0.5, 1.5), word(2, 2.6))))
                .as("noise 9 dB below the words' level is as loud as soft sounds of speech")
                .isGreaterThan(Duration.ofMillis(300));
    }

    @Test
    void no_words_leave_nothing_to_compare_with() {
        assertThat(envelope.longestWithout(List.of())).isZero();
    }

    @Test
    void clearness_is_how_far_speech_stands_out_of_the_noise() {
        assertThat(Envelope.of(sound(0.01)).clearness())
                .isCloseTo(20 * Math.log10(0.2 / Math.sqrt(2) / 0.01), within(2.0));
        assertThat(Envelope.of(Sound.of(new short[0], 0)).clearness()).isZero();
    }

    private static Sound sound(double noise) {
        double[] samples = Tones.noise(3, noise, new Random(1));
        Tones.mix(samples, Tones.tone(400, 0.2, Sound.RATE, Sound.RATE), 0.5);
        Tones.mix(samples, Tones.tone(400, 0.2, Sound.RATE, Sound.RATE * 6 / 10), 2);
        return Sound.of(Tones.sound(samples).copySamples(), (long) (START * Sound.RATE));
    }

    private static RecognizedWord word(double from, double to) {
        return new RecognizedWord("word", Duration.ofMillis((long) (1000 * (START + from))), Duration.ofMillis((long)
                (1000 * (START + to))));
    }
}
