package strawbed.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LexiconTest {
    private static final Lexicon LEXICON = Lexicon.parse("stand-ins.txt", """
            # What the model lacks.

            colostrum = cole ostrom   # first milk
            replacer=replace er
            cola = cole
            """);

    /** The words, each half a second long, one after another. */
    private static List<RecognizedWord> heard(List<String> words) {
        return IntStream.range(0, words.size())
                .mapToObj(i -> new RecognizedWord(
                        words.get(i), Duration.ofMillis(500L * i), Duration.ofMillis(500L * i + 500)))
                .toList();
    }

    private static List<String> written(List<String> words) {
        return LEXICON.toWritten(heard(words)).stream()
                .map(RecognizedWord::text)
                .toList();
    }

    @Test
    void stand_ins_replace_words_on_the_way_to_the_recogniser() {
        assertThat(LEXICON.toSpoken(List.of("fed", "colostrum", "and", "replacer")))
                .containsExactly("fed", "cole", "ostrom", "and", "replace", "er");
        assertThat(LEXICON.standIn("colostrum")).contains("cole ostrom");
        assertThat(LEXICON.standIn("milk")).isEmpty();
        assertThat(Lexicon.empty().toSpoken(List.of("milk"))).containsExactly("milk");
    }

    @Test
    void words_come_back_by_the_longest_stand_in_and_their_times_are_merged() {
        assertThat(LEXICON.toWritten(heard(List.of("fed", "cole", "ostrom", "cole"))))
                .containsExactly(
                        new RecognizedWord("fed", Duration.ZERO, Duration.ofMillis(500)),
                        new RecognizedWord("colostrum", Duration.ofMillis(500), Duration.ofMillis(1500)),
                        new RecognizedWord("cola", Duration.ofMillis(1500), Duration.ofMillis(2000)));
    }

    @Test
    void a_part_of_a_stand_in_alone_stays_what_it_is() {
        assertThat(written(List.of("ostrom", "er", "replace", "[unk]")))
                .containsExactly("ostrom", "er", "replace", "[unk]");
    }

    @Test
    void any_sentence_comes_back_as_it_was_written() {
        List<String> words = List.of("colostrum", "replacer", "cola", "milk", "fed");
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<String> sentence = new ArrayList<>();
            for (int i = random.nextInt(8); i >= 0; i--) {
                sentence.add(words.get(random.nextInt(words.size())));
            }
            assertThat(written(LEXICON.toSpoken(sentence))).as("seed %d", seed).isEqualTo(sentence);
        }
    }

    @Test
    void a_reading_keeps_its_score() {
        Hypothesis hypothesis = LEXICON.toWritten(new Hypothesis(heard(List.of("cole", "ostrom")), 7));
        assertThat(hypothesis.texts()).containsExactly("colostrum");
        assertThat(hypothesis.score()).isEqualTo(7);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "colostrum cole ostrom | line 2: \"colostrum cole ostrom\" is not of the form",
                "a = b = c | is not of the form",
                "Colostrum = cole | \"Colostrum\" is not a word",
                "colostrum = cole 2 | \"2\" is not a word",
                "colostrum = | \"\" is not a word",
                "milk = melk | \"milk\" has a stand-in already",
                "melk = mill k | \"mill k\" stands for \"milk\" already",
                "mill = mile | \"mill\" is part of a stand-in and has one itself"
            })
    void a_faulty_line_is_named(String line, String words) {
        assertThatThrownBy(() -> Lexicon.parse("stand-ins.txt", "milk = mill k\n" + line + "\n"))
                .isInstanceOf(LexiconException.class)
                .hasMessageStartingWith("stand-ins.txt")
                .hasMessageContaining(words);
    }
}
