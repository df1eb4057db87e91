package strawbed.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.grammar.RuleExpansion.Alternatives;
import strawbed.grammar.RuleExpansion.Repeat;
import strawbed.grammar.RuleExpansion.RuleReference;
import strawbed.grammar.RuleExpansion.Sequence;
import strawbed.grammar.RuleExpansion.Special;
import strawbed.grammar.RuleExpansion.Token;

/** What must hold of every grammar, tried on random ones; the seed is in the message of a failure. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RandomGrammarTest {

    private static final int GRAMMARS = 400;
    private static final List<String> ALPHABET = List.of("a", "b", "c");

    /** A random grammar of four rules, or null when it was refused for its recursion. */
    private static @Nullable Grammar random(int seed) {
        Random random = new Random(seed);
        String rules = IntStream.range(0, 4)
                .mapToObj(i -> "$" + (i == 0 ? "s" : "r" + i) + " = " + expansion(random, 3) + ";\n")
                .collect(Collectors.joining());
        try {
            return Grammars.of(rules);
        } catch (GrammarException e) {
            assertThat(e.problem())
                    .as("seed %d: %s", seed, rules)
                    .matches(".*(begins with itself|repeated without end|come to an end).*");
            return null;
        }
    }

    private static String expansion(Random random, int depth) {
        int kind = random.nextInt(depth == 0 ? 5 : 13);
        return switch (kind) {
            case 0, 1, 2 -> ALPHABET.get(random.nextInt(3));
            case 3 -> "$r" + (1 + random.nextInt(3));
            case 4 -> random.nextInt(4) == 0 ? "$VOID" : random.nextInt(2) == 0 ? "$NULL" : "a {t}";
            case 5, 6, 7 -> expansion(random, depth - 1) + " " + expansion(random, depth - 1);
            case 8, 9 -> "(" + expansion(random, depth - 1) + " | /2/ " + expansion(random, depth - 1) + ")";
            case 10 -> "[" + expansion(random, depth - 1) + "]";
            case 11 -> "(" + expansion(random, depth - 1) + ")<0->";
            default -> "(" + expansion(random, depth - 1) + ")<1-2>";
        };
    }

    private static List<List<String>> allWordLists(int longest) {
        List<List<String>> lists = new ArrayList<>(List.of(List.of()));
        for (int i = 0; i < lists.size(); i++) {
            if (lists.get(i).size() < longest) {
                for (String word : ALPHABET) {
                    List<String> longer = new ArrayList<>(lists.get(i));
                    longer.add(word);
                    lists.add(longer);
                }
            }
        }
        return lists;
    }

    /**
     * The sentences of up to a length, found from the definition alone: the sets of all rules grow from nothing until
     * they stop growing.
     */
    private static final class Language {
        private static final int LONGEST = 5;
        private final Map<RuleId, Set<String>> sentences = new HashMap<>();

        Language(Grammar grammar) {
            grammar.rules().forEach(rule -> sentences.put(rule.id(), new TreeSet<>()));
            boolean grown = true;
            while (grown) {
                grown = false;
                for (Rule rule : grammar.rules()) {
                    grown |= of(rule.id()).addAll(of(rule.expansion()));
                }
            }
        }

        Set<String> of(RuleId id) {
            return Objects.requireNonNull(sentences.get(id));
        }

        private Set<String> of(RuleExpansion expansion) {
            if (expansion instanceof Token token) {
                return Set.of(token.text());
            } else if (expansion instanceof RuleReference reference) {
                return Set.copyOf(of(reference.rule()));
            } else if (expansion instanceof Sequence sequence) {
                Set<String> all = Set.of("");
                for (RuleExpansion part : sequence.parts()) {
                    all = joined(all, of(part));
                }
                return all;
            } else if (expansion instanceof Alternatives alternatives) {
                Set<String> all = new HashSet<>();
                alternatives.alternatives().forEach(alternative -> all.addAll(of(alternative.expansion())));
                return all;
            } else if (expansion instanceof Repeat repeat) {
                Set<String> all = new HashSet<>();
                Set<String> power = Set.of("");
                for (int i = 0; i <= Math.min(repeat.max(), repeat.min() + LONGEST); i++) {
                    if (i >= repeat.min()) {
                        all.addAll(power);
                    }
                    power = joined(power, of(repeat.expansion()));
                }
                return all;
            }
            return expansion == Special.VOID ? Set.of() : Set.of("");
        }

        private static Set<String> joined(Set<String> lefts, Set<String> rights) {
            Set<String> all = new HashSet<>();
            for (String left : lefts) {
                for (String right : rights) {
                    if (left.length() + right.length() <= LONGEST) {
                        all.add(left + right);
                    }
                }
            }
            return all;
        }
    }

    @Test
    void the_matcher_accepts_exactly_the_sentences_that_the_definition_gives() {
        List<List<String>> lists = allWordLists(Language.LONGEST);
        int tried = 0;
        for (int seed = 0; seed < GRAMMARS; seed++) {
            Grammar grammar = random(seed);
            if (grammar != null) {
                tried++;
                GrammarMatcher matcher = new GrammarMatcher(grammar);
                Set<String> accepted = lists.stream()
                        .filter(words ->
                                !matcher.match(grammar.root(), words, 3).isEmpty())
                        .map(words -> String.join("", words))
                        .collect(Collectors.toSet());
                assertThat(accepted).as("seed %d", seed).isEqualTo(new Language(grammar).of(grammar.root()));
            }
        }
        assertThat(tried).isGreaterThan(GRAMMARS / 4);
    }

    @Test
    void every_beginning_of_a_sentence_is_a_prefix_and_trees_are_distinct() {
        for (int seed = 0; seed < GRAMMARS; seed++) {
            Grammar grammar = random(seed);
            if (grammar != null) {
                GrammarMatcher matcher = new GrammarMatcher(grammar);
                for (List<String> words : new SentenceMaker(grammar).sample(grammar.root(), 20, seed)) {
                    for (int i = 0; i <= words.size(); i++) {
                        assertThat(matcher.isPrefix(grammar.root(), words.subList(0, i)))
                                .as("seed %d, %s", seed, words)
                                .isTrue();
                    }
                    assertThat(matcher.match(grammar.root(), words, 20))
                            .as("seed %d, %s", seed, words)
                            .isNotEmpty()
                            .doesNotHaveDuplicates();
                }
            }
        }
    }

    /** Prefixes are known from the language up to 5 words: what begins one of its sentences must be a prefix. */
    @Test
    void the_longest_prefix_of_random_words_begins_a_sentence_that_can_be_made() {
        Random random = new Random(5);
        for (int seed = 0; seed < GRAMMARS; seed++) {
            Grammar grammar = random(seed);
            if (grammar != null) {
                GrammarMatcher matcher = new GrammarMatcher(grammar);
                Set<String> language = new Language(grammar).of(grammar.root());
                List<String> words =
                        random.ints(4, 0, 3).mapToObj(ALPHABET::get).toList();
                int known = IntStream.rangeClosed(0, 4)
                        .filter(i ->
                                language.stream().anyMatch(s -> s.startsWith(String.join("", words.subList(0, i)))))
                        .max()
                        .orElse(0);
                assertThat(matcher.longestPrefix(grammar.root(), words))
                        .as("seed %d, %s", seed, words)
                        .isGreaterThanOrEqualTo(known);
            }
        }
    }

    @Test
    void the_cover_holds_every_pair_and_nothing_that_does_not_match() {
        for (int seed = 0; seed < GRAMMARS; seed++) {
            Grammar grammar = random(seed);
            if (grammar != null) {
                SentenceMaker maker = new SentenceMaker(grammar);
                List<List<String>> cover = maker.cover(grammar.root());
                assertThat(pairs(cover)).as("seed %d", seed).isEqualTo(maker.pairs(grammar.root()));
                GrammarMatcher matcher = new GrammarMatcher(grammar);
                assertThat(cover)
                        .as("seed %d", seed)
                        .allMatch(words ->
                                !matcher.match(grammar.root(), words, 1).isEmpty());
            }
        }
    }

    @Test
    void sentences_by_chance_have_only_known_words_and_allowed_pairs() {
        for (int seed = 0; seed < GRAMMARS; seed++) {
            Grammar grammar = random(seed);
            if (grammar != null) {
                SentenceMaker maker = new SentenceMaker(grammar);
                List<List<String>> sentences = maker.sample(grammar.root(), 30, seed);
                assertThat(maker.pairs(grammar.root())).as("seed %d", seed).containsAll(pairs(sentences));
                assertThat(grammar.tokens())
                        .as("seed %d", seed)
                        .containsAll(sentences.stream().flatMap(List::stream).toList());
            }
        }
    }

    @Test
    void the_list_of_all_sentences_is_the_language() {
        for (int seed = 0; seed < GRAMMARS; seed++) {
            Grammar grammar = random(seed);
            if (grammar != null) {
                Set<String> language = new Language(grammar).of(grammar.root());
                List<List<String>> all = new SentenceMaker(grammar)
                        .all(grammar.root())
                        .limit(3000)
                        .toList();
                Set<String> listed = all.stream()
                        .filter(words -> words.size() <= Language.LONGEST)
                        .map(words -> String.join("", words))
                        .collect(Collectors.toSet());
                assertThat(all).as("seed %d", seed).doesNotHaveDuplicates();
                assertThat(language).as("seed %d", seed).containsAll(listed);
                if (all.size() < 3000) {
                    assertThat(listed).as("seed %d", seed).isEqualTo(language);
                }
            }
        }
    }

    @Test
    void random_text_gives_a_grammar_or_a_place_inside_the_text() {
        String[] pieces = {
            "$s",
            "$t",
            " = ",
            ";",
            "\n",
            "(",
            ")",
            "[",
            "]",
            "a",
            "b ",
            " | ",
            "<",
            ">",
            "0-",
            "-3",
            "/",
            "1",
            ".5",
            "{",
            "}",
            "{!{",
            "}!}",
            "\"",
            "!",
            "en",
            "$NULL",
            "$VOID",
            "$GARBAGE",
            "//",
            "/*",
            "*/",
            "public ",
            "$<",
            "#",
            "\r",
            "\t",
            "é",
            "\uD83D",
            "İ",
            "root $s;",
            "~",
            "*",
            "\0"
        };
        for (int seed = 0; seed < 20_000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(random.nextInt(8) == 0 ? "" : Grammars.HEADER + "$s = ");
            for (int i = random.nextInt(25); i > 0; i--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            checkRead(text.toString(), seed);
        }
    }

    private static void checkRead(String text, int seed) {
        try {
            assertThat(GrammarReader.read(file -> text, "test.abnf").rules())
                    .as("seed %d", seed)
                    .isNotNull();
        } catch (GrammarException e) {
            String[] lines = text.split("\r\n|\r|\n", -1);
            assertThat(e.line()).as("seed %d: %s", seed, text).isBetween(1, lines.length);
            assertThat(e.column()).as("seed %d: %s", seed, text).isBetween(1, lines[e.line() - 1].length() + 1);
            assertThat(e.lineText()).as("seed %d: %s", seed, text).isEqualTo(lines[e.line() - 1]);
        }
    }

    private static Set<WordPair> pairs(List<List<String>> sentences) {
        Set<WordPair> pairs = new HashSet<>();
        for (List<String> words : sentences) {
            String left = WordPair.EDGE;
            for (String word : words) {
                pairs.add(new WordPair(left, word));
                left = word;
            }
            pairs.add(new WordPair(left, WordPair.EDGE));
        }
        return pairs;
    }
}
