package strawbed.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/**
 * Recordings of real people that lie beside the project and not in it. Digits: Free Spoken Digit Dataset, CC BY-SA 4.0.
 * Sequence: Vosk API examples, Apache-2.0. Others: Speech-to-Intent Benchmark, Apache-2.0.
 */
public final class SharedSpeech {
    private static final Path FOLDER = Path.of("..", "shared", "speech");

    private SharedSpeech() {}

    /** A recording; leaves the test out when there are none here. */
    public static Path file(String name) {
        Path file = FOLDER.resolve(name);
        Assumptions.assumeTrue(
                Files.exists(file), "Left out: needs recordings of real people, and there is no " + file);
        return file;
    }

    /** All recordings of a folder, in the order of their names. */
    public static List<Path> files(String folder) {
        try (Stream<Path> files = Files.list(file(folder))) {
            return files.filter(file -> file.toString().endsWith(".wav"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
