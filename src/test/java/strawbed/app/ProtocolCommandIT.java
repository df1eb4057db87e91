package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;
import strawbed.protocol.file.ProtocolFile;

/** The protocol's command as a person or a script uses it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ProtocolCommandIT {
    private static final Protocol OURS = Protocol.of(
            Map.of("first_dip_minutes", "45", "watch_minutes", "30, 90", "plasma_liters_per_kilogram", "0.085"));

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("protocol.toml");
    }

    private CommandRun protocol(String... words) {
        String[] all = new String[words.length + 3];
        all[0] = "protocol";
        System.arraycopy(words, 0, all, 1, words.length);
        all[words.length + 1] = "--data";
        all[words.length + 2] = folder.toString();
        return CommandRun.of(all);
    }

    private void hasAdoptedOurs() throws IOException {
        Files.writeString(file(), ProtocolFile.text(OURS));
        Clock clock = Clock.systemUTC();
        Settings settings = new Settings(folder, Optional.empty(), clock, ZoneOffset.UTC);
        try (EventJournal journal =
                SqliteEventJournal.open(folder, clock, ZoneOffset.UTC, new TimeOrderedIds(clock, new SecureRandom()))) {
            assertThat(FarmProtocol.adopt(journal, settings)).isEmpty();
        }
    }

    private static void refused(CommandRun run, String... parts) {
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(parts).doesNotContain("Exception");
    }

    @Test
    void without_a_record_the_usual_protocol_is_shown_and_nothing_is_written() throws IOException {
        for (CommandRun run : List.of(protocol(), protocol("show"))) {
            assertThat(run.code()).as(run.err()).isZero();
            assertThat(run.out())
                    .startsWith("Protocol in force: version " + Protocol.usual().version()
                            + ", 0 settings changed from the usual.")
                    .contains("The navel [navel]")
                    .doesNotContain("*", "usual:");
            for (Setting setting : Setting.values()) {
                assertThat(run.out())
                        .containsPattern("\n   " + setting.key() + " +"
                                + Protocol.usual().value(setting));
            }
        }
        try (var entries = Files.list(folder)) {
            assertThat(entries).isEmpty();
        }
    }

    @Test
    void what_the_record_adopted_is_shown_with_what_differs_from_the_usual() throws IOException {
        hasAdoptedOurs();
        assertThat(protocol().out())
                .startsWith("Protocol in force: version " + OURS.version() + ", 3 settings changed from the usual.")
                .containsPattern("\n \\* first_dip_minutes +45  \\(usual: 30\\)\n")
                .containsPattern("\n \\* watch_minutes +30, 90  \\(usual: 30, 60, 120, 240\\)\n")
                .containsPattern("\n   dry_minutes +30\n")
                .doesNotContain("comes into force");
    }

    @Test
    void a_change_in_the_file_is_not_in_force_before_the_recorder_starts() throws IOException {
        hasAdoptedOurs();
        Files.writeString(file(), ProtocolFile.text(Protocol.usual()));
        assertThat(protocol("show").out())
                .contains(OURS.version(), "comes into force when the recorder next starts")
                .containsPattern("first_dip_minutes +45");
        Files.writeString(file(), "[navel]\nfirst_dip_minutes = 500\n");
        assertThat(protocol("show").out()).contains("has 1 fault. See them", OURS.version());
    }

    @Test
    @SuppressWarnings("unchecked") // jackson-jr gives maps of maps for objects in objects
    void one_json_object_has_every_value_in_its_own_kind() throws IOException {
        hasAdoptedOurs();
        for (CommandRun run : List.of(protocol("--json"), protocol("show", "--json"))) {
            assertThat(run.out().lines()).hasSize(1);
            assertThat(run.out()).contains("\"plasma_liters_per_kilogram\":{\"value\":0.085,\"usual\":0.09,");
            Map<String, Object> object = JSON.std.mapFrom(run.out());
            assertThat(object)
                    .containsEntry("version", OURS.version())
                    .containsEntry(
                            "changed", List.of("first_dip_minutes", "watch_minutes", "plasma_liters_per_kilogram"));
            Map<String, Map<String, Object>> sections =
                    (Map<String, Map<String, Object>>) Objects.requireNonNull(object.get("sections"));
            assertThat(sections.get("navel"))
                    .containsEntry("first_dip_minutes", Map.of("value", 45, "usual", 30, "changed", true))
                    .containsEntry("repeat_dip", Map.of("value", "yes", "usual", "yes", "changed", false));
            assertThat(sections.get("hard_birth"))
                    .containsEntry(
                            "watch_minutes",
                            Map.of("value", List.of(30, 90), "usual", List.of(30, 60, 120, 240), "changed", true));
        }
    }

    @Test
    void a_good_file_is_told_with_its_version_and_what_differs() throws IOException {
        Path other = Files.writeString(folder.resolve("other.toml"), ProtocolFile.text(OURS));
        CommandRun run = protocol("check", other.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .startsWith(other + ": OK, version " + OURS.version() + ", 3 settings changed from the usual.")
                .containsPattern("first_dip_minutes +45  \\(usual: 30\\)");
        assertThat(protocol("write").code()).isZero();
        assertThat(protocol("check").out())
                .isEqualToNormalizingNewlines(file() + ": OK, version "
                        + Protocol.usual().version() + ", 0 settings changed from the usual.\n");
    }

    @Test
    void a_broken_file_is_refused_with_every_fault_and_stays_as_it_is() throws IOException {
        String broken = "[navel]\nfirst_dip_minutes = 500\nrepeat_dips = \"no\"\n";
        Files.writeString(file(), broken);
        refused(
                protocol("check"),
                "has 2 faults. Nothing was changed.",
                "  line 2: first_dip_minutes is 500, but must be a number from 5 to 120.",
                "  line 3: there is no setting repeat_dips. Did you mean repeat_dip?");
        assertThat(file()).hasContent(broken);
        refused(protocol("check", folder.toString()), "is a folder, but must be a file");
        refused(protocol("check", folder.resolve("none").toString()), "There is no file", "strawbed protocol write");
    }

    @Test
    void a_setting_is_explained() throws IOException {
        hasAdoptedOurs();
        assertThat(protocol("explain", "first_dip_minutes").out()).isEqualToNormalizingNewlines("""
                        first_dip_minutes, in [navel]
                          what it does: The navel is dipped within this time after birth.
                          source:       Robinson 2015, Iowa State University ASL R2970.
                          may be:       a number from 5 to 120.
                          usual:        30  (30 min)
                          this farm:    45  (45 min)  (changed)
                        """);
        assertThat(protocol("explain", "Heat-treatment most Fahrenheit").out())
                .contains("McMartin 2006, as quoted in trade press", "usual:        140");
        for (Setting setting : Setting.values()) {
            assertThat(protocol("explain", setting.key()).out()).contains(setting.reason(), setting.source());
        }
    }

    @Test
    void a_name_that_no_setting_has_gives_the_nearest_ones() {
        refused(protocol("explain", "first_dip_minute"), "no setting \"first_dip_minute\"", "first_dip_minutes");
        refused(protocol("explain", "paint"), "\"strawbed protocol\" lists them all");
        refused(protocol("explain"), "SETTING");
        refused(protocol("paint"), "paint");
    }

    @Test
    void the_usual_file_is_written_but_never_over_another() throws IOException {
        Path other = folder.resolve("for-the-vet.toml");
        assertThat(protocol("write", other.toString()).out()).contains("Written: " + other, "veterinarian");
        assertThat(other).hasContent(ProtocolFile.text(Protocol.usual()));
        assertThat(file()).doesNotExist();
        Files.writeString(other, "ours");
        refused(protocol("write", other.toString()), "is there already and was left as it is");
        assertThat(other).hasContent("ours");
    }
}
