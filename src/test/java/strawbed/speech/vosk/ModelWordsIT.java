package strawbed.speech.vosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.speech.SpeechModel;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ModelWordsIT {
    private static final Path MODEL = Path.of(Objects.requireNonNull(System.getProperty("strawbed.model")));

    @TempDir
    Path folder;

    @Test
    void every_word_of_the_list_is_known_to_the_model_itself() {
        List<String> words = ModelWords.of(MODEL);
        assertThat(words).hasSizeGreaterThan(100_000).doesNotHaveDuplicates();
        try (SpeechModel model = VoskModel.load(MODEL)) {
            assertThat(words.stream().filter(word -> !word.startsWith("<") && !word.startsWith("#")))
                    .allMatch(model::knows);
        }
    }

    /** Source: Zipf's law at work, any word count of English begins with these; from memory. */
    @Test
    void the_most_common_words_of_english_come_first() {
        List<String> words = ModelWords.of(MODEL);
        assertThat(words.subList(0, 20)).contains("the", "and", "to", "of", "a", "in", "that", "it", "is");
        assertThat(words.indexOf("calf")).isLessThan(words.indexOf("ostrom"));
    }

    @Test
    void another_kind_of_file_is_refused_with_a_remedy() throws IOException {
        Files.createDirectory(folder.resolve("graph"));
        for (byte[] bytes : List.of(
                new byte[0], new byte[100], "not a machine at all, but long enough".getBytes(StandardCharsets.UTF_8))) {
            Files.write(folder.resolve("graph").resolve("Gr.fst"), bytes);
            assertThatThrownBy(() -> ModelWords.of(folder))
                    .isInstanceOf(ModelException.class)
                    .hasMessageContaining("cannot be listed");
        }
        assertThatThrownBy(() -> ModelWords.of(folder.resolve("none"))).isInstanceOf(ModelException.class);
    }
}
