package strawbed.protocol.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.protocol.Protocol;
import strawbed.protocol.Section;
import strawbed.protocol.Setting;

/** Forms of TOML are those of its specification, version 1.0.0. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProtocolFileTest {
    private static final String USUAL = ProtocolFile.text(Protocol.usual());

    @TempDir
    Path folder;

    @Test
    void the_usual_protocol_is_written_and_read_back() {
        assertThat(Read.good(USUAL)).isEqualTo(Protocol.usual());
    }

    @Test
    void a_changed_protocol_is_written_and_read_back() {
        Protocol protocol = Protocol.of(Map.of(
                "breathing_again_minutes", "0.5",
                "repeat_dip", "no",
                "watch_minutes", "15, 30.5, 1440",
                "counted", "head up, no limp",
                "units", "metric",
                "plasma_liters_per_kilogram", "0.085"));
        assertThat(Read.good(ProtocolFile.text(protocol))).isEqualTo(protocol);
        Protocol noSigns = Protocol.of(Map.of("counted", ""));
        assertThat(Read.good(ProtocolFile.text(noSigns)).signs()).isEmpty();
    }

    @Test
    void every_line_fits_and_every_setting_tells_reason_source_range_and_usual_value() {
        assertThat(USUAL.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(110));
        List<String> lines = USUAL.lines().toList();
        for (Section section : Section.values()) {
            int at = lines.indexOf("[" + section.key() + "]");
            assertThat(lines.get(at - 1)).isEqualTo("# " + section.title());
        }
        String flowing = USUAL.replace("\n# ", " ");
        for (Setting setting : Setting.values()) {
            assertThat(flowing)
                    .as(setting.key())
                    .containsPattern(Pattern.compile(
                            Pattern.quote(setting.reason() + " Source: " + setting.source() + ".")
                                    + " [^\n]*Usual: [^\n]+\\.\n" + setting.key() + " = ",
                            Pattern.CASE_INSENSITIVE))
                    .containsIgnoringCase(setting.allowed().words() + ". Usual: ");
        }
    }

    @Test
    void the_head_says_whose_file_it_is_how_to_check_it_and_what_the_program_does_not_do() {
        String head = USUAL.substring(0, USUAL.indexOf('[')).replace("\n# ", " ");
        assertThat(head)
                .contains(
                        "the farm and its herd veterinarian",
                        "strawbed protocol check",
                        "no diagnosis and names no dose",
                        "by the protocol of its time");
    }

    @Test
    void an_empty_file_and_a_missing_setting_mean_the_usual_values() {
        assertThat(Read.good("")).isEqualTo(Protocol.usual());
        assertThat(Read.good("# nothing\n\n[navel]\n")).isEqualTo(Protocol.usual());
        Protocol one = Read.good("[navel]\nfirst_dip_minutes = 45\n");
        assertThat(one.changed()).containsExactly(Setting.FIRST_DIP_MINUTES);
    }

    @Test
    void numbers_stay_the_decimal_numbers_that_were_written() {
        Protocol protocol = Read.good("""
                [serum]
                plasma_liters_per_kilogram = 0.09
                [colostrum]
                best_within_hours = 0.1e1 # remark
                target_within_hours=2.000001
                [hard_birth]
                watch_minutes = [
                  30.1, # first
                  60,
                  2_40.5,
                ]
                """);
        assertThat(protocol.number(Setting.PLASMA_LITERS_PER_KILOGRAM)).isEqualTo(new BigDecimal("0.09"));
        assertThat(protocol.value(Setting.BEST_WITHIN_HOURS)).isEqualTo("1");
        assertThat(protocol.value(Setting.TARGET_WITHIN_HOURS)).isEqualTo("2.000001");
        assertThat(protocol.value(Setting.WATCH_MINUTES)).isEqualTo("30.1, 60, 240.5");
    }

    /** Inline tables, dotted and quoted keys, hexadecimal and literal strings: sections 3 and 12 of the specification. */
    @Test
    void every_form_of_the_format_is_read() {
        Protocol protocol = Read.good("""
                navel = { "first_dip_minutes" = 4_5.5, repeat_dip = 'no' }
                colostrum.'best_within_hours' = 0.75
                pen . tag_and_weigh_hours = 0x10
                """);
        assertThat(protocol.time(Setting.FIRST_DIP_MINUTES)).isEqualTo(Duration.ofSeconds(45 * 60 + 30));
        assertThat(protocol.isOn(Setting.REPEAT_DIP)).isFalse();
        assertThat(protocol.value(Setting.BEST_WITHIN_HOURS)).isEqualTo("0.75");
        assertThat(protocol.value(Setting.TAG_AND_WEIGH_HOURS)).isEqualTo("16");
    }

    @Test
    void line_ends_of_windows_and_a_mark_before_the_text_do_no_harm() {
        assertThat(Read.good("\uFEFF" + USUAL.replace("\n", "\r\n"))).isEqualTo(Protocol.usual());
    }

    @Test
    void any_protocol_that_can_be_survives_its_file() {
        for (long seed = 0; seed < 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Map<String, String> values = new HashMap<>();
            for (Setting setting : Setting.values()) {
                Map<String, String> more = new HashMap<>(values);
                more.put(setting.key(), Values.any(setting, random));
                if (Protocol.faults(more).isEmpty()) {
                    values = more;
                }
            }
            Protocol protocol = Protocol.of(values);
            assertThat(protocol.changed()).as("seed %d", seed).isNotEmpty();
            assertThat(Read.good(ProtocolFile.text(protocol)))
                    .as("seed %d", seed)
                    .isEqualTo(protocol);
        }
    }

    @Test
    void a_file_is_written_whole_and_never_over_another() throws IOException {
        Path file = folder.resolve("new").resolve("farm").resolve("protocol.toml");
        ProtocolFile.write(file, Protocol.usual());
        assertThat(file).hasContent(USUAL);
        assertThat(file.getParent()).isDirectoryContaining(entry -> entry.equals(file));
        try (var entries = Files.list(file.getParent())) {
            assertThat(entries).containsExactly(file);
        }
        Files.writeString(file, "ours");
        assertThatThrownBy(() -> ProtocolFile.write(file, Protocol.usual()))
                .isInstanceOf(ProtocolFileException.class)
                .hasMessageContaining("is there already and was left as it is");
        assertThat(file).hasContent("ours");
        try (var entries = Files.list(file.getParent())) {
            assertThat(entries).containsExactly(file);
        }
    }

    @Test
    void a_file_that_cannot_be_written_is_told_with_what_to_do() throws IOException {
        Path inTheWay = Files.createFile(folder.resolve("in-the-way"));
        assertThatThrownBy(() -> ProtocolFile.write(inTheWay.resolve("x").resolve("protocol.toml"), Protocol.usual()))
                .isInstanceOf(ProtocolFileException.class)
                .hasMessageContaining("in-the-way");
    }

    @Test
    void what_is_no_text_file_is_told_in_a_sentence() throws IOException {
        assertThat(Read.faults(ProtocolFile.read(folder.resolve("none.toml"))))
                .singleElement()
                .asString()
                .contains("there is no file");
        assertThat(Read.faults(ProtocolFile.read(folder)))
                .singleElement()
                .asString()
                .contains("is a folder, but must be a file");
        Path latin = Files.write(
                folder.resolve("latin.toml"), "[navel]\n# f\u00fcr\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(Read.faults(ProtocolFile.read(latin)))
                .containsExactly("line 2: the byte FC here is not UTF-8. Save the file as UTF-8 text.");
        Path utf16 = Files.write(folder.resolve("utf16.toml"), USUAL.getBytes(StandardCharsets.UTF_16));
        assertThat(Read.faults(ProtocolFile.read(utf16)))
                .containsExactly("line 1: the byte FE here is not UTF-8. Save the file as UTF-8 text.");
        Path large = Files.write(folder.resolve("large.toml"), new byte[1_000_001]);
        assertThat(Read.faults(ProtocolFile.read(large)))
                .singleElement()
                .asString()
                .contains("too large");
    }
}
