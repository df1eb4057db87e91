package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.audio.AudioException;
import strawbed.audio.Sound;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundFolderTest {
    @TempDir
    Path data;

    private SoundFolder sounds() {
        return new SoundFolder(data, UUID::randomUUID);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                ".",
                "..",
                "../one.wav",
                "more/one.wav",
                "more\\one.wav",
                "/one.wav",
                "C:one.wav",
                "o\u0000.wav"
            })
    void a_name_that_leads_elsewhere_is_no_sound_of_ours(String name) throws IOException {
        SoundFolder sounds = sounds();
        assertThatThrownBy(() -> sounds.file(name))
                .isInstanceOf(AudioException.class)
                .hasMessageContaining("not the plain name of a file");
        assertThatThrownBy(() -> sounds.write(name, Sound.of(new short[10], 0))).isInstanceOf(AudioException.class);
        try (Stream<Path> left = Files.walk(data)) {
            assertThat(left).containsExactly(data);
        }
    }

    @Test
    void its_own_names_and_those_of_people_are_in_the_folder() {
        SoundFolder sounds = sounds();
        for (String name :
                new String[] {sounds.newName(), "0001.wav", "calf 12, first feed.wav", "\u017c\u00f3\u0142w"}) {
            sounds.write(name, Sound.of(new short[10], 0));
            assertThat(data.resolve("sounds").resolve(name)).isRegularFile().isEqualTo(sounds.file(name));
        }
    }
}
