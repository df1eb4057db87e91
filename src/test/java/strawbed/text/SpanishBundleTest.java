package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The Spanish texts beside the English ones. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpanishBundleTest {
    private static final Properties ENGLISH = read("messages.properties");
    private static final Properties SPANISH = read("messages_es.properties");
    private static final Pattern PART = Pattern.compile("\\{([0-9])\\}");
    private static final Pattern LETTERS = Pattern.compile("\\p{L}{2,}");

    /** What a person looked at: words and signs that both languages write alike. Texts without a word are alike anyway. */
    private static final Set<String> ALIKE = Set.of(
            "entry.kind.colostrum.brix",
            "entry.unit.grams.a.decilitre",
            "entry.unit.kilogram",
            "entry.unit.milligrams.a.millilitre",
            "meaning.cancel",
            "station.english",
            "station.enter",
            "station.no",
            "station.spanish",
            "station.title",
            "clock.pattern",
            "day.pattern",
            "date.pattern",
            "weekday.pattern",
            "weekday.pattern.spoken",
            "event.stored.brix",
            "milligrams.a.millilitre",
            "grams.a.decilitre",
            "minutes.short",
            "hours.and.minutes.short",
            "print.test.size",
            "card.brix",
            "card.short.quart",
            "card.short.pint");

    @Test
    void every_text_is_in_both_languages() {
        assertThat(ENGLISH.stringPropertyNames()).hasSizeGreaterThan(900);
        assertThat(SPANISH.stringPropertyNames()).containsAll(ENGLISH.stringPropertyNames());
    }

    /** How something is said may differ from how it is shown in one language alone. */
    @Test
    void spanish_has_no_text_of_its_own_but_how_the_voice_says_one_of_them() {
        assertThat(SPANISH.stringPropertyNames())
                .filteredOn(key -> !ENGLISH.containsKey(key))
                .allSatisfy(key -> {
                    assertThat(key).endsWith(".spoken");
                    assertThat(ENGLISH).containsKey(key.substring(0, key.length() - ".spoken".length()));
                });
    }

    /** In a counted thing {1} and {2} are other forms of the number {0}. */
    @Test
    void both_texts_of_a_key_have_the_same_parts() {
        assertThat(SPANISH.stringPropertyNames()).allSatisfy(key -> {
            Set<String> parts = parts(SPANISH.getProperty(key));
            Set<String> others = parts(Objects.requireNonNullElseGet(
                    ENGLISH.getProperty(key), () -> ENGLISH.getProperty(key.replaceFirst("\\.spoken$", ""))));
            if (key.endsWith(".spoken") && others.equals(Set.of("0")) && parts.size() == 1) {
                assertThat(parts).isSubsetOf("0", "1", "2");
            } else {
                assertThat(parts).isEqualTo(others);
            }
        });
    }

    @Test
    void every_text_is_filled_in_whole() {
        Messages messages = new Messages(Language.SPANISH.locale());
        assertThat(SPANISH.stringPropertyNames()).allSatisfy(key -> {
            String text = SPANISH.getProperty(key);
            assertThat(new MessageFormat(text, Language.SPANISH.locale()).toPattern())
                    .isNotNull();
            String filled = messages.at(key, "<0>", "<1>", "<2>", "<3>", "<4>", "<5>", "<6>");
            assertThat(filled).doesNotContain("{");
            for (int part = 0; part < 7; part++) {
                assertThat(filled.contains("<" + part + ">")).isEqualTo(text.contains("{" + part + "}"));
            }
        });
    }

    @Test
    void every_key_of_the_program_and_every_word_of_its_lists_is_there() {
        assertThat(MessageKey.values()).allSatisfy(key -> assertThat(SPANISH).containsKey(key.inBundle()));
        assertThat(MessagesTest.listed())
                .hasSizeGreaterThan(80)
                .allSatisfy(word ->
                        assertThat(SPANISH.getProperty(Messages.key(word))).isNotBlank());
    }

    @Test
    void nothing_was_left_in_english() {
        Set<String> same = ENGLISH.stringPropertyNames().stream()
                .filter(key ->
                        LETTERS.matcher(withoutParts(ENGLISH.getProperty(key))).find())
                .filter(key -> ENGLISH.getProperty(key).equals(SPANISH.getProperty(key)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(same).isEqualTo(new TreeSet<>(ALIKE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"AtkinsonHyperlegibleNext_400Regular", "AtkinsonHyperlegibleNext_700Bold"})
    void every_letter_is_in_the_fonts(String name) throws IOException, FontFormatException {
        try (InputStream file =
                Objects.requireNonNull(SpanishBundleTest.class.getResourceAsStream("/fonts/" + name + ".ttf"))) {
            Font font = Font.createFont(Font.TRUETYPE_FONT, file);
            assertThat(font.canDisplay('\u05d0')).as("a letter that it lacks").isFalse();
            assertThat(SPANISH.stringPropertyNames())
                    .allSatisfy(key -> assertThat(font.canDisplayUpTo(SPANISH.getProperty(key)))
                            .isEqualTo(-1));
        }
    }

    /** What is said to the recorder stays English, as its grammar is; the reader sees it between quotes. */
    @Test
    void what_the_recorder_listens_for_is_quoted_in_english() {
        assertThat(SPANISH.getProperty("confirm")).contains("“confirm entry”", "“cancel entry”");
        assertThat(SPANISH.getProperty("prompt.not.saved")).contains("“confirm entry”");
        assertThat(SPANISH.getProperty("prompt.paused")).contains("“wake up recorder”");
        assertThat(SPANISH.getProperty("reason.first.or.second")).contains("“first calf”", "“second calf”");
    }

    private static Set<String> parts(String text) {
        Matcher matcher = PART.matcher(text);
        Set<String> parts = new TreeSet<>();
        while (matcher.find()) {
            parts.add(matcher.group(1));
        }
        return parts;
    }

    private static String withoutParts(String text) {
        return PART.matcher(text).replaceAll(" ");
    }

    private static Properties read(String name) {
        Properties properties = new Properties();
        try (InputStreamReader reader = new InputStreamReader(
                Objects.requireNonNull(Messages.class.getResourceAsStream(name)), StandardCharsets.UTF_8)) {
            properties.load(reader);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties;
    }
}
