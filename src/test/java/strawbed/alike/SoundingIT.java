package strawbed.alike;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.voice.Pronunciations;

/** Distances of real pronunciations, against what was measured to be heard. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundingIT {
    private static final Map<String, List<String>> KNOWN = new HashMap<>();

    private static Pronunciations pronunciations;

    @BeforeAll
    static void load() {
        pronunciations = new Pronunciations();
    }

    private static List<String> phones(String word) {
        return KNOWN.computeIfAbsent(word, pronunciations::phones);
    }

    /**
     * Source: our own measurements, 81 utterances for each of the speech model. Each of these was heard at least
     * 77 times of 81 ("mac oney um", "replay sir", "tube") or poorly ("make any him" 47, "dude" 19, "cubed" 5).
     */
    @ParameterizedTest(name = "{0}: {1} is closer than {2}")
    @CsvSource({
        "colostrum, cole ostrom, close drum",
        "colostrum, co lost rum, nostrum",
        "meconium, mac oney um, make any him",
        "meconium, mac oney um, the cone e um",
        "replacer, replay sir, replace a",
        "replacer, replace er, replace laser",
        "tubed, tube, dude",
        "tubed, tube, cubed",
        "tubed, tube, tubby"
    })
    void what_was_heard_well_is_closer_than_what_was_heard_poorly(String word, String well, String poorly) {
        Sounding target = Sounding.of(List.of(word), SoundingIT::phones);
        assertThat(sounding(well).closeness(target))
                .isGreaterThan(sounding(poorly).closeness(target));
    }

    private static Sounding sounding(String words) {
        return Sounding.of(Arrays.asList(words.split(" ")), SoundingIT::phones);
    }
}
