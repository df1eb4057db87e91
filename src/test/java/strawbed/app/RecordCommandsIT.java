package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.EventJournal;
import strawbed.journal.sqlite.RecordBackup;
import strawbed.journal.sqlite.SqliteEventJournal;

/** The commands that look after the record, as a person uses them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RecordCommandsIT {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-24T08:05:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    private Path backup() {
        return folder.resolve("backup.db");
    }

    private Settings settings() {
        return new Settings(data(), Optional.empty(), CLOCK, ZoneOffset.UTC);
    }

    private CommandRun run(String... words) {
        String[] all = new String[words.length + 2];
        System.arraycopy(words, 0, all, 0, words.length);
        all[words.length] = "--data";
        all[words.length + 1] = data().toString();
        return CommandRun.of(all);
    }

    private void save(int facts) {
        NewEvent fact =
                new NewEvent(null, new Event.FeedRefused(), CLOCK.instant(), Provenance.of(Provenance.Source.COMMAND));
        try (EventJournal journal = SqliteEventJournal.open(
                data(), CLOCK, ZoneOffset.UTC, new TimeOrderedIds(Clock.systemUTC(), new Random()))) {
            journal.append(Collections.nCopies(facts, fact));
        }
    }

    private void tamper() throws SQLException {
        try (Connection raw = DriverManager.getConnection("jdbc:sqlite:" + data().resolve("record.db"));
                Statement statement = raw.createStatement()) {
            statement.executeUpdate("DROP TRIGGER event_is_never_changed");
            statement.executeUpdate("UPDATE event SET zone = 'UTC' WHERE sequence = 2");
        }
    }

    @Test
    void a_backup_is_made_told_and_restored() {
        save(42);
        CommandRun made = run("backup", backup().toString());
        assertThat(made.code()).as(made.err()).isZero();
        assertThat(made.out())
                .startsWith("Made and looked through: " + backup() + ", 42 facts, chain whole (")
                .contains("It holds no sounds.");
        CommandRun again = run("backup", backup().toString());
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("never replaces a file");

        save(1);
        CommandRun refused = run("restore", backup().toString());
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("has 1 fact that", "--replace").doesNotContain("Exception");
        CommandRun restored = run("restore", backup().toString(), "--replace");
        assertThat(restored.code()).as(restored.err()).isZero();
        assertThat(restored.out())
                .contains("Restored from " + backup() + ": 42 facts, chain whole", "The record that was there is now ");
        assertThat(RecordTelling.record(settings())).startsWith("42 facts, chain whole (");
    }

    @Test
    void a_restore_over_a_log_alone_names_a_file_that_is_there() throws IOException {
        save(3);
        assertThat(run("backup", backup().toString()).code()).isZero();
        Files.delete(data().resolve("record.db"));
        Files.delete(data().resolve("record.db-head"));
        Files.writeString(data().resolve("record.db-wal"), "what a log may hold");
        CommandRun restored = run("restore", backup().toString(), "--replace");
        assertThat(restored.code()).as(restored.err()).isZero();
        String last = restored.out().lines().reduce("", (earlier, later) -> later);
        assertThat(last).startsWith("What was left of the record that was there is now ");
        assertThat(Path.of(last.substring(last.indexOf(data().toString()), last.length() - 1)))
                .hasContent("what a log may hold");
    }

    @Test
    void a_file_must_be_given() {
        save(1);
        assertThat(run("backup").code()).isEqualTo(2);
        assertThat(run("restore").code()).isEqualTo(2);
    }

    @Test
    void the_help_says_that_a_backup_holds_no_sounds() {
        assertThat(CommandRun.of("backup", "--help").out().replaceAll("\\s+", " "))
                .contains("not the sounds");
        assertThat(CommandRun.of("restore", "--help").out().replaceAll("\\s+", " "))
                .contains("holds no sounds");
    }

    @Test
    void check_tells_how_old_the_newest_backup_is() throws IOException {
        assertThat(RecordTelling.backup(settings())).isEqualTo("none needed yet");
        save(3);
        assertThat(RecordTelling.backup(settings())).startsWith("none yet; make one with \"strawbed backup FILE\"");
        new RecordBackup(data()).write(backup(), Clock.offset(CLOCK, Duration.ofHours(-75)));
        assertThat(RecordTelling.backup(settings()))
                .isEqualTo("the newest is 3 days old and holds 3 facts: " + backup());
        Files.delete(backup());
        assertThat(RecordTelling.backup(settings())).endsWith("(not to be seen now)");
        new RecordBackup(data()).write(backup(), Clock.offset(CLOCK, Duration.ofMinutes(-50)));
        assertThat(RecordTelling.backup(settings())).startsWith("the newest is 50 minutes old");
    }

    @Test
    void check_names_the_row_that_was_changed_and_fails() throws SQLException {
        save(3);
        tamper();
        assertThatThrownBy(() -> RecordTelling.record(settings()))
                .isInstanceOf(BadInputException.class)
                .hasMessageContainingAll(
                        "2 findings:\n",
                        "  The record's trigger event_is_never_changed is gone",
                        "\n  Number 2 of the record is not as it was saved",
                        "Keep the file as it is, and compare it with a backup.");
        CommandRun check = run("check");
        assertThat(check.code()).isEqualTo(1);
        assertThat(check.out()).contains("record: not as it should be. 2 findings:\n", "backup: OK, ", "disk: ");
        CommandRun copied = run("backup", backup().toString());
        assertThat(copied.code()).isEqualTo(1);
        assertThat(copied.err()).contains("the record is not sound and so is its copy", "Number 2 of the record");
    }
}
