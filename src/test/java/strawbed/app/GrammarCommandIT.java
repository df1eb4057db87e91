package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.WavFile;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.hearing.Phrasebook;
import strawbed.testkit.Grammars;
import strawbed.voice.FreeTtsVoice;

/** The command {@code strawbed grammar} as the farm's adviser uses it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GrammarCommandIT {
    @TempDir
    Path data;

    private FarmGrammarFiles farm;

    @BeforeEach
    void farm() {
        farm = new FarmGrammarFiles(data);
    }

    private CommandRun grammar(String... words) {
        return CommandRun.of(Stream.concat(Stream.of("grammar", "--data", data.toString()), Stream.of(words))
                .toArray(String[]::new));
    }

    private String said(String words) {
        Path file = data.resolve(words.replace(' ', '-') + ".wav");
        WavFile.write(file, new FreeTtsVoice().speak(words));
        return file.toString();
    }

    @Test
    void the_programs_own_grammar_is_fine_and_its_alike_words_are_shown() {
        CommandRun run = grammar("check");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("The program's own grammar; the farm has none.")
                .contains("ways to say something: without end; about ")
                .contains("jersey / guernsey")
                .contains("\"calf one breed jersey\" may be taken for \"calf one breed guernsey\"")
                .containsPattern("numbers, known and asked about: .*fifteen / fifty")
                .contains("OK, the speech model knows all words")
                .doesNotContain("nothing leads to");
        List<String> pairs = run.out()
                .lines()
                .filter(line -> line.contains("may be taken for"))
                .toList();
        assertThat(pairs).hasSizeBetween(1, 12).noneMatch(line -> line.contains("fifteen"));
        assertThat(data).as("nothing is stored").isEmptyDirectory();
    }

    @Test
    void a_word_that_the_model_lacks_comes_with_words_that_sound_like_it() throws IOException {
        farm.places("shorthorn pen | refractometer room");
        CommandRun run = grammar("check");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out())
                .contains("refractometer: no stand-in in lexicon.txt. Closest:")
                .containsPattern("refractometer = \\w+ \\w+.* [89][0-9]% alike");
        assertThat(run.err()).contains("1 word is unknown to the speech model", "lexicon.txt");
        String proposal = run.out()
                .lines()
                .filter(line -> line.contains("refractometer = "))
                .map(line -> line.replaceAll(" +[0-9]+% alike", "").strip())
                .findFirst()
                .orElseThrow();
        farm.edit("lexicon.txt", "colostrum = ", proposal + "\ncolostrum = ");
        CommandRun mended = grammar("check");
        assertThat(mended.code()).as(mended.out()).isZero();
    }

    @Test
    void a_stand_in_of_unknown_words_is_told() throws IOException {
        farm.edit("lexicon.txt", "cole ostrom", "cole ostromm");
        CommandRun run = grammar("check");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).contains("colostrum: its stand-in \"cole ostromm\" has a word that the model lacks");
    }

    @Test
    void mistakes_of_several_files_are_told_with_file_line_and_column() throws IOException {
        farm.edit("navel.abnf", "$agent = iodine", "$agent = (iodine");
        farm.edit("farm.abnf", "$place_name = $VOID", "$place_name = $vodi");
        farm.edit("lexicon.txt", "meconium = ", "meconium : ");
        CommandRun run = grammar("check");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err())
                .containsPattern("(?m)^navel.abnf:[0-9]+:[0-9]+: ")
                .containsPattern("(?m)^farm.abnf:11:[0-9]+: .*\\$vodi")
                .containsPattern("(?m)^lexicon.txt, line [0-9]+: ")
                .contains("3 faults. Mend them")
                .doesNotContain("\tat ");
    }

    @Test
    void a_tag_that_the_record_does_not_know_is_told_with_its_line() throws IOException {
        farm.edit("farm.abnf", "$dip_name = $VOID", "$dip_name = red dip {iodin}");
        CommandRun run = grammar("check");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("farm.abnf: line 16: the tag {iodin} of the rule $dip_name", "red dip");
    }

    @Test
    void what_nothing_leads_to_is_told_and_is_only_advice() throws IOException {
        farm.edit("farm.abnf", "public $dip_name = $VOID", "$lost = sick pen;\npublic $dip_name = $VOID");
        Files.copy(Path.of("grammar", "farm.abnf"), data.resolve("grammar").resolve("pens.abnf"));
        CommandRun run = grammar("check");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .containsPattern("farm.abnf:16:1: nothing leads to the rule \\$lost")
                .containsPattern("files that nothing refers to.*\n  pens.abnf\n");
    }

    @Test
    void another_folder_is_checked_and_one_that_is_not_there_is_refused() throws IOException {
        farm.places("$vodi");
        Path other = data.resolve("grammar");
        Path empty = Files.createDirectory(data.resolve("empty"));
        assertThat(grammar("check", empty.toString()).code()).isZero();
        assertThat(grammar("check", other.toString()).code()).isEqualTo(2);
        CommandRun none = grammar("check", data.resolve("none").toString());
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("There is no folder");
    }

    @Test
    void sentences_by_chance_are_of_the_grammar_and_the_same_for_the_same_seed() {
        CommandRun run = grammar("say", "20", "--seed", "5");
        assertThat(run.code()).as(run.err()).isZero();
        List<String> sentences = run.out().lines().toList();
        assertThat(sentences).hasSize(20);
        Grammar program = Phrasebook.grammar(Grammars.source());
        GrammarMatcher matcher = new GrammarMatcher(program);
        assertThat(sentences)
                .allSatisfy(sentence -> assertThat(matcher.match(program.root(), Arrays.asList(sentence.split(" ")), 1))
                        .as(sentence)
                        .isNotEmpty());
        assertThat(grammar("say", "20", "--seed", "5").out()).isEqualTo(run.out());
        assertThat(grammar("say", "20", "--seed", "6").out()).isNotEqualTo(run.out());
        assertThat(grammar("say").out().lines()).hasSize(10);
    }

    @Test
    void sentences_of_one_rule_can_be_asked_for() throws IOException {
        assertThat(grammar("say", "30", "--rule", "navel_fact").out().lines())
                .hasSize(30)
                .allMatch(sentence -> sentence.contains("navel"));
        CommandRun unknown = grammar("say", "--rule", "navle_fact");
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("There is no rule $navle_fact. Did you mean navel_fact?");
        CommandRun nothing = grammar("say", "--rule", "place_name");
        assertThat(nothing.code()).isEqualTo(2);
        assertThat(nothing.err()).contains("$place_name has nothing that can be said yet");
        farm.places("sick pen");
        assertThat(grammar("say", "2", "--rule", "place_name").out().lines()).containsExactly("sick pen", "sick pen");
        assertThat(grammar("say", "0").code()).isEqualTo(2);
    }

    @Test
    void a_file_is_shown_word_by_word_with_its_readings_and_the_verdict() throws IOException {
        CommandRun run = grammar(
                "try",
                said("calf twelve heifer navel dipped"),
                said("calf nine heifer navel dipped"),
                said("calf twelve moved to sick pen"),
                "--calves",
                "12,207");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .containsPattern(" [0-9.]+ to [0-9.]+ s  heifer\n")
                .containsPattern("[0-9.]+  calf twelve heifer navel dipped: is a whole sentence")
                .contains("verdict: understood, calf twelve heifer navel dipped")
                .contains("verdict: unsure, it would ask. calf nine heifer navel dipped", "Calf 9 is not on the list.")
                .contains("\" cannot follow \"");
        assertThat(run.out()).doesNotContain("[unk]");
        farm.places("sick pen");
        CommandRun named = grammar("try", said("calf twelve moved to sick pen"), "--calves", "12");
        assertThat(named.out()).contains("verdict: understood, calf twelve moved to sick pen");
        assertThat(data.resolve("record.db")).doesNotExist();
    }

    @Test
    void a_sound_that_fits_two_calves_is_shown_with_how_near_they_are() {
        CommandRun run = grammar("try", said("calf thirteen nursed the dam"), "--calves", "13,30");
        assertThat(run.out())
                .contains("verdict: unsure, it would ask. calf thir")
                .containsPattern("calf thir(ty|teen) nursed the dam is behind by [0-9.]+ only \\(limit [0-9.]+\\)");
    }

    @Test
    void trying_needs_a_grammar_that_can_be_used_and_a_sound_that_can_be_heard() throws IOException {
        CommandRun text = grammar("try", "--calves", "12", "README.md");
        assertThat(text.code()).isEqualTo(2);
        farm.places("$vodi");
        CommandRun run = grammar("try", "--calves", "12", said("calf twelve heifer"));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("cannot be used", "farm.abnf, line 11");
        assertThat(run.out()).doesNotContain("verdict");
    }
}
