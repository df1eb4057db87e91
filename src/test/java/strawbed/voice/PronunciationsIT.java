package strawbed.voice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PronunciationsIT {
    private static final Pronunciations PRONUNCIATIONS = new Pronunciations();

    /** Source: CMU Pronouncing Dictionary 0.4, in the form of the Festival lexicon "cmu", without syllables and stress. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "calf, k ae f",
        "navel, n ey v ax l",
        "iodine, ay ax d ay n",
        "fifteen, f ih f t iy n",
        "fifty, f ih f t iy",
        "water, w ao t er",
        "bottle, b aa t ax l",
        "colonel, k er n ax l",
        "though, dh ow",
        "twelve, t w eh l v",
        "neighbor, n ey b er",
        "breathe, b r iy dh",
        "twins, t w ih n z",
        "weight, w ey t",
        "brix, b r ih k s"
    })
    void a_word_sounds_as_the_published_dictionary_says(String word, String phones) {
        assertThat(PRONUNCIATIONS.phones(word)).isEqualTo(Arrays.asList(phones.split(" ")));
    }

    @Test
    void a_word_that_no_dictionary_has_is_sounded_out() {
        assertThat(PRONUNCIATIONS.isListed("strawbedder")).isFalse();
        assertThat(PRONUNCIATIONS.phones("strawbedder"))
                .startsWith("s", "t", "r")
                .endsWith("er");
    }

    @Test
    void an_irregular_word_is_listed_and_a_sign_has_no_sound() {
        assertThat(PRONUNCIATIONS.isListed("colonel")).isTrue();
        assertThat(PRONUNCIATIONS.phones("12")).isEmpty();
        assertThat(PRONUNCIATIONS.phones("")).isEmpty();
    }
}
