package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.entry.FarmChoices;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarReader;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FarmNamesTest {
    private static final String HEAD = """
            #ABNF 1.0 UTF-8;
            language en-US;
            mode voice;
            tag-format <semantics/1.0-literals>;
            public $dip_name = $VOID;
            """;

    @TempDir
    private Path own;

    private Grammar grammar() {
        return GrammarReader.read(Settings.grammar(own), "strawbed.abnf");
    }

    @Test
    void the_programs_own_grammar_gives_what_is_usual() {
        assertThat(FarmNames.of(grammar(), false)).isEqualTo(FarmChoices.USUAL);
    }

    @Test
    void a_farms_places_have_keys_under_the_name_that_goes_into_the_record() throws IOException {
        Files.writeString(
                own.resolve("farm.abnf"),
                HEAD + "public $place_name = sick pen | red barn | (straw yard | yard) {straw yard};\n");

        FarmChoices farm = FarmNames.of(grammar(), true);

        assertThat(farm.places()).containsExactly("sick pen", "red barn", "straw yard");
        assertThat(farm.breeds()).isEqualTo(FarmChoices.USUAL.breeds());
        assertThat(farm.metric()).isTrue();
    }
}
