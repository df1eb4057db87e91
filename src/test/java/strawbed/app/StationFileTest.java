package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.station.Choices;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationFileTest {
    @TempDir
    Path data;

    private StationFile read(String text) throws IOException {
        Files.writeString(data.resolve("station.properties"), text);
        return StationFile.in(data);
    }

    @Test
    void without_a_file_nothing_is_removed_and_nothing_copied() {
        assertThat(StationFile.in(data))
                .isEqualTo(new StationFile(
                        "", Optional.empty(), 14, Optional.empty(), Optional.empty(), Map.of(), Choices.USUAL));
    }

    @Test
    void every_line_is_read() throws IOException {
        assertThat(read("# ours\nfarm.name = Larkspur Hollow\nbackup.folder = " + data
                        + "\nbackups.kept=30\nsounds.kept-days = 90\n" + "sounds.kept-megabytes = 2000\n"))
                .isEqualTo(new StationFile(
                        "Larkspur Hollow",
                        Optional.of(data),
                        30,
                        Optional.of(90),
                        Optional.of(2000),
                        Map.of(),
                        Choices.USUAL));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "backup.folder = stick|write the whole path",
                "farm.name = a name that goes on and on and on and on and on and on and on|write at most 60 letters",
                "backups.kept = 0|write a number from 1",
                "backups.kept = many|write a whole number",
                "sounds.kept-days = -3|write a number from 1",
                "sounds.kept-weeks = 3|has the line \"sounds.kept-weeks\", which means nothing",
                "backup.folder = \\u00zz|cannot be read"
            })
    void a_line_that_means_nothing_is_named(String line, String part) {
        assertThatThrownBy(() -> read(line))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("station.properties")
                .hasMessageContaining(part)
                .hasMessageEndingWith(".");
    }
}
