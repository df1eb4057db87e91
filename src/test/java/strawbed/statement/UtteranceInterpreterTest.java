package strawbed.statement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumLeft;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.VoiceNoteTaken;
import strawbed.event.Term;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.ParseTree;
import strawbed.grammar.RuleId;
import strawbed.grammar.SentenceMaker;
import strawbed.testkit.Grammars;
import strawbed.testkit.Listener;
import strawbed.testkit.SpokenSentence;

/** What several readings of a sound are taken for. The sentences are our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UtteranceInterpreterTest {
    private static final Listener LISTENER = Listener.onTheTablesFarm();
    private static final Grammar GRAMMAR = Grammars.ofTheTable().grammar();
    private static final SexNoted HEIFER = new SexNoted(Term.Sex.FEMALE);

    // Which reading counts.

    @Test
    void the_first_reading_that_parses_whole_is_taken() {
        Interpretation meaning = LISTENER.hears("calf twelve heifer the", "calf twelve heifer", "calf thirteen bull");

        assertThat(meaning.words()).containsExactly("calf", "twelve", "heifer");
        assertUnderstood(meaning, "12", HEIFER);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[unk]",
                "calf twelve [unk] heifer",
                "[unk] calf twelve heifer",
                "calf twelve heifer [unk]",
                "calf [unk] heifer",
                "confirm [unk] entry"
            })
    void a_reading_with_unknown_speech_never_parses(String words) {
        assertThat(LISTENER.hears(words)).isInstanceOf(Interpretation.NoMatch.class);
    }

    @Test
    void no_reading_at_all_is_no_match() {
        assertThat(LISTENER.hears(List.of())).isEqualTo(new Interpretation.NoMatch(List.of()));
    }

    @Test
    void a_number_that_is_not_on_the_list_is_asked_about() {
        assertThat(LISTENER.doubts("calf nineteen heifer")).containsExactly(new Doubt.NotListed("19"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "calf", "calf twelve weight", "calf twelve heifer", "new calf", "confirm entry"})
    void a_sentence_begins_with_these_words(String words) {
        assertThat(Listener.INTERPRETER.begins(words(words))).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"heifer", "calf heifer", "calf twelve weight heifer", "whether calf twelve", "[unk] calf"})
    void no_sentence_begins_with_these_words(String words) {
        assertThat(Listener.INTERPRETER.begins(words(words))).isFalse();
    }

    private static List<String> words(String spoken) {
        return Stream.of(spoken.split(" ")).filter(word -> !word.isEmpty()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"calf oh", "calf zero", "calf oh oh"})
    void a_cows_call_is_no_half_sentence(String words) {
        assertThat(LISTENER.hears(words)).isInstanceOf(Interpretation.NoMatch.class);
        assertThat(Listener.INTERPRETER.interpret(
                        List.of(Grammars.reading("calf zero", 10)),
                        LISTENER.speech(),
                        new Listening(Set.of("0"), false)))
                .as("of a calf that is on the list it is one")
                .isInstanceOf(Interpretation.Unsure.class);
    }

    @Test
    void a_calf_on_the_list_is_preferred_to_one_that_is_not() {
        assertUnderstood(LISTENER.hears("calf nineteen heifer", "calf ninety heifer"), "90", HEIFER);
    }

    @Test
    void a_reading_of_a_calf_that_is_not_on_the_list_is_no_rival() {
        assertUnderstood(
                LISTENER.hears(List.of(
                        Grammars.reading("calf ninety heifer", 10), Grammars.reading("calf nineteen heifer", 10))),
                "90",
                HEIFER);
    }

    @Test
    void two_readings_within_the_margin_that_differ_are_asked_about() {
        Interpretation meaning = LISTENER.hears(
                List.of(Grammars.reading("calf thirteen heifer", 10), Grammars.reading("calf thirty heifer", 9.5)));

        assertThat(meaning).isInstanceOfSatisfying(Interpretation.Unsure.class, unsure -> {
            assertThat(unsure.best().calf()).isEqualTo(new CalfReference.Numbered("13"));
            assertThat(unsure.doubts()).containsExactly(new Doubt.SoundsLike(List.of("calf", "thirty", "heifer")));
        });
    }

    @Test
    void a_reading_beyond_the_margin_is_no_doubt() {
        assertUnderstood(
                LISTENER.hears(List.of(
                        Grammars.reading("calf thirteen heifer", 10), Grammars.reading("calf thirteen bull", 7.5))),
                "13",
                HEIFER);
    }

    @Test
    void another_calf_is_a_doubt_from_further_away() {
        assertThat(LISTENER.hears(List.of(
                        Grammars.reading("calf thirteen heifer", 10), Grammars.reading("calf thirty heifer", 8.5))))
                .isInstanceOf(Interpretation.Unsure.class);
        assertUnderstood(
                LISTENER.hears(List.of(
                        Grammars.reading("calf thirteen heifer", 10), Grammars.reading("calf thirty heifer", 5.5))),
                "13",
                HEIFER);
    }

    @Test
    void two_readings_that_mean_the_same_are_no_doubt() {
        assertUnderstood(
                LISTENER.hears(List.of(
                        Grammars.reading("calf two oh seven heifer", 10),
                        Grammars.reading("calf two hundred seven heifer", 10))),
                "207",
                HEIFER);
    }

    @Test
    void a_control_that_could_be_another_one_is_not_obeyed() {
        assertThat(LISTENER.hears(
                        List.of(Grammars.reading("confirm entry", 10), Grammars.reading("cancel entry", 9.9))))
                .isInstanceOf(Interpretation.NoMatch.class);
    }

    // What must be asked.

    @Test
    void the_same_calf_needs_one_named_before() {
        assertThat(LISTENER.doubts("same calf heifer")).containsExactly(new Doubt.NoSameCalf());
        assertThat(LISTENER.afterACalfWasNamed().doubts("same calf heifer")).isEmpty();
    }

    @Test
    void a_new_calf_cannot_have_an_open_calfs_number() {
        assertThat(LISTENER.doubts("new calf twelve heifer")).containsExactly(new Doubt.AlreadyOpen("12"));
        assertThat(LISTENER.doubts("calf of cow four one seven is calf twelve"))
                .containsExactly(new Doubt.AlreadyOpen("12"));
        assertThat(LISTENER.doubts("new calf five one two")).containsExactly(new Doubt.AlreadyOpen("512"));
        assertThat(LISTENER.doubts("new calf five one three")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "calf twelve, 0",
        "calf twelve weight eighty eight, 0",
        "calf twelve heifer weight eighty eight, 1",
        "calf twelve heifer fed two, 1",
        "calf twelve heifer navel dipped ten, 2"
    })
    void a_sentence_that_is_not_at_its_end_keeps_its_whole_facts(String words, int facts) {
        assertThat(LISTENER.hears(words)).isInstanceOfSatisfying(Interpretation.Unsure.class, unsure -> {
            assertThat(unsure.isIncomplete()).isTrue();
            assertThat(unsure.best().calf()).isEqualTo(new CalfReference.Numbered("12"));
            assertThat(unsure.best().facts()).hasSize(facts);
            assertThat(unsure.words()).containsExactly(words.split(" "));
        });
    }

    @Test
    void a_calf_alone_that_is_not_on_the_list_is_asked_about_too() {
        assertThat(LISTENER.doubts("calf nineteen"))
                .containsExactlyInAnyOrder(new Doubt.Incomplete(), new Doubt.NotListed("19"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"calf", "heifer", "navel dipped", "what is", "the gate is open"})
    void half_a_sentence_without_a_calf_is_no_statement(String words) {
        assertThat(LISTENER.hears(words)).isInstanceOf(Interpretation.NoMatch.class);
    }

    /** The limits are those of the care room, with their sources there. */
    @ParameterizedTest
    @CsvSource({
        "calf twelve fed fifteen quarts, feed, 14.19529419",
        "calf twelve colostrum brix forty five, colostrum brix, 45",
        "calf twelve weight three ninety nine pounds, weight, 180.98335563",
        "calf twelve weight four hundred pounds, weight, 181.436948",
        "calf twelve temperature one hundred twenty, calf temperature, 48.89",
        "calf twelve heart rate twenty, heart rate, 20"
    })
    void an_implausible_value_is_asked_about(String words, String quantity, BigDecimal value) {
        assertThat(LISTENER.doubts(words)).singleElement().isInstanceOfSatisfying(Doubt.Implausible.class, doubt -> {
            assertThat(doubt.quantity()).isEqualTo(quantity);
            assertThat(doubt.value()).isEqualByComparingTo(value);
        });
    }

    @Test
    void milk_of_a_hydrometer_that_could_be_in_either_scale_is_asked_about() {
        assertThat(LISTENER.doubts("calf twelve hydrometer fifty in milk of thirty five degrees"))
                .containsExactly(new Doubt.UnknownScale(new BigDecimal("35")));
        assertThat(LISTENER.doubts("calf twelve hydrometer fifty in milk of thirty five degrees celsius"))
                .isEmpty();
    }

    @Test
    void an_implausible_reading_still_beats_a_worse_plausible_one_by_being_asked_about() {
        assertThat(LISTENER.doubts("calf twelve fed fifteen quarts")).hasSize(1);
        assertThat(LISTENER.doubts("calf twelve fed fifteen quarts", "calf twelve fed five quarts"))
                .isEmpty();
    }

    // Controls and free speech.

    @ParameterizedTest
    @CsvSource({
        "confirm entry, CONFIRM_ENTRY",
        "cancel entry, CANCEL_ENTRY",
        "repeat entry, REPEAT_ENTRY",
        "undo last entry, UNDO_LAST_ENTRY",
        "what is due, WHAT_IS_DUE",
        "print the card, PRINT_CARD",
        "put it off, PUT_IT_OFF",
        "pause recorder, PAUSE_RECORDER",
        "wake up recorder, WAKE_UP_RECORDER"
    })
    void a_control_is_heard(String words, Control control) {
        assertThat(LISTENER.hears(words)).isInstanceOfSatisfying(Interpretation.ControlHeard.class, heard -> {
            assertThat(heard.control()).isEqualTo(control);
            assertThat(heard.calf()).isNull();
        });
    }

    @ParameterizedTest
    @CsvSource({"how is calf twelve, HOW_IS_CALF", "print card for calf twelve, PRINT_CARD"})
    void a_control_names_its_calf(String words, Control control) {
        assertThat(LISTENER.hears(words)).isInstanceOfSatisfying(Interpretation.ControlHeard.class, heard -> {
            assertThat(heard.control()).isEqualTo(control);
            assertThat(heard.calf()).isEqualTo(new CalfReference.Numbered("12"));
        });
    }

    @Test
    void a_note_takes_any_words() {
        assertThat(LISTENER.facts("calf twelve note [unk] the gate is broken"))
                .extracting(SaidFact::event)
                .hasOnlyElementsOfType(VoiceNoteTaken.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"calf twelve note bull", "calf twelve heifer note navel dipped two quarts"})
    void a_note_of_fact_words_alone_is_no_free_speech(String words) {
        Interpretation meaning = LISTENER.hears(words);

        assertThat(meaning).isNotInstanceOf(Interpretation.Understood.class);
        if (meaning instanceof Interpretation.Unsure unsure) {
            assertThat(unsure.best().facts()).extracting(SaidFact::event).noneMatch(VoiceNoteTaken.class::isInstance);
        }
    }

    // The grammar as a whole.

    @Test
    void every_sentence_of_the_grammar_means_something() {
        long seed = 20260303;
        List<List<String>> sentences = new SentenceMaker(GRAMMAR).sample(GRAMMAR.ruleNamed("utterance"), 3_000, seed);
        List<String> lost = sentences.stream()
                .filter(sentence -> !isNoteOfFactWords(sentence))
                .map(sentence -> String.join(" ", sentence))
                .filter(words -> LISTENER.hears(words) instanceof Interpretation.NoMatch)
                .toList();

        assertThat(lost).as("seed %d", seed).isEmpty();
    }

    @Test
    void every_covering_sentence_of_the_grammar_means_something() {
        List<String> lost = new SentenceMaker(GRAMMAR)
                .cover(GRAMMAR.ruleNamed("utterance")).stream()
                        .filter(sentence -> !isNoteOfFactWords(sentence))
                        .map(sentence -> String.join(" ", sentence))
                        .filter(words -> LISTENER.hears(words) instanceof Interpretation.NoMatch)
                        .toList();

        assertThat(lost).isEmpty();
    }

    @Test
    void every_kind_of_fact_has_its_rule_and_is_said_by_some_sentence() {
        Set<String> rules =
                GRAMMAR.rules().stream().map(rule -> rule.id().name()).collect(Collectors.toSet());
        assertThat(rules).containsAll(StatementReader.factRules());

        RuleId utterance = GRAMMAR.ruleNamed("utterance");
        SentenceMaker maker = new SentenceMaker(GRAMMAR);
        GrammarMatcher matcher = new GrammarMatcher(GRAMMAR);
        Set<String> said = Stream.concat(maker.sample(utterance, 2_000, 5).stream(), maker.cover(utterance).stream())
                .flatMap(sentence -> matcher.match(utterance, sentence, 1).stream())
                .flatMap(ParseTree::descendants)
                .map(ParseTree::rule)
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(said).containsAll(StatementReader.factRules());
    }

    @Test
    void no_words_make_it_stumble() {
        long seed = 11;
        Random random = new Random(seed);
        List<String> words = Stream.concat(
                        GRAMMAR.tokens().stream(),
                        Grammars.source()
                                .text("decoys.txt")
                                .lines()
                                .filter(line -> !line.startsWith("#"))
                                .flatMap(line -> Stream.of(line.strip().split("\\s+")))
                                .filter(word -> !word.isEmpty()))
                .toList();
        for (int i = 0; i < 3_000; i++) {
            String said = (random.nextBoolean() ? "calf twelve " : "")
                    + IntStream.rangeClosed(0, random.nextInt(9))
                            .mapToObj(k -> words.get(random.nextInt(words.size())))
                            .collect(Collectors.joining(" "));
            Interpretation meaning = LISTENER.hears(said);

            assertThat(meaning.words()).as("seed %d", seed).containsExactly(said.split(" "));
        }
    }

    /** Talk of common words alone has no calf and no control in it, so it can never become a statement. */
    @Test
    void talk_without_our_words_is_never_a_statement() {
        long seed = 12;
        Random random = new Random(seed);
        List<String> words = Grammars.source()
                .text("decoys.txt")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .flatMap(line -> Stream.of(line.strip().split("\\s+")))
                .filter(word -> !word.isEmpty()
                        && !Set.of("calf", "same", "new", "barn", "batch").contains(word))
                .toList();
        for (int i = 0; i < 3_000; i++) {
            String said = IntStream.rangeClosed(0, 1 + random.nextInt(9))
                    .mapToObj(k -> words.get(random.nextInt(words.size())))
                    .collect(Collectors.joining(" "));

            assertThat(LISTENER.hears(said))
                    .as("seed %d, \"%s\"", seed, said)
                    .isInstanceOf(Interpretation.NoMatch.class);
        }
    }

    // Going on after a pause.

    @Test
    void what_follows_adds_its_facts() {
        assertThat(goOn(LISTENER.hears("calf twelve fed two quarts"), "left half a quart"))
                .isInstanceOfSatisfying(
                        Interpretation.Understood.class,
                        whole -> assertThat(whole.statement().facts())
                                .extracting(fact -> (Object) fact.event().getClass())
                                .containsExactly(ColostrumFed.class, ColostrumLeft.class));
    }

    @Test
    void what_follows_a_doubt_keeps_the_doubt() {
        assertThat(goOn(LISTENER.hears("calf nineteen heifer"), "navel dipped"))
                .isInstanceOfSatisfying(Interpretation.Unsure.class, whole -> {
                    assertThat(whole.doubts()).containsExactly(new Doubt.NotListed("19"));
                    assertThat(whole.best().facts()).hasSize(2);
                });
    }

    @Test
    void what_follows_is_judged_too() {
        assertThat(goOn(LISTENER.hears("calf twelve heifer"), "colostrum brix forty five"))
                .isInstanceOfSatisfying(
                        Interpretation.Unsure.class,
                        whole -> assertThat(whole.doubts()).hasOnlyElementsOfType(Doubt.Implausible.class));
    }

    @Test
    void nothing_follows_a_control_or_other_speech() {
        for (String before : List.of("confirm entry", "the gate is open", "calf twelve")) {
            assertThat(goesOn(before)).as(before).isFalse();
        }
    }

    private static boolean goesOn(String before) {
        return Listener.INTERPRETER
                .continued(
                        LISTENER.hears(before),
                        List.of(Grammars.reading("navel dipped", 0)),
                        LISTENER.speech(),
                        LISTENER.listening())
                .isPresent();
    }

    private static Interpretation goOn(Interpretation before, String words) {
        return Listener.INTERPRETER
                .continued(before, List.of(Grammars.reading(words, 0)), LISTENER.speech(), LISTENER.listening())
                .orElseThrow();
    }

    private static boolean isNoteOfFactWords(List<String> sentence) {
        Set<String> facts = GRAMMAR.tokens(List.of(GRAMMAR.ruleNamed("facts")));
        return Stream.of("note", "given")
                .filter(sentence::contains)
                .anyMatch(opening -> facts.containsAll(sentence.subList(sentence.indexOf(opening), sentence.size())));
    }

    private static void assertUnderstood(Interpretation meaning, String calf, SexNoted sex) {
        assertThat(meaning).isInstanceOfSatisfying(Interpretation.Understood.class, understood -> {
            assertThat(SpokenSentence.calfOf(understood.statement())).isEqualTo(calf);
            assertThat(understood.statement().facts())
                    .extracting(SaidFact::event)
                    .containsExactly(sex);
        });
    }
}
