package strawbed.voice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Properties;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FreeTtsVoiceIT {
    @Test
    void a_sentence_is_spoken_loud_and_in_human_time() {
        Sound sound = new FreeTtsVoice().speak("calf twelve, heifer, navel dipped");
        assertThat(sound.startSample()).isZero();
        assertThat(sound.duration()).isBetween(Duration.ofSeconds(1), Duration.ofSeconds(5));
        assertThat(sound.rms()).isGreaterThan(500);
    }

    @Test
    void the_same_text_sounds_the_same_again_and_another_one_does_not() {
        Voice voice = new FreeTtsVoice();
        Sound twelve = voice.speak("twelve");
        assertThat(voice.speak("nine hundred")).isNotEqualTo(twelve);
        assertThat(voice.speak("twelve").length()).isEqualTo(twelve.length());
    }

    @Test
    void several_sentences_are_all_spoken() {
        Voice voice = new FreeTtsVoice();
        Sound one = voice.speak("Calf twelve.");
        Sound two = voice.speak("Calf twelve. Two quarts of milk. Is that right?");
        assertThat(two.length()).isGreaterThan(2 * one.length());
    }

    @Test
    void no_text_is_no_sound() {
        assertThat(new FreeTtsVoice().speak(" ").length()).isZero();
        assertThat(new FreeTtsVoice().speak("").length()).isZero();
    }

    @Test
    void it_leaves_no_settings_and_no_thread_behind_that_keeps_the_program_alive() {
        Properties before = (Properties) System.getProperties().clone();
        Set<Thread> threads = Thread.getAllStackTraces().keySet();
        new FreeTtsVoice().speak("twelve");
        assertThat(System.getProperties()).isEqualTo(before);
        assertThat(Thread.getAllStackTraces().keySet().stream()
                        .filter(thread -> !threads.contains(thread) && !thread.isDaemon()))
                .isEmpty();
    }
}
