package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.WavFile;
import strawbed.grammar.GrammarException;
import strawbed.grammar.GrammarMatcher;
import strawbed.hearing.Phrasebook;
import strawbed.voice.FreeTtsVoice;

/** What a start does with the farm's own grammar: a mistake in it never stops a night's work. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FarmWordsIT {
    @TempDir
    Path data;

    private FarmGrammarFiles farm;
    private Settings settings;

    @BeforeEach
    void farm() {
        farm = new FarmGrammarFiles(data);
        settings = Settings.of(Optional.of(data), Optional.empty());
    }

    /** A start of the recorder, and what it told. */
    private String start() {
        StringWriter told = new StringWriter();
        Stage.open(settings, Instant.parse("2026-03-03T05:30:00Z"), new PrintWriter(told, true))
                .close();
        return told.toString();
    }

    private static boolean canBeSaid(FarmWords words, String sentence) {
        var grammar = words.phrasebook().with(List.of("12")).grammar();
        return !new GrammarMatcher(grammar)
                .match(grammar.root(), List.of(sentence.split(" ")), 1)
                .isEmpty();
    }

    private Path sentences() {
        return data.resolve("grammar-sentences.txt");
    }

    @Test
    void sentences_of_the_farms_grammar_are_made_once_and_kept() throws IOException {
        farm.places("sick pen");
        assertThat(start()).isEmpty();
        String kept = Files.readString(sentences());
        assertThat(kept)
                .startsWith(Phrasebook.versionOf(settings.grammar()) + "\n")
                .contains("moved to sick pen");
        // A mark in the kept sentences shows that a later start takes them as they are.
        Files.writeString(sentences(), kept + "calf listedcalf kept words\n");
        assertThat(FarmWords.read(settings).phrasebook().prepared()).contains("calf listedcalf kept words\n");
        farm.places("sick pen | red barn");
        FarmWords changed = FarmWords.read(settings);
        assertThat(changed.phrasebook().prepared()).doesNotContain("kept words").contains("red barn");
        assertThat(start()).isEmpty();
        assertThat(Files.readString(sentences()))
                .startsWith(changed.phrasebook().version() + "\n")
                .isEqualTo(changed.phrasebook().prepared());
    }

    @Test
    void damaged_sentences_are_made_anew() throws IOException {
        farm.places("sick pen");
        Files.write(sentences(), new byte[] {(byte) 0xff, 0, (byte) 0xfe});
        assertThat(canBeSaid(FarmWords.read(settings), "calf twelve moved to sick pen"))
                .isTrue();
        assertThat(start()).isEmpty();
        assertThat(Files.readString(sentences())).contains("sick pen");
    }

    @Test
    void a_broken_grammar_starts_with_the_last_good_copy_and_says_what_is_wrong() throws IOException {
        farm.places("sick pen");
        assertThat(start()).isEmpty();
        farm.places("sick pen | (red barn");
        String told = start();
        assertThat(told)
                .contains("The farm's grammar in " + data.resolve("grammar") + " cannot be used: farm.abnf, line 11")
                .contains("The last good copy of it is used instead. Mend it;")
                .doesNotContain("\tat ");
        FarmWords words = FarmWords.read(settings);
        assertThat(canBeSaid(words, "calf twelve moved to sick pen")).isTrue();
        assertThat(Files.readString(data.resolve("grammar-last-good").resolve("farm.abnf")))
                .as("a broken one is never kept")
                .doesNotContain("(red barn");
        farm.places("sick pen | red barn");
        assertThat(start()).isEmpty();
        assertThat(canBeSaid(FarmWords.read(settings), "calf twelve moved to red barn"))
                .isTrue();
    }

    @Test
    void without_a_good_copy_it_starts_with_the_programs_own() throws IOException {
        farm.places("$vodi");
        assertThat(start())
                .contains("farm.abnf, line 11", "The program's own grammar is used instead, without the farm's words.");
        assertThat(data.resolve("grammar-last-good")).doesNotExist();
        assertThat(sentences()).doesNotExist();
        assertThat(canBeSaid(FarmWords.read(settings), "calf twelve heifer")).isTrue();
    }

    @Test
    void a_good_copy_that_was_broken_too_gives_way_to_the_programs_own() throws IOException {
        farm.places("sick pen");
        assertThat(start()).isEmpty();
        farm.places("$vodi");
        Files.writeString(data.resolve("grammar-last-good").resolve("farm.abnf"), "nothing");
        assertThat(start())
                .contains("The last good copy cannot be used either: farm.abnf")
                .contains("The program's own grammar is used instead");
    }

    @Test
    void a_word_that_the_model_lacks_does_not_stop_the_start_either() throws IOException {
        farm.places("sick pen");
        assertThat(start()).isEmpty();
        farm.places("sick pen | refractometer");
        assertThat(start()).contains("the speech model does not know refractometer", "The last good copy");
    }

    @Test
    void a_tag_that_the_record_does_not_know_does_not_wait_until_it_is_said() throws IOException {
        farm.edit("farm.abnf", "$dip_name = $VOID", "$dip_name = red dip {iodin}");
        assertThat(start())
                .contains("farm.abnf: line 16: the tag {iodin}", "The program's own grammar is used instead");
    }

    @Test
    void a_faulty_list_of_stand_ins_is_a_fault_of_the_grammar() throws IOException {
        farm.edit("lexicon.txt", "meconium = ", "meconium : ");
        assertThat(start()).contains("lexicon.txt, line ", "The program's own grammar is used instead");
    }

    @Test
    void what_is_edited_while_it_runs_counts_from_the_next_start_on() throws IOException {
        farm.places("sick pen");
        FarmWords running = FarmWords.read(settings);
        farm.places("$vodi");
        assertThat(canBeSaid(running, "calf twelve moved to sick pen")).isTrue();
    }

    @Test
    void a_file_that_the_farm_took_away_again_leaves_the_good_copy_too() throws IOException {
        farm.places("sick pen");
        farm.edit("navel.abnf", "navel dipped |", "navel dipped | navel done |");
        assertThat(start()).isEmpty();
        Path kept = data.resolve("grammar-last-good");
        assertThat(kept.resolve("navel.abnf")).exists();
        Files.delete(data.resolve("grammar").resolve("navel.abnf"));
        assertThat(start()).isEmpty();
        assertThat(kept.resolve("navel.abnf")).doesNotExist();
        assertThat(kept.resolve("farm.abnf")).exists();
    }

    @Test
    void a_copy_of_the_programs_files_needs_no_sentences_of_its_own() throws IOException {
        farm.edit("farm.abnf", "$place_name", "$place_name");
        assertThat(start()).isEmpty();
        assertThat(sentences()).doesNotExist();
    }

    @Test
    void hearing_files_goes_on_too_and_commands_about_the_grammar_do_not() throws IOException {
        farm.places("$vodi");
        Path file = data.resolve("said.wav");
        WavFile.write(file, new FreeTtsVoice().speak("calf twelve heifer navel dipped"));
        CommandRun heard = CommandRun.of("hear", file.toString(), "--calves", "12", "--data", data.toString());
        assertThat(heard.code()).as(heard.err()).isZero();
        assertThat(heard.out()).contains("understood", "calf twelve heifer navel dipped");
        assertThat(heard.err()).contains("farm.abnf, line 11");
        assertThat(data.resolve("grammar-last-good")).as("nothing is stored").doesNotExist();
        assertThat(CommandRun.of("grammar", "check", "--data", data.toString()).code())
                .isEqualTo(2);
        String main = data.resolve("grammar").resolve("farm.abnf").toString();
        CommandRun given = CommandRun.of("hear", "--grammar", main, file.toString());
        assertThat(given.code()).isEqualTo(2);
        assertThat(given.err()).contains("farm.abnf, line 11");
    }

    @Test
    void a_folder_that_cannot_be_written_is_told_and_stops_nothing() throws IOException {
        farm.places("sick pen");
        Files.writeString(data.resolve("grammar-last-good"), "a file where the folder should be");
        assertThat(start()).contains("could not be kept as the last good one", "It is in use");
    }

    @Test
    void only_the_programs_own_grammar_has_nothing_to_fall_back_on() {
        FarmWords words = FarmWords.read(settings);
        GrammarException fault = new GrammarException("lexicon.txt", "no word is known");
        assertThatThrownBy(() -> words.insteadOf(fault)).isSameAs(fault);
    }
}
