package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.voice.FreeTtsVoice;

/** The commands as a person or a script uses them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CommandsIT {
    @TempDir
    Path folder;

    private record Outcome(int code, String out, String err) {}

    private static Outcome run(Object... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> words = new ArrayList<>();
        for (Object arg : args) {
            words.add(String.valueOf(arg));
        }
        int code = Main.run(new PrintWriter(out, true), new PrintWriter(err, true), words.toArray(String[]::new));
        return new Outcome(code, out.toString(), err.toString());
    }

    private Path data() {
        return folder.resolve("data");
    }

    private Path said(String words) {
        Path file = folder.resolve(words.replace(' ', '-').replace('\'', '-') + ".wav");
        Sound voice = new FreeTtsVoice().speak(words);
        WavFile.write(file, voice);
        return file;
    }

    private static Map<String, Object> json(String line) {
        try {
            return JSON.std.mapFrom(line);
        } catch (IOException e) {
            throw new AssertionError("not JSON: " + line, e);
        }
    }

    private static void clearError(Outcome outcome, String... parts) {
        assertThat(outcome.code()).as(outcome.err()).isEqualTo(2);
        assertThat(outcome.err()).contains(parts).doesNotContain("\tat ").doesNotContain("Exception");
    }

    @Test
    void a_statement_in_a_file_becomes_one_json_line() {
        Outcome outcome =
                run("hear", "--json", "--calves", "12,207", "--data", data(), said("calf twelve heifer navel dipped"));
        assertThat(outcome.code()).as(outcome.err()).isZero();
        Map<String, Object> line = json(outcome.out().strip());
        assertThat(line)
                .containsEntry("verdict", "understood")
                .containsEntry("calf", "12")
                .containsEntry("control", null)
                .containsEntry("words", "calf twelve heifer navel dipped")
                .containsEntry("sound", "good")
                .containsEntry(
                        "events", List.of(Map.of("type", "SexNoted", "sex", "female"), Map.of("type", "NavelDipped")));
        assertThat(line.keySet())
                .containsExactly(
                        "file", "from", "to", "words", "verdict", "calf", "control", "events", "tags", "sound");
        assertThat(data()).as("nothing is stored").doesNotExist();
    }

    @Test
    void a_number_that_is_not_listed_is_unsure_and_a_control_has_its_name() {
        Outcome outcome = run(
                "hear",
                "--json",
                "--calves",
                "207",
                said("calf twelve heifer navel dipped"),
                said("confirm entry"),
                "--data",
                data());
        List<Map<String, Object>> lines =
                outcome.out().lines().map(CommandsIT::json).toList();
        assertThat(lines.get(0)).containsEntry("verdict", "unsure");
        assertThat(lines.get(1)).containsEntry("verdict", "understood").containsEntry("control", "confirm entry");
    }

    @Test
    void another_grammar_gives_its_rules_and_tags() throws IOException {
        Path grammar = folder.resolve("lamp.abnf");
        Files.writeString(grammar, """
                #ABNF 1.0 UTF-8;
                language en-US;
                root $command;
                tag-format <semantics/1.0-literals>;
                public $command = turn the $lamp $state;
                $lamp = (red | big red) lamp {red} | green lamp {green};
                $state = on {1} | off {0};
                """);
        Outcome outcome = run("hear", "--json", "--grammar", grammar, said("turn the green lamp off"));
        assertThat(outcome.code()).as(outcome.err()).isZero();
        Map<String, Object> line = json(outcome.out().strip());
        assertThat(line).containsEntry("verdict", "understood").containsEntry("events", List.of());
        List<Map<String, Object>> tags = tags(line);
        assertThat(tags).extracting(tag -> tag.get("rule")).containsExactly("command", "lamp", "state");
        assertThat(tags).extracting(tag -> tag.get("tag")).containsExactly(null, "green", "0");
        assertThat(tags)
                .extracting(tag -> tag.get("words"))
                .containsExactly("turn the green lamp off", "green lamp", "off");
    }

    @SuppressWarnings("unchecked") // jackson-jr gives lists of maps for arrays of objects
    private static List<Map<String, Object>> tags(Map<String, Object> line) {
        return (List<Map<String, Object>>) Objects.requireNonNull(line.get("tags"));
    }

    @Test
    void the_demo_night_is_heard_confirmed_and_printed() throws IOException {
        Path cards = folder.resolve("cards");
        Outcome outcome = run("demo", "--at", "2026-03-03T05:30", "--out", cards, "--data", data());
        assertThat(outcome.code()).as(outcome.err()).isZero();
        assertThat(outcome.out())
                .contains("Saved. Calf 312.")
                .contains("Not breathing well.")
                .contains("something that is no statement")
                .contains("Undone.")
                .contains("Due now and next");
        Outcome calves = run("calves", "--json", "--data", data());
        assertThat(calves.out().lines().map(CommandsIT::json).map(calf -> calf.get("calf")))
                .containsExactly("312", "315", "313", "314");
        byte[] card = Files.readAllBytes(cards.resolve("card-calf-312.pdf"));
        try (var pdf = Loader.loadPDF(card)) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("312", "HEIFER", "3.5 quarts", "24.5");
        }
        Path again = folder.resolve("again.pdf");
        assertThat(run("card", "312", "-o", again, "--data", data()).code()).isZero();
        assertThat(again).exists();
        Outcome check = run("--data", data(), "check");
        assertThat(check.out())
                .contains("speech model: OK", "grammar: OK", "record: OK")
                .containsPattern("protocol: OK, version [0-9a-f]{8}, 0 settings changed from the usual\n");
        assertThat(run("protocol", "check", "--data", data()).code()).isZero();
        Files.writeString(data().resolve("protocol.toml"), "[navel]\nfirst_dip_minutes = 500\n");
        Outcome broken = run("--data", data(), "check");
        assertThat(broken.code()).isEqualTo(1);
        assertThat(broken.out()).contains("has 1 fault. Mend it:", "line 2: first_dip_minutes is 500");
        Outcome nextNight = run("demo", "--at", "2026-03-04T05:30", "--out", cards, "--data", data());
        assertThat(nextNight.code()).as(nextNight.err()).isZero();
        assertThat(nextNight.err()).contains("has 1 fault. Protocol ", " stays in force.", "line 2: first_dip_minutes");
    }

    @Test
    void what_is_not_a_sound_file_gives_a_sentence_and_the_others_are_heard() throws IOException {
        Path text = Files.writeString(folder.resolve("text.wav"), "this is not a sound");
        Path empty = Files.createFile(folder.resolve("empty.wav"));
        Path silent = folder.resolve("silent.wav");
        WavFile.write(silent, Sound.of(new short[32_000], 0));
        Outcome outcome = run(
                "hear",
                "--json",
                "--calves",
                "12",
                text,
                empty,
                silent,
                folder.resolve("none.wav"),
                said("calf twelve heifer"));
        clearError(outcome, "text.wav", "empty.wav", "silent.wav", "none.wav");
        assertThat(json(outcome.out().strip())).containsEntry("verdict", "understood");
    }

    @Test
    void random_bytes_never_do_more_than_say_what_they_are() throws IOException {
        SplittableRandom random = new SplittableRandom(7);
        List<Object> args = new ArrayList<>(List.of("hear", "--calves", "12"));
        for (int i = 0; i < 20; i++) {
            byte[] bytes = new byte[random.nextInt(4000)];
            random.nextBytes(bytes);
            if (i % 2 == 0 && bytes.length > 12) {
                System.arraycopy("RIFF".getBytes(StandardCharsets.US_ASCII), 0, bytes, 0, 4);
                System.arraycopy("WAVEfmt ".getBytes(StandardCharsets.US_ASCII), 0, bytes, 8, 4);
            }
            args.add(Files.write(folder.resolve("random" + i + ".wav"), bytes));
        }
        clearError(run(args.toArray()), "random0.wav", "random19.wav");
    }

    @Test
    void a_grammar_with_a_mistake_says_where() throws IOException {
        Path file = said("calf twelve heifer");
        Path grammar = folder.resolve("bad.abnf");
        Files.writeString(grammar, "#ABNF 1.0;\nlanguage en-US;\nroot $a;\n$a = go $b;\n");
        clearError(run("hear", "--grammar", grammar, file), "bad.abnf, line 4", "$b");
        Files.writeString(grammar, "#ABNF 1.0;\nlanguage en-US;\nroot $a;\n$a = $a go | stop;\n");
        clearError(run("hear", "--grammar", grammar, file), "bad.abnf, line 4");
        Files.writeString(grammar, "#ABNF 1.0;\nlanguage en-US;\nroot $a;\n$a = colostrum please;\n");
        clearError(run("hear", "--grammar", grammar, file), "colostrum");
        clearError(run("hear", "--grammar", folder.resolve("no.abnf"), file), "no.abnf");
    }

    @Test
    void bad_use_is_told_in_a_sentence() {
        clearError(run("hear"), "FILE.wav");
        clearError(run("hear", "--calves", "twelve", said("calf twelve heifer")), "twelve");
        clearError(run("sing"), "sing");
        clearError(run("card", "99", "--data", data()), "There is no calf 99");
        clearError(run("demo", "--at", "tomorrow"), "tomorrow");
        assertThat(run("--help").out())
                .contains(
                        "demo",
                        "hear",
                        "listen",
                        "calves",
                        "card",
                        "handover",
                        "crib",
                        "herd",
                        "protocol",
                        "check",
                        "backup",
                        "restore");
        assertThat(run("hear", "--help").out()).contains("--grammar");
    }

    @Test
    void a_record_that_cannot_be_used_is_told_and_not_touched() throws IOException {
        Path file = Files.createFile(folder.resolve("a-file"));
        clearError(run("demo", "--data", file, "--out", folder.resolve("c")), "a-file");
        Path broken = Files.createDirectories(folder.resolve("broken"));
        Files.writeString(broken.resolve("record.db"), "this is no record, but somebody's own text file, long enough");
        clearError(run("calves", "--data", broken), "record.db");
        assertThat(Files.readString(broken.resolve("record.db"))).startsWith("this is no record");
    }

    @Test
    void the_packed_jar_runs_by_itself() throws Exception {
        Path jar = Path.of(System.getProperty("strawbed.jar", ""));
        assertThat(jar).isRegularFile();
        String text = packed(jar, "demo", "--out", folder.resolve("jar-cards").toString());
        assertThat(text).contains("Saved. Calf 312.", "card-calf-312.pdf");
        Path ours = Files.writeString(folder.resolve("ours.toml"), "[navel]\nfirst_dip_minutes = 45\n");
        assertThat(packed(jar, "protocol", "check", ours.toString()))
                .contains("OK, version", "1 setting changed", "first_dip_minutes");
    }

    private String packed(Path jar, String... words) throws Exception {
        Path log = folder.resolve("log.txt");
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", jar.toString()));
        command.addAll(List.of(words));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        String text = Files.readString(log);
        assertThat(process.exitValue()).as(text).isZero();
        return text;
    }
}
