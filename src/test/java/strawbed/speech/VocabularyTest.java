package strawbed.speech;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class VocabularyTest {
    /** A model that knows a few words and recognises nothing. */
    private record Words(Set<String> known) implements SpeechModel {
        @Override
        public boolean knows(String word) {
            return known.contains(word);
        }

        @Override
        public SpeechRecognizer recognizer(Vocabulary vocabulary, int alternatives) {
            throw new UnsupportedOperationException("A list of words recognises nothing");
        }

        @Override
        public SpeechRecognizer anyWords() {
            throw new UnsupportedOperationException("A list of words recognises nothing");
        }

        @Override
        public String name() {
            return "words";
        }

        @Override
        public void close() {}
    }

    @Test
    void words_that_the_model_lacks_are_listed_once_and_sorted() {
        Lexicon lexicon = Lexicon.parse("l", "colostrum = cole ostrom");
        Vocabulary vocabulary = new Vocabulary(
                List.of(List.of("fed", "colostrum"), List.of("tubed", "colostrum", "[unk]"), List.of("tubed")),
                lexicon);
        assertThat(vocabulary.unknownWords(new Words(Set.of("fed", "cole")))).containsExactly("ostrom", "tubed");
        assertThat(vocabulary.unknownWords(new Words(Set.of("fed", "cole", "ostrom", "tubed"))))
                .isEmpty();
        assertThat(vocabulary.spokenSentences().get(0)).containsExactly("fed", "cole", "ostrom");
    }

    @Test
    void a_vocabulary_without_words_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Vocabulary(List.of(), Lexicon.empty()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Vocabulary(List.of(List.of()), Lexicon.empty()));
    }

    @Test
    void a_word_without_letters_or_that_ends_before_it_begins_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new RecognizedWord(" ", Duration.ZERO, Duration.ZERO));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RecognizedWord("a", Duration.ofMillis(2), Duration.ofMillis(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> new Hypothesis(List.of(), 1));
    }
}
