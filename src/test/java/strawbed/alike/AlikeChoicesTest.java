package strawbed.alike;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.GrammarReader;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AlikeChoicesTest {
    private static final Map<String, String> SOUNDS = Map.ofEntries(
            Map.entry("calf", "k ae f"),
            Map.entry("fifteen", "f ih f t iy n"),
            Map.entry("fifty", "f ih f t iy"),
            Map.entry("nine", "n ay n"),
            Map.entry("bull", "b uh l"),
            Map.entry("pool", "p uw l"),
            Map.entry("heifer", "hh eh f er"),
            Map.entry("pounds", "p aw n d z"),
            Map.entry("weighs", "w ey z"));

    private static List<AlikePair> pairs(String rules, double least, String... numbers) {
        Grammar grammar = GrammarReader.read(
                file -> "#ABNF 1.0 UTF-8;\nlanguage en-US;\nroot $s;\ntag-format <semantics/1.0-literals>;\n" + rules,
                "test.abnf");
        List<AlikePair> pairs = new AlikeChoices(
                        grammar,
                        grammar.root(),
                        Set.of(numbers),
                        word -> List.of(SOUNDS.getOrDefault(word, "").split(" ")))
                .pairs(least);
        GrammarMatcher matcher = new GrammarMatcher(grammar);
        assertThat(pairs).allSatisfy(pair -> {
            assertThat(matcher.match(grammar.root(), pair.sentence(), 1))
                    .as(pair.toString())
                    .isNotEmpty();
            assertThat(matcher.match(grammar.root(), pair.mistakenFor(), 1))
                    .as(pair.toString())
                    .isNotEmpty();
        });
        return pairs;
    }

    private static Set<String> words(List<AlikePair> pairs) {
        return pairs.stream()
                .map(pair -> String.join(" ", pair.one()) + "/" + String.join(" ", pair.other()))
                .collect(Collectors.toSet());
    }

    @Test
    void fifteen_and_fifty_sound_alike_and_nine_does_not() {
        List<AlikePair> pairs = pairs("$s = calf $n;\n$n = fifteen {15} | fifty {50} | nine {9};", 0.55);
        assertThat(words(pairs)).containsExactly("fifteen/fifty");
        assertThat(pairs.get(0).sentence()).containsExactly("calf", "fifteen");
        assertThat(pairs.get(0).mistakenFor()).containsExactly("calf", "fifty");
    }

    @Test
    void words_of_different_rules_at_the_same_place_are_compared() {
        assertThat(words(pairs("$s = calf ($a | $b);\n$a = bull | heifer;\n$b = pool | nine;", 0.55)))
                .containsExactly("bull/pool");
    }

    @Test
    void words_that_mean_the_same_may_sound_alike() {
        assertThat(pairs("$s = calf (bull {male} | pool {male});", 0)).isEmpty();
        assertThat(pairs("$s = calf bull | calf pool;", 0)).isEmpty();
    }

    @Test
    void words_at_different_places_are_not_compared() {
        assertThat(pairs("$s = calf bull {a} pool {b} (nine {9} | heifer {h});", 0.55))
                .isEmpty();
    }

    @Test
    void only_what_differs_is_told_and_only_once() {
        List<AlikePair> pairs = pairs(
                "$s = calf $w | $w;\n$w = weighs $n pounds;\n$n = fifteen {15} | fifty {50};", 0, "fifteen", "fifty");
        assertThat(words(pairs)).contains("fifteen/fifty").noneMatch(words -> words.contains("pounds"));
        assertThat(pairs).filteredOn(pair -> pair.one().contains("fifteen")).hasSize(1);
    }

    @Test
    void numbers_of_several_words_are_compared_by_their_words_only() {
        String rules = "$s = calf ($n $n {two} | $n {one});\n$n = fifteen {15} | fifty {50} | nine {9};";
        assertThat(words(pairs(rules, 0.3, "fifteen", "fifty", "nine")))
                .isNotEmpty()
                .noneMatch(words -> words.contains(" "));
    }

    @Test
    void the_closest_pair_comes_first() {
        List<AlikePair> pairs = pairs("$s = fifteen {15} | fifty {50} | nine {9} | bull {b};", 0);
        assertThat(pairs).extracting(AlikePair::closeness).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(pairs).hasSize(6);
    }

    @Test
    void a_rule_inside_itself_comes_to_an_end() {
        assertThat(words(pairs("$s = bull {b} | pool {p} | calf $s;", 0.55))).containsExactly("bull/pool");
    }
}
