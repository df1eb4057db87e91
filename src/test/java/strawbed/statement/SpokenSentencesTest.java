package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;
import strawbed.testkit.SpokenSentence;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenSentencesTest {
    private static final UtteranceInterpreter INTERPRETER =
            new UtteranceInterpreter(Grammars.ofTheTable().grammar(), Listener.THRESHOLDS);
    private static final SpeechTime SPEECH = new SpeechTime(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE);
    private static final Listening LISTENING = new Listening(SpokenSentence.OPEN_CALVES, false);

    static List<SpokenSentence> table() {
        return SpokenSentence.all();
    }

    @ParameterizedTest
    @MethodSource("table")
    void a_sentence_of_the_table_means_what_the_table_says(SpokenSentence sentence) {
        Interpretation meaning =
                INTERPRETER.interpret(List.of(Grammars.reading(sentence.words(), 0)), SPEECH, LISTENING);

        assertThat(meaning).isInstanceOf(Interpretation.Understood.class);
        Statement statement = ((Interpretation.Understood) meaning).statement();
        assertThat(SpokenSentence.calfOf(statement)).isEqualTo(sentence.calf());
        assertThat(SpokenSentence.eventsOf(statement)).containsExactlyElementsOf(sentence.events());
    }

    @Test
    void the_table_has_at_least_200_sentences() {
        assertThat(table()).hasSizeGreaterThanOrEqualTo(200);
    }
}
