package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.audio.SoundCondition;
import strawbed.audio.WavFile;
import strawbed.testkit.SharedSpeech;

/**
 * How often the sound of real people's recordings is judged wrongly. The limits of level and clipping were set on these
 * recordings and the way to tell speech in noise was mended on them; the limit of noise was not set on them.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PeoplesSoundsIT {
    private static final List<Sound> ALL = new ArrayList<>();

    private final NoiseGrid grid = new NoiseGrid(new Material(Path.of("none")), new Babble(List.of()), List.of());

    @BeforeAll
    static void read() {
        ALL.clear();
        SharedSpeech.files("human-other").forEach(file -> ALL.add(WavFile.read(file)));
        SharedSpeech.files("human-digits").forEach(file -> ALL.add(WavFile.read(file)));
        assertThat(ALL).hasSize(374);
    }

    private Map<SoundCondition, Integer> judged(NoiseGrid.Cell cell, UnaryOperator<Sound> change) {
        Map<SoundCondition, Integer> counts = new TreeMap<>();
        for (int i = 0; i < ALL.size(); i++) {
            Sound sound = Cut.longest(grid.in(cell, change.apply(ALL.get(i)), "recording " + i));
            counts.merge(SoundCondition.of(sound), 1, Integer::sum);
        }
        return counts;
    }

    private Map<SoundCondition, Integer> inPinkNoise(double decibels) {
        return judged(new NoiseGrid.Cell(Noise.PINK, false, decibels), sound -> sound);
    }

    @Test
    void as_they_are_all_are_good() {
        assertThat(judged(NoiseGrid.Cell.QUIET, sound -> sound)).isEqualTo(Map.of(SoundCondition.GOOD, 374));
    }

    @Test
    void forty_decibels_down_all_are_too_quiet() {
        assertThat(judged(NoiseGrid.Cell.QUIET, sound -> Mix.louder(sound, -40)))
                .isEqualTo(Map.of(SoundCondition.TOO_QUIET, 374));
    }

    @Test
    void at_full_scale_all_are_good_and_twenty_decibels_over_it_all_are_too_loud() {
        assertThat(judged(NoiseGrid.Cell.QUIET, sound -> Mix.driven(sound, 0)))
                .isEqualTo(Map.of(SoundCondition.GOOD, 374));
        assertThat(judged(NoiseGrid.Cell.QUIET, sound -> Mix.driven(sound, 20)))
                .isEqualTo(Map.of(SoundCondition.TOO_LOUD, 374));
    }

    @Test
    void in_pink_noise_at_three_and_ten_decibels_all_are_too_noisy_and_at_twenty_all_are_good() {
        assertThat(inPinkNoise(3)).isEqualTo(Map.of(SoundCondition.TOO_NOISY, 374));
        assertThat(inPinkNoise(10)).isEqualTo(Map.of(SoundCondition.TOO_NOISY, 374));
        assertThat(inPinkNoise(20)).isEqualTo(Map.of(SoundCondition.GOOD, 374));
    }
}
