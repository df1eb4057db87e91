package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.alike.StandIn;
import strawbed.grammar.Grammar;
import strawbed.grammar.SentenceMaker;
import strawbed.hearing.Phrasebook;
import strawbed.speech.Hypothesis;
import strawbed.speech.Lexicon;
import strawbed.speech.SpeechModel;
import strawbed.speech.SpeechRecognizer;
import strawbed.speech.Vocabulary;
import strawbed.testkit.Grammars;
import strawbed.voice.FreeTtsVoice;

/** Stand-ins out of the words of the real model. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WordAdviceIT {
    private static WordAdvice advice;
    private static SpeechModel model;
    private static List<List<String>> sentences;

    @BeforeAll
    static void load() {
        Settings settings = Settings.of(Optional.empty(), Optional.empty());
        advice = new WordAdvice(Ears.modelFolder(settings));
        model = Ears.load(settings);
        Grammar grammar = Phrasebook.grammar(Grammars.source());
        sentences = new SentenceMaker(grammar)
                .sample(grammar.root(), 3_000, 1).stream()
                        .filter(words -> words.stream().allMatch(model::knows))
                        .toList();
    }

    @AfterAll
    static void close() {
        model.close();
    }

    private static List<String> texts(String word) {
        return advice.standIns(word, Set.of()).stream().map(StandIn::text).toList();
    }

    /** Source: our own measurements; each of these was heard in 77 to 81 of 81 utterances. */
    @Test
    void the_proposals_are_among_those_that_were_measured_to_be_heard() {
        assertThat(texts("replacer")).contains("replay sir");
        assertThat(texts("refractometer")).contains("reef racked amateur");
        assertThat(texts("tubed")).contains("tube");
        assertThat(texts("shorthorn")).startsWith("short horn");
        assertThat(texts("colostrum")).anyMatch(text -> text.endsWith(" ostrom"));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"colostrum", "meconium", "refractometer", "replacer", "shorthorn", "dystocia"})
    void a_proposal_is_known_to_the_model_and_heard_in_place_of_the_word(String word) {
        StandIn best = advice.standIns(word, Set.of()).get(0);
        assertThat(best.closeness()).isBetween(0.85, 1.0);
        List<List<String>> all = new ArrayList<>(sentences);
        for (int i = 0; i < 20; i++) {
            all.add(List.of("calf", "twelve", word, "good"));
        }
        Vocabulary vocabulary = new Vocabulary(all, Lexicon.parse("lexicon.txt", word + " = " + best.text()));
        assertThat(vocabulary.unknownWords(model)).isEmpty();
        try (SpeechRecognizer recognizer = model.recognizer(vocabulary, 1)) {
            List<Hypothesis> heard = recognizer.recognize(new FreeTtsVoice().speak("calf twelve " + word + " good"));
            assertThat(heard.get(0).texts()).as(best.text()).isEqualTo(Arrays.asList("calf", "twelve", word, "good"));
        }
    }
}
