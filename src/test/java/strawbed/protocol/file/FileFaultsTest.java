package strawbed.protocol.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import strawbed.protocol.Allowed;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

/** Every kind of mistake in the file is told with its line and what to do. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FileFaultsTest {
    private static final String USUAL = ProtocolFile.text(Protocol.usual());

    @Test
    void a_value_out_of_range_tells_line_setting_value_and_range() {
        assertThat(Read.faults("# ours\n[navel]\n\nfirst_dip_minutes = 500\n"))
                .containsExactly("line 4: first_dip_minutes is 500, but must be a number from 5 to 120. Change it, or"
                        + " take it out for the usual value: 30.");
    }

    /** Line breaks are written as /; the fault is the only one. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '~',
            quoteCharacter = '`',
            value = {
                // Another kind of value.
                "[navel]/first_dip_minutes = \"30\"~2~is \"30\", but must be a number from 5 to 120, without quotation",
                "[navel]/first_dip_minutes = true~2~is true, but must be a number from 5 to 120.",
                "[navel]/first_dip_minutes = [30]~2~is [30], but must be a number",
                "[navel]/first_dip_minutes = 2026-11-25~2~is 2026-11-25, but must be a number",
                "[navel]/first_dip_minutes = nan~2~is NaN, but must be a number from 5 to 120",
                "[navel]/first_dip_minutes = inf~2~is Infinity, but must be a number from 5 to 120",
                "[navel]/first_dip_minutes = { a = 1 }~2~is a section, but must be a number",
                "[navel]/first_dip_minutes = -30~2~is -30, but must be a number from 5 to 120",
                "[navel]/first_dip_minutes = 1e300~2~is 1E+300, but must be a number from 5 to 120",
                "[navel]/iodine_percent = 1e-300~2~but must be a number from 0 to 10, with at most 6 decimals",
                "[navel]/iodine_percent = 7.0000001~2~is 7.0000001, but must be a number from 0 to 10, with at most 6",
                "[navel]/repeat_dip = true~2~is true, but must be yes or no, in quotation marks",
                "[navel]/repeat_dip = \"maybe\"~2~is \"maybe\", but must be yes or no",
                "[shown]/units = \"us\"~2~is \"us\", but must be one of: as spoken, US, metric",
                "[hard_birth]/watch_minutes = 30~2~is 30, but must be one to 8 numbers from 5 to 1440",
                "[hard_birth]/watch_minutes = 30~2~as a list in square brackets",
                "[hard_birth]/watch_minutes = [30, \"60\"]~2~is [30, \"60\"], but must be one to 8 numbers",
                "[hard_birth]/watch_minutes = [60, 30]~2~each greater than the one before",
                "[hard_birth]/watch_minutes = [30, 2000.5]~2~is [30, 2000.5], but must be",
                "[hard_birth]/watch_minutes = []~2~is [], but must be one to 8 numbers",
                "[signs]/counted = [\"head up, standing\"]~2~each in quotation marks",
                "[signs]/counted = [\"head up\", 3]~2~each in quotation marks",
                "[signs]/counted = [\"tail\"]~2~is [\"tail\"], but must be any of: breathing, head up",
                "[signs]/counted = [\"head up\", \"head up\"]~2~but must be any of",
                // Names that do not exist, or stand in another place.
                "[navel]/first_dip_minute = 30~2~there is no setting first_dip_minute. Did you mean first_dip_minutes?",
                "[navel]/paint_the_barn = 30~2~there is no setting paint_the_barn. \"strawbed protocol show\" lists",
                "first_dip_minutes = 30~1~first_dip_minutes stands before the first section, but belongs in [navel]",
                "[pen]/first_dip_minutes = 30~2~first_dip_minutes stands in [pen], but belongs in [navel]. Move it",
                "/[nave]/first_dip_minutes = 30~2~there is no section [nave]. Did you mean [navel]?",
                "[paint]~1~there is no section [paint]. \"strawbed protocol show\" lists",
                "navel = 3~1~navel is the name of a section. Write [navel] on a line of its own",
                "[[navel]]/first_dip_minutes = 30~1~navel is the name of a section",
                "dips = 3~1~there is no setting dips",
                // Twice.
                "[navel]/repeat_dip = \"no\"/repeat_dip = \"yes\"~3~repeat_dip stands twice, first in line 2. Keep one",
                "[navel]/[pen]/[navel]~3~[navel] stands twice, first in line 1. Keep one",
                // Out of order; what is not set has its usual value.
                "[colostrum]/target_within_hours = 0.75~2~target_within_hours is 0.75, but must be more than"
                        + " best_within_hours, which is 1. Change one of them. What the file leaves out",
                "[colostrum]/low_below_brix_percent = 22~2~good_from_brix_percent is 22, but must be more than"
                        + " low_below_brix_percent, which is 22. Change one of them. What the file leaves out",
                "[warmth]/warm_from_fahrenheit = 100/cold_below_fahrenheit = 101~3~warm_from_fahrenheit is 100, but must"
                        + " be more than cold_below_fahrenheit, which is 101. Change one of them.",
                // No TOML.
                "[navel~1~the line ends too early. A closing ] is missing.",
                "[navel]/repeat_dip = yes~2~this cannot be read: yes. Put yes and no in quotation marks",
                "[navel]/first_dip_minutes =~2~the line ends too early. A value is a number, a text in quotation marks",
                "[navel]/first_dip_minutes = thirty~2~this cannot be read: thirty. A value is a number",
                "[navel]/first_dip_minutes 30~2~this cannot be read: 30. Between a name and its value stands =",
                "[colostrum]/best_within_hours = 0,5~2~this cannot be read: ,5. A number is written with a point",
                "[colostrum]/best_within_hours = .5~2~this cannot be read: .5. A number has a digit before its point",
                "[colostrum]/best_within_hours = 01~2~no zero in front",
                "[navel]/first_dip_minutes = 30 minutes~2~this cannot be read: minutes. One line has one setting",
                "[shown]/units = \"metric~2~the line ends too early. A closing quotation mark is missing.",
                "[hard_birth]/watch_minutes = [30, 60/dry = 3~3~A closing ] is missing.",
                "= 30~1~this cannot be read: = 30. Write a section as [navel]",
                "[navel]/first_dip_minutes = 99999999999999999999~2~Nobody measures such a number.",
                "[navel]/iodine_percent = 1e-400~2~Nobody measures such a number.",
            })
    void a_mistake_is_told_with_its_line(String text, int line, String part) {
        assertThat(Read.faults(text.replace('/', '\n')))
                .singleElement()
                .asString()
                .startsWith("line " + line + ": ")
                .contains(part);
    }

    @Test
    void all_mistakes_are_told_at_once_in_the_order_of_their_lines() {
        assertThat(Read.faults("""
                        units = "metric"
                        [navel]
                        first_dip_minutes = 500
                        dry_minutes = 1
                        [colostrum]
                        best_within_hours = 3
                        target_within_hours = 2
                        """))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("line 1: units stands before the first section"),
                        second -> assertThat(second).startsWith("line 3: first_dip_minutes is 500"),
                        third -> assertThat(third).startsWith("line 4: dry_minutes stands in [navel]"),
                        fourth -> assertThat(fourth).startsWith("line 4: dry_minutes is 1,"),
                        fifth -> assertThat(fifth).startsWith("line 6: best_within_hours is 3,"));
    }

    @Test
    void a_line_that_cannot_be_read_makes_no_other_line_look_wrong() {
        assertThat(Read.faults("""
                        navel]
                        first_dip_minutes = 30
                        repeat_dip = "perhaps"
                        """))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("line 1: this cannot be read"),
                        second -> assertThat(second).startsWith("line 3: repeat_dip is \"perhaps\""));
    }

    @Test
    void a_text_that_is_no_protocol_at_all_is_told_shortly() {
        assertThat(Read.faults("Dear vet, this is a letter.\n".repeat(500)))
                .hasSize(21)
                .last()
                .asString()
                .contains("others below");
        assertThat(Read.faults("a = " + "[".repeat(200_000))).isNotEmpty();
    }

    /** A file of the usual values with one value changed, and the line where it stands. */
    private record Changed(String text, int line) {
        static Changed of(Setting setting, String toml) {
            List<String> lines = USUAL.replaceAll("(?s)counted = \\[.*?]", "counted = []")
                    .lines()
                    .toList();
            int at = 0;
            while (!lines.get(at).startsWith(setting.key() + " = ")) {
                at++;
            }
            String before = String.join("\n", lines.subList(0, at));
            String after = String.join("\n", lines.subList(at + 1, lines.size()));
            return new Changed(before + "\n" + setting.key() + " = " + toml + "\n" + after + "\n", at + 1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void its_usual_value_its_least_and_its_greatest_are_accepted_and_just_outside_is_refused(Setting setting) {
        Allowed allowed = setting.allowed();
        accepts(setting, TomlValue.of(setting, allowed.usual()));
        if (allowed instanceof Allowed.Amount amount) {
            accepts(setting, amount.least().toPlainString());
            accepts(setting, amount.greatest().toPlainString());
            BigDecimal step = new BigDecimal("0.000001");
            refuses(setting, amount.least().subtract(step).toPlainString());
            refuses(setting, amount.greatest().add(step).toPlainString());
        } else if (allowed instanceof Allowed.Ascending list) {
            accepts(setting, "[" + list.least() + "]");
            accepts(setting, "[" + list.least() + ", " + list.greatest() + "]");
            accepts(setting, "[11, 12, 13, 14, 15, 16, 17, 18]");
            refuses(setting, "[11, 12, 13, 14, 15, 16, 17, 18, 19]");
            refuses(setting, "[" + list.least().subtract(BigDecimal.ONE) + "]");
            refuses(setting, "[" + list.greatest().add(BigDecimal.ONE) + "]");
            refuses(setting, "[30, 30]");
        } else if (allowed instanceof Allowed.Word word) {
            word.choices().forEach(choice -> accepts(setting, "\"" + choice + "\""));
            refuses(setting, "\"" + word.choices().get(0) + "s\"");
        } else if (allowed instanceof Allowed.Words words) {
            words.choices().forEach(choice -> accepts(setting, "[\"" + choice + "\"]"));
            accepts(setting, "[]");
            refuses(setting, "[\"" + words.choices().get(0) + "s\"]");
        } else {
            Stream.of("\"yes\"", "\"no\"").forEach(word -> accepts(setting, word));
            Stream.of("\"Yes\"", "false", "1").forEach(word -> refuses(setting, word));
        }
    }

    /** Accepted as a value: with the others it may still be out of order, and that is told at its line. */
    private static void accepts(Setting setting, String toml) {
        Changed changed = Changed.of(setting, toml);
        if (ProtocolFile.parse(changed.text()) instanceof ProtocolReading.Broken broken) {
            assertThat(broken.faults())
                    .as(setting.key() + " = " + toml)
                    .allSatisfy(fault -> assertThat(fault.problem())
                            .contains(setting.key(), "must be more than")
                            .doesNotContain("a number from"));
            assertThat(broken.faults())
                    .anySatisfy(fault -> assertThat(fault.line()).isGreaterThanOrEqualTo(changed.line()));
        } else {
            assertThat(Read.good(changed.text()).value(setting))
                    .isEqualTo(setting.allowed().plain(toml.replaceAll("[\\[\\]\"]", "")));
        }
    }

    private static void refuses(Setting setting, String toml) {
        Changed changed = Changed.of(setting, toml);
        assertThat(Read.faults(changed.text()))
                .singleElement()
                .asString()
                .startsWith("line " + changed.line() + ": " + setting.key() + " is ")
                .contains(", but must be " + setting.allowed().words());
    }

    @Test
    void whatever_happens_to_a_file_it_is_read_or_told_with_a_line_that_is_there() {
        String letters = "[]{}=\"'#.,\n\r\t 0123456789eE+-_ayz\u0000\u00e4\uD83D\uDC04\\";
        for (long seed = 0; seed < 150; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            StringBuilder text = new StringBuilder(random.nextBoolean() ? USUAL : values(USUAL));
            for (int i = random.nextInt(1, 8); i > 0; i--) {
                int at = random.nextInt(text.length() - 20);
                int end = at + random.nextInt(random.nextInt(10) == 0 ? 20 : 3);
                int letter = random.nextInt(letters.length());
                text.replace(at, end, random.nextInt(3) == 0 ? "" : letters.substring(letter, letter + 1));
            }
            String broken = text.toString();
            long lines = broken.chars().filter(letter -> letter == '\n').count() + 1;
            String about = "seed " + seed;
            ProtocolReading reading = ProtocolFile.parse(broken);
            if (reading instanceof ProtocolReading.Broken wrong) {
                assertThat(wrong.faults()).as(about).isNotEmpty().allSatisfy(fault -> {
                    assertThat(fault.line()).isBetween(1, (int) lines);
                    assertThat(fault.problem()).matches("\\P{Cntrl}+[.?]");
                });
            } else {
                assertThat(Protocol.faults(Read.good(broken).settings()))
                        .as(about)
                        .isEmpty();
            }
        }
    }

    /** Without the comments nearly every change hits a value. */
    private static String values(String text) {
        return text.replaceAll("(?m)^#.*\n", "");
    }
}
