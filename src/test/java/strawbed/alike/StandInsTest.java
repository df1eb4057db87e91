package strawbed.alike;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StandInsTest {
    private static final Map<String, String> SOUNDS = new LinkedHashMap<>();

    static {
        SOUNDS.put("colostrum", "k ax l ow s t r ax m");
        SOUNDS.put("replacer", "r iy p l ey s er");
        SOUNDS.put("shorthorn", "sh ao r th er n");
        SOUNDS.put("cole", "k ow l");
        SOUNDS.put("coal", "k ow l");
        SOUNDS.put("ostrom", "aa s t r ax m");
        SOUNDS.put("replay", "r iy p l ey");
        SOUNDS.put("sir", "s er");
        SOUNDS.put("calf", "k ae f");
        SOUNDS.put("barn", "b aa r n");
        SOUNDS.put("short", "sh ao r t");
        SOUNDS.put("horn", "hh ao r n");
        SOUNDS.put("bbc", "b iy b iy s iy");
        SOUNDS.put("place", "p l ey s");
        SOUNDS.put("zyzzyva", "z ih z ih v ax");
    }

    private static final StandIns STAND_INS = new StandIns(
            List.of("coal", "cole", "ostrom", "replay", "sir", "calf", "barn", "short", "horn", "bbc", "place"),
            word -> Arrays.asList(SOUNDS.getOrDefault(word, "").split(" ")));

    private static List<String> closest(String word, Set<String> taken) {
        return STAND_INS.closest(word, taken, 3).stream().map(StandIn::text).toList();
    }

    @Test
    void words_in_a_row_stand_in_for_one_that_sounds_like_them() {
        assertThat(closest("replacer", Set.of())).startsWith("replay sir");
        assertThat(STAND_INS.closest("replacer", Set.of(), 1).get(0).closeness())
                .isEqualTo(1);
    }

    @Test
    void of_words_that_sound_the_same_the_more_common_one_is_taken() {
        assertThat(closest("colostrum", Set.of())).startsWith("coal ostrom").noneMatch(text -> text.contains("cole"));
    }

    @Test
    void words_that_mean_something_themselves_do_not_stand_in_alone() {
        assertThat(closest("replacer", Set.of("replay", "sir"))).doesNotContain("replay sir");
    }

    @Test
    void two_common_words_in_one_are_said_as_they_are() {
        assertThat(closest("shorthorn", Set.of())).startsWith("short horn");
    }

    @Test
    void a_word_is_never_its_own_stand_in_and_nothing_far_off_is_offered() {
        assertThat(closest("barn", Set.of())).doesNotContain("barn");
        assertThat(closest("zyzzyva", Set.of())).isEmpty();
    }
}
