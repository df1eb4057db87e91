package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A grammar that has nothing to do with calves, and recordings with labels, as a CSV names them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LabelsIT {
    @TempDir
    Path folder;

    private void said(Material material, String name, String words) throws IOException {
        Files.copy(material.word(words), folder.resolve(name));
    }

    @Test
    void right_wrong_and_unheard_recordings_are_each_counted() throws IOException {
        Files.writeString(folder.resolve("lamp.abnf"), """
                #ABNF 1.0 UTF-8;
                language en-US;
                root $command;
                tag-format <semantics/1.0-literals>;
                public $command = turn the $lamp $state;
                $lamp = (red | big red) lamp {red} | green lamp {green};
                $state = on {1} | off {0};
                """);
        Material material = new Material(folder.resolve("material"));
        said(material, "right.wav", "turn the green lamp off");
        said(material, "mislabelled.wav", "turn the red lamp on");
        said(material, "other.wav", "did you see where I put the keys of the tractor");
        Files.writeString(folder.resolve("labels.csv"), """
                file,words,tags
                right.wav,turn the green lamp off,green;0
                mislabelled.wav,turn the red lamp off,red;0
                other.wav,turn the red lamp off,red;0
                """);
        Labels labels = Labels.given(
                        folder.resolve("lamp.abnf").toString(),
                        folder.resolve("labels.csv").toString())
                .orElseThrow();

        assertThat(labels.heard())
                .isEqualTo(List.of(
                        new Labelled(Outcome.RIGHT, 2, 2),
                        new Labelled(Outcome.WRONG, 2, 1),
                        new Labelled(Outcome.NOT_UNDERSTOOD, 2, 0)));
        Report report = new Report(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        labels.report(report);
        assertThat(report.text())
                .contains("| 3 | 33.3% (6.1-79.2) | 33.3% (6.1-79.2) | 33.3% (6.1-79.2) | 50.0% (18.8-81.2) |");
    }
}
