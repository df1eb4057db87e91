package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.RuleId;
import strawbed.speech.RecognizedWord;
import strawbed.testkit.Grammars;

/** The farm's grammar and its sentences. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PhrasebookTest {
    private static final Phrasebook BOOK = Phrasebook.read(Grammars.source());
    private static final RuleId LISTED = new RuleId("calves.abnf", "listed");

    @Test
    void a_listed_calf_can_be_said_in_all_its_forms() {
        GrammarMatcher matcher =
                new GrammarMatcher(BOOK.with(List.of("12", "207")).grammar());

        for (int number : List.of(12, 207)) {
            for (String form : SpokenForms.of(number)) {
                assertThat(matcher.match(LISTED, words(form), 2))
                        .as(form)
                        .singleElement()
                        .satisfies(tree -> assertThat(tree.tag()).isEqualTo(String.valueOf(number)));
            }
        }
        assertThat(matcher.match(LISTED, words("thirteen"), 1)).isEmpty();
    }

    @Test
    void without_calves_none_is_listed_and_others_can_still_be_said() {
        FarmGrammar farm = BOOK.with(List.of());
        GrammarMatcher matcher = new GrammarMatcher(farm.grammar());

        assertThat(matcher.match(LISTED, words("twelve"), 1)).isEmpty();
        assertThat(matcher.match(farm.grammar().root(), words("calf twelve heifer"), 1))
                .hasSize(1);
        assertThat(matcher.match(farm.grammar().root(), words("new calf heifer"), 1))
                .hasSize(1);
        assertThat(farm.vocabulary().spokenSentences()).hasSizeGreaterThan(1_000);
    }

    @Test
    void numbers_that_cannot_be_said_are_left_out() {
        FarmGrammar farm = BOOK.with(List.of("12", "10000", "B7", "", "-3", "123456"));

        assertThat(farm.grammar().tokens(List.of(LISTED)))
                .isEqualTo(BOOK.with(List.of("12")).grammar().tokens(List.of(LISTED)));
    }

    @Test
    void every_word_of_the_sentences_is_in_the_grammar_or_is_other_speech() {
        FarmGrammar farm = Grammars.ofTheTable();
        Set<String> known = new HashSet<>(farm.grammar().tokens());
        Grammars.source()
                .text("decoys.txt")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .forEach(line -> known.addAll(words(line.strip())));
        known.add(RecognizedWord.UNKNOWN);
        Set<String> standIns = known.stream()
                .flatMap(word -> BOOK.lexicon().standIn(word).stream())
                .flatMap(parts -> words(parts).stream())
                .collect(Collectors.toSet());

        Set<String> strangers = farm.vocabulary().spokenSentences().stream()
                .flatMap(List::stream)
                .filter(word -> !known.contains(word) && !standIns.contains(word))
                .collect(Collectors.toSet());
        assertThat(strangers).isEmpty();
    }

    @Test
    void every_word_of_the_grammar_is_in_some_sentence() {
        FarmGrammar farm = Grammars.ofTheTable();
        Set<String> said = farm.vocabulary().spokenSentences().stream()
                .flatMap(List::stream)
                .collect(Collectors.toSet());
        Stream<String> grammar = farm.grammar().tokens(List.of(farm.grammar().root())).stream();

        assertThat(grammar.filter(word -> BOOK.lexicon().standIn(word).isEmpty() && !said.contains(word)))
                .isEmpty();
    }

    @Test
    void the_same_calves_give_the_same_sentences_in_any_order() {
        List<List<String>> one =
                BOOK.with(List.of("12", "207", "3")).vocabulary().spokenSentences();
        List<List<String>> other = Phrasebook.read(Grammars.source())
                .with(List.of("3", "12", "207"))
                .vocabulary()
                .spokenSentences();

        assertThat(other.equals(one)).isTrue();
    }

    @Test
    void other_calves_give_other_sentences() {
        assertThat(BOOK.with(List.of("12")).vocabulary().spokenSentences())
                .isNotEqualTo(BOOK.with(List.of("13")).vocabulary().spokenSentences());
    }

    @Test
    void no_stand_in_for_the_list_is_left_in_a_sentence() {
        assertThat(BOOK.with(List.of("12")).vocabulary().spokenSentences())
                .noneMatch(sentence -> sentence.contains("listedcalf"));
        assertThat(BOOK.with(List.of()).vocabulary().spokenSentences())
                .noneMatch(sentence -> sentence.contains("listedcalf"));
    }

    private static List<String> words(String text) {
        return List.of(text.split("\\s+"));
    }
}
