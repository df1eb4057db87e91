package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.testkit.SharedSpeech;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EndpointerIT {
    private static List<Sound> utterances(Path file) {
        Endpointer endpointer = new Endpointer();
        List<Sound> utterances = new ArrayList<>();
        try (WavSource source = WavSource.open(file)) {
            for (Optional<Sound> block = source.read(); block.isPresent(); block = source.read()) {
                endpointer.accept(block.get()).ifPresent(utterances::add);
            }
        }
        endpointer.finish().ifPresent(utterances::add);
        return utterances;
    }

    @Test
    void three_groups_of_digits_with_pauses_are_three_utterances() {
        assertThat(utterances(SharedSpeech.file("human-digits-sequence.wav"))).hasSize(3);
    }

    @Test
    void each_tightly_cut_digit_is_one_utterance() {
        for (Path file : SharedSpeech.files("human-digits")) {
            assertThat(utterances(file)).as(file.toString()).hasSize(1);
        }
    }

    @Test
    void nearly_all_the_energy_of_each_human_recording_lies_in_its_utterances() {
        for (Path file : SharedSpeech.files("human-other")) {
            List<Sound> utterances = utterances(file);
            double kept = utterances.stream().mapToDouble(EndpointerIT::energy).sum();
            assertThat(utterances).as(file.toString()).isNotEmpty();
            assertThat(kept / energy(WavFile.read(file))).as(file.toString()).isGreaterThan(0.99);
        }
    }

    private static double energy(Sound sound) {
        double mean = 0;
        for (short sample : sound.copySamples()) {
            mean += sample;
        }
        mean /= sound.length();
        double sum = 0;
        for (short sample : sound.copySamples()) {
            sum += (sample - mean) * (sample - mean);
        }
        return sum;
    }
}
