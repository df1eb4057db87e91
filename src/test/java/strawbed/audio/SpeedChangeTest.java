package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.testkit.Tones;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpeedChangeTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.93, 1, 1.07})
    void a_tone_becomes_a_tone_of_another_pitch_and_length(double speed) {
        Sound tone = Tones.sound(Tones.tone(500, 0.5, Sound.RATE, Sound.RATE));
        Sound expected = Tones.sound(Tones.tone(500 * speed, 0.5, Sound.RATE, (int) (Sound.RATE / speed)));

        Sound changed = new SpeedChange(speed).changed(tone);

        assertThat(changed.length()).isEqualTo(expected.length());
        short[] is = changed.copySamples();
        short[] should = expected.copySamples();
        for (int i = 10; i < is.length - 10; i++) {
            assertThat((int) is[i]).as("sample %d", i).isBetween(should[i] - 60, should[i] + 60);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.93, 1, 1.07})
    void bits_give_the_same_as_the_whole(double speed) {
        Sound spoken = Sound.of(Tones.sound(Tones.syllables(1, 0.3)).copySamples(), 777);
        Sound whole = new SpeedChange(speed).changed(spoken);
        for (int bit : new int[] {1, 3, 320, 1_600}) {
            SpeedChange change = new SpeedChange(speed);
            Sound changed = change.accept(spoken.slice(0, 0));
            for (int at = 0; at < spoken.length(); at += bit) {
                changed = changed.join(change.accept(spoken.slice(at, Math.min(spoken.length(), at + bit))));
            }
            changed = changed.join(change.finish());
            assertThat(changed).as("bits of %d samples", bit).isEqualTo(whole);
            assertThat(change.changed(spoken)).as("the next stream").isEqualTo(whole);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 2, Double.NaN})
    void no_other_speed_is_taken(double speed) {
        assertThatIllegalArgumentException().isThrownBy(() -> new SpeedChange(speed));
    }
}
