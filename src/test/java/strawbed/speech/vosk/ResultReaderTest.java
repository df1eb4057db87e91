package strawbed.speech.vosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.speech.RecognizedWord;

/** The form of the JSON is that of Vosk 0.3.45 with alternatives and words switched on, seen in its answers. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ResultReaderTest {
    private static final String TWO = """
            {"alternatives" : [{
              "confidence" : 203.5,
              "result" : [{"end" : 10.9, "start" : 10.2, "word" : "calf"},
                          {"end" : 11.6, "start" : 10.9, "word" : "[unk]"}],
              "text" : "calf [unk]"
            }, {"confidence" : 201, "result" : [{"end" : 11.2, "start" : 10.5, "word" : "cancel"}], "text" : "cancel"},
               {"confidence" : 199.0, "text" : ""}]}
            """;

    /** One second of sound, 5 s from its source's start, that began at 10.3 s on the recogniser's clock. */
    private final ResultReader reader = new ResultReader(Sound.of(new short[16_000], 80_000), 164_800);

    @Test
    void words_get_the_time_of_the_source_and_stay_inside_the_sound() {
        assertThat(reader.hypotheses(TWO).get(0).words())
                .containsExactly(
                        new RecognizedWord("calf", Duration.ofSeconds(5), Duration.ofMillis(5600)),
                        new RecognizedWord("[unk]", Duration.ofMillis(5600), Duration.ofSeconds(6)));
    }

    @Test
    void readings_keep_their_order_and_score_and_those_without_words_are_left_out() {
        assertThat(reader.hypotheses(TWO)).hasSize(2);
        assertThat(reader.hypotheses(TWO).get(0).score()).isEqualTo(203.5);
        assertThat(reader.hypotheses(TWO).get(1).texts()).containsExactly("cancel");
        assertThat(reader.hypotheses("{\"alternatives\" : []}")).isEmpty();
        assertThat(reader.hypotheses("{\"text\" : \"\"}")).isEmpty();
    }

    @Test
    void an_answer_of_another_form_is_refused() {
        assertThatThrownBy(() -> reader.hypotheses("calf"))
                .isInstanceOf(ModelException.class)
                .hasMessageContaining("JSON");
        assertThatThrownBy(() -> reader.hypotheses(
                        "{\"alternatives\":[{\"confidence\":1,\"result\":[{\"word\":\"calf\",\"end\":1}]}]}"))
                .isInstanceOf(ModelException.class)
                .hasMessageContaining("\"start\"");
    }
}
