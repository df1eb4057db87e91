package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A farm's own files of the grammar, for tests. */
final class FarmGrammarFiles {
    private final Path folder;

    FarmGrammarFiles(Path data) {
        this.folder = data.resolve("grammar");
    }

    /** Puts a copy of the program's file into the farm's folder, with one edit. */
    void edit(String file, String before, String after) throws IOException {
        Files.createDirectories(folder);
        String text = Files.readString(Path.of("grammar", file));
        assertThat(text).contains(before);
        Files.writeString(folder.resolve(file), text.replace(before, after));
    }

    /** Names places in the farm's one file for names. */
    void places(String places) throws IOException {
        edit("farm.abnf", "$place_name = $VOID", "$place_name = " + places);
    }
}
