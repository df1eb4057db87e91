package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GrammarSourceIT {

    @TempDir
    Path directory;

    @Test
    void a_directory_and_a_class_path_give_the_same_text() throws IOException {
        Files.createDirectory(directory.resolve("grammar"));
        Files.writeString(directory.resolve("grammar/a.abnf"), "#ABNF 1.0; language sv; root $s; $s = å;");
        GrammarSource files = GrammarSource.directory(directory.resolve("grammar"));
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {directory.toUri().toURL()}, null)) {
            assertThat(GrammarSource.resources(loader, "grammar/").text("a.abnf"))
                    .isEqualTo(files.text("a.abnf"))
                    .endsWith("å;");
        }
        assertThat(GrammarReader.read(files, "a.abnf").tokens()).containsExactly("å");
    }

    @Test
    void a_file_that_is_missing_or_outside_is_named() {
        GrammarSource files = GrammarSource.directory(directory);
        assertThatThrownBy(() -> files.text("none.abnf"))
                .isInstanceOf(GrammarException.class)
                .hasMessageStartingWith("none.abnf: there is no such file");
        assertThatThrownBy(() -> files.text("../none.abnf"))
                .isInstanceOf(GrammarException.class)
                .hasMessageContaining("leaves the directory");
        assertThatThrownBy(
                        () -> GrammarSource.resources(GrammarSourceIT.class, "").text("none.abnf"))
                .isInstanceOf(GrammarException.class)
                .hasMessageContaining("there is no such file");
    }

    @Test
    void a_byte_that_is_not_utf_8_is_pointed_at() throws IOException {
        Files.write(directory.resolve("a.abnf"), "#ABNF 1.0;\n$s = caf\u00E9;".getBytes(StandardCharsets.ISO_8859_1));
        GrammarException mistake = catchThrowableOfType(
                GrammarException.class, () -> GrammarSource.directory(directory).text("a.abnf"));
        assertThat(mistake).hasMessageStartingWith("a.abnf, line 2, column 9: the byte E9 here is not UTF-8");
    }

    @Test
    void one_file_can_be_replaced_by_text() throws IOException {
        Files.writeString(directory.resolve("a.abnf"), "#ABNF 1.0; language en; root $s; $s = calf $<calves.abnf#n>;");
        Files.writeString(directory.resolve("calves.abnf"), "#ABNF 1.0; language en; public $n = one;");
        GrammarSource source =
                GrammarSource.directory(directory).with("calves.abnf", "#ABNF 1.0; language en; public $n = two;");
        assertThat(GrammarReader.read(source, "a.abnf").tokens()).containsExactly("calf", "two");
    }
}
