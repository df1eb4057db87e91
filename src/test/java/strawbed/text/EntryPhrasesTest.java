package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.entry.Answer;
import strawbed.entry.CalfKind;
import strawbed.entry.EntryGroup;
import strawbed.entry.EntryKind;
import strawbed.entry.EntryUnit;
import strawbed.entry.GumColour;
import strawbed.entry.NumberedPlace;
import strawbed.entry.Option;
import strawbed.entry.Question;
import strawbed.entry.ReflexStrength;
import strawbed.entry.Refusal;
import strawbed.entry.SwollenPlace;
import strawbed.event.Term;
import strawbed.testkit.SpokenSentence;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EntryPhrasesTest {
    private static final Messages MESSAGES = new Messages(Locale.US);
    private static final EntryPhrases PHRASES = new EntryPhrases(MESSAGES, SpokenSentence.ZONE);

    static Stream<Enum<?>> labels() {
        return Stream.<Enum<?>[]>of(
                        EntryGroup.values(),
                        EntryKind.values(),
                        CalfKind.values(),
                        EntryUnit.values(),
                        SwollenPlace.values(),
                        GumColour.values(),
                        ReflexStrength.values(),
                        NumberedPlace.values())
                .flatMap(Arrays::stream);
    }

    @ParameterizedTest
    @MethodSource("labels")
    void a_label_fits_a_big_button(Enum<?> constant) {
        String label = PHRASES.label(constant);
        assertThat(label).isNotBlank().hasSizeLessThanOrEqualTo(24);
        assertThat(label.split(" ")).allSatisfy(word -> assertThat(word).hasSizeLessThanOrEqualTo(12));
    }

    @Test
    void a_question_is_short() {
        assertThat(Question.values())
                .extracting(MESSAGES::word)
                .allSatisfy(question -> assertThat(question).endsWith("?").hasSizeLessThanOrEqualTo(24));
    }

    @Test
    void buttons_say_what_they_do() {
        assertThat(PHRASES.label(EntryKind.NAVEL_DIPPED)).isEqualTo("Navel dipped");
        assertThat(PHRASES.label(EntryUnit.FAHRENHEIT)).isEqualTo("°F");
        assertThat(PHRASES.label(Answer.of(Term.FeedingMethod.BOTTLE))).isEqualTo("Bottle");
        assertThat(PHRASES.label(new Option.Name("milking shorthorn"))).isEqualTo("Milking Shorthorn");
        assertThat(PHRASES.label(new Option.Count(3))).isEqualTo("3");
        assertThat(PHRASES.label(new Answer.NotNoted())).isEqualTo("Not noted");
        assertThat(PHRASES.label(new Answer.Amount(new BigDecimal("3.5"), EntryUnit.QUART)))
                .isEqualTo("3.5 quarts");
        assertThat(PHRASES.label(new Answer.Amount(BigDecimal.ONE, EntryUnit.QUART)))
                .isEqualTo("1 quart");
        assertThat(PHRASES.label(new Answer.Amount(new BigDecimal("7"), EntryUnit.PERCENT)))
                .isEqualTo("7 %");
        assertThat(PHRASES.label(new Answer.Amount(new BigDecimal("102"), EntryUnit.FAHRENHEIT)))
                .isEqualTo("102 °F");
        assertThat(PHRASES.label(new Answer.Ago(Duration.ofMinutes(10)))).isEqualTo("10 min ago");
        assertThat(PHRASES.label(new Answer.Ago(Duration.ofMinutes(90)))).isEqualTo("1 h 30 min ago");
        assertThat(PHRASES.label(new Answer.Ago(Duration.ZERO))).isEqualTo("Just now");
        assertThat(PHRASES.label(new Answer.Between())).isEqualTo("Between");
        assertThat(PHRASES.part(new BigDecimal("0.5"))).isEqualTo("½");
    }

    @Test
    void a_refusal_says_what_can_be_pressed() {
        assertThat(PHRASES.refusal(new Refusal.OutOfRange(BigDecimal.ZERO, new BigDecimal("100"))))
                .isEqualTo("From 0 to 100.");
        assertThat(PHRASES.refusal(new Refusal.WrongLength(1, 4))).isEqualTo("1 to 4 digits.");
        assertThat(PHRASES.refusal(new Refusal.TooLongAgo(Duration.ofHours(13))))
                .isEqualTo("At most 13 h ago. Press the time of day.");
        assertThat(PHRASES.refusal(new Refusal.NoSuchTime())).contains("430");
    }
}
