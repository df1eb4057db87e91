package strawbed.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LabelsTest {
    @TempDir
    Path folder;

    private Path csv(String... lines) throws IOException {
        Files.createDirectories(folder.resolve("said"));
        Files.writeString(folder.resolve("said").resolve("a.wav"), "");
        return Files.write(folder.resolve("labels.csv"), Arrays.asList(lines));
    }

    private static Labelled.Utterance understood(String words, String... tags) {
        return new Labelled.Utterance("understood", List.of(words.split(" ")), List.of(tags));
    }

    private static Label words(String words) {
        return new Label(Path.of("a.wav"), words.isEmpty() ? List.of() : List.of(words.split(" ")), Optional.empty());
    }

    @Test
    void labels_are_read_with_and_without_tags() throws IOException {
        assertThat(Label.read(csv("file,words", "said/a.wav,turn  the lamp on")))
                .singleElement()
                .satisfies(label -> {
                    assertThat(label.file()).isEqualTo(folder.resolve("said").resolve("a.wav"));
                    assertThat(label.words()).containsExactly("turn", "the", "lamp", "on");
                    assertThat(label.tags()).isEmpty();
                });
        assertThat(Label.read(csv("tags,file,words", "red; 1,said/a.wav,\"turn the lamp on\"")))
                .singleElement()
                .satisfies(label -> assertThat(label.tags()).contains(List.of("red", "1")));
    }

    @Test
    void labels_that_cannot_be_used_are_told_with_their_row() throws IOException {
        Path missing = csv("file,words", "said/a.wav,one", "said/b.wav,two");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Label.read(missing))
                .withMessageContaining("row 2: there is no file");
        Path headless = csv("said/a.wav,one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Label.read(headless))
                .withMessageContaining("Give the columns file and words");
        Path empty = csv("file,words");
        assertThatIllegalArgumentException().isThrownBy(() -> Label.read(empty)).withMessageContaining("no recording");
        Path shortRow = csv("file,words", "said/a.wav");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Label.read(shortRow))
                .withMessageContaining("row 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Label.read(folder.resolve("none.csv")))
                .withMessageContaining("cannot be read");
    }

    @Test
    void without_either_property_there_is_no_part_and_with_one_alone_it_is_told() {
        assertThat(Labels.given("", "")).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Labels.given("lamp.abnf", ""))
                .withMessageContaining("Give both");
    }

    @Test
    void the_same_words_are_right_and_others_wrong_with_those_counted_that_were_heard() {
        assertThat(Labelled.of(words("turn lamp on"), List.of(understood("turn lamp on"))))
                .isEqualTo(new Labelled(Outcome.RIGHT, 3, 3));
        assertThat(Labelled.of(words("turn lamp on"), List.of(understood("turn lamp off"))))
                .isEqualTo(new Labelled(Outcome.WRONG, 3, 2));
        assertThat(Labelled.of(words("turn lamp on"), List.of(understood("on turn"))))
                .as("out of order only one of them counts")
                .isEqualTo(new Labelled(Outcome.WRONG, 3, 1));
    }

    @Test
    void where_tags_are_given_they_decide() {
        Label label = new Label(Path.of("a.wav"), List.of("big", "red", "lamp"), Optional.of(List.of("red")));
        assertThat(Labelled.of(label, List.of(understood("red lamp", "red"))))
                .isEqualTo(new Labelled(Outcome.RIGHT, 1, 1));
        assertThat(Labelled.of(label, List.of(understood("big red lamp", "green"))))
                .isEqualTo(new Labelled(Outcome.WRONG, 1, 0));
    }

    @Test
    void what_is_not_understood_is_no_mistake_and_is_right_where_nothing_was_said() {
        List<Labelled.Utterance> noise = List.of(new Labelled.Utterance("nomatch", List.of("one"), List.of()));
        assertThat(Labelled.of(words("one"), noise)).isEqualTo(new Labelled(Outcome.NOT_UNDERSTOOD, 1, 0));
        assertThat(Labelled.of(words("one"), List.of())).isEqualTo(new Labelled(Outcome.NOT_UNDERSTOOD, 1, 0));
        assertThat(Labelled.of(words(""), noise)).isEqualTo(new Labelled(Outcome.RIGHT, 0, 0));
        assertThat(Labelled.of(words(""), List.of(understood("one")))).isEqualTo(new Labelled(Outcome.WRONG, 0, 0));
    }

    @Test
    void one_sentence_that_was_heard_as_two_is_wrong() {
        assertThat(Labelled.of(words("one two"), List.of(understood("one"), understood("two"))))
                .isEqualTo(new Labelled(Outcome.WRONG, 2, 2));
    }
}
