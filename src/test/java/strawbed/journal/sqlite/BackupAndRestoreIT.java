package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.sqlite.RecordRestore.Restored;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class BackupAndRestoreIT extends RecordInFolder {
    private Path backup() {
        return temporary.resolve("stick.db");
    }

    private List<RecordedEvent> save(int facts) {
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(facts));
            return journal.all();
        }
    }

    private RecordHealth backUp(Path target) {
        return new RecordBackup(folder).write(target, CLOCK);
    }

    private Restored restore(boolean replace) {
        return new RecordRestore(folder, CLOCK, ZoneOffset.UTC).from(backup(), replace);
    }

    private List<RecordedEvent> record() {
        try (SqliteEventJournal journal = openReadOnly()) {
            assertThat(journal.verify().findings()).isEmpty();
            return journal.all();
        }
    }

    private static List<String> names(Path directory) throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Nested
    @DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
    class A_backup {
        @Test
        void holds_all_facts_is_its_owners_alone_and_is_remembered() throws IOException {
            save(20);
            RecordHealth health = backUp(backup());
            assertThat(health.findings()).isEmpty();
            assertThat(health.facts()).isEqualTo(20);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(backup())))
                    .isEqualTo("rw-------");
            assertThat(names(temporary)).containsExactly("data", "stick.db");
            assertThat(new RecordBackup(folder).newest())
                    .contains(new Backup(NOW, backup().toString(), 20, 20, health.head()));
        }

        @Test
        void never_replaces_a_file() throws IOException {
            save(1);
            Files.writeString(backup(), "somebody's letter");
            assertRefused(() -> backUp(backup()), Reason.EXISTS, "stick.db", "Give another name");
            assertThat(backup()).hasContent("somebody's letter");
            assertRefused(() -> backUp(temporary.resolve("none/copy.db")), Reason.FAILED, "its folder is not there");
            assertThat(new RecordBackup(folder).newest()).isEmpty();
        }

        @Test
        void needs_a_record() throws IOException {
            assertRefused(() -> backUp(backup()), Reason.NOT_A_RECORD, "there is no such file");
            assertThat(names(temporary)).isEmpty();
        }

        @Test
        void of_a_record_that_is_not_sound_is_kept_but_not_counted() throws SQLException {
            save(3);
            execute("DROP TRIGGER event_is_never_removed");
            execute("DELETE FROM event WHERE sequence = 2");
            assertThat(backUp(backup()).findings())
                    .extracting(Finding::sequence)
                    .contains(2L);
            assertThat(backup()).exists();
            assertThat(new RecordBackup(folder).newest()).isEmpty();
        }

        @Test
        void made_while_another_program_writes_is_whole() throws IOException, InterruptedException {
            Process program = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            AppendUntilKilled.class.getName(),
                            folder.toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            try (BufferedReader printed = program.inputReader(StandardCharsets.UTF_8)) {
                for (int i = 0; i < 8; i++) {
                    long reported = 0;
                    for (int line = 0; line < 12; line++) {
                        reported = Long.parseLong(printed.readLine());
                    }
                    RecordHealth health = backUp(temporary.resolve("stick-" + i + ".db"));
                    assertThat(health.findings()).isEmpty();
                    assertThat(health.facts()).isGreaterThanOrEqualTo(reported);
                    assertThat(health.facts() % AppendUntilKilled.AT_ONCE).isZero();
                }
                assertThat(program.isAlive()).isTrue();
            } finally {
                program.destroyForcibly().waitFor();
            }
            try (SqliteEventJournal journal = open()) {
                assertThat(journal.verify().findings()).isEmpty();
            }
        }
    }

    @Nested
    @DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
    class A_restore {
        @Test
        void into_an_empty_folder_brings_all_back_and_the_chain_goes_on() throws IOException {
            List<RecordedEvent> saved = save(20);
            backUp(backup());
            folder = temporary.resolve("new computer/data");
            Restored restored = restore(false);
            assertThat(restored.kept()).isNull();
            assertThat(restored.health().facts()).isEqualTo(20);
            assertThat(record()).isEqualTo(saved);
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(database())))
                    .isEqualTo("rw-------");
            assertThat(names(folder)).containsExactly("backups.jsonl", "record.db", "record.db-head", "record.lock");
            try (SqliteEventJournal journal = open()) {
                journal.append(randomFacts(2));
                assertThat(journal.verify().findings()).isEmpty();
            }
        }

        @Test
        void over_facts_that_the_backup_lacks_is_refused() {
            save(20);
            backUp(backup());
            List<RecordedEvent> longer = save(3);
            assertRefused(
                    () -> restore(false), Reason.EXISTS, "3 facts", "lacks, the first saved at " + NOW, "--replace");
            assertThat(record()).isEqualTo(longer);
        }

        @Test
        void that_replaces_facts_keeps_them_under_a_dated_name() throws IOException {
            List<RecordedEvent> saved = save(20);
            backUp(backup());
            List<RecordedEvent> longer = save(3);
            Restored restored = restore(true);
            Path kept = folder.resolve("record-replaced-2026-11-24T080500Z.db");
            assertThat(restored.kept()).isEqualTo(kept);
            assertThat(record()).isEqualTo(saved);
            Files.move(kept, database(), StandardCopyOption.REPLACE_EXISTING);
            assertThat(openAgain()).isEqualTo(longer);
        }

        private List<RecordedEvent> openAgain() {
            try (SqliteEventJournal journal = openReadOnly()) {
                return journal.all();
            }
        }

        @Test
        void twice_in_a_second_keeps_both() throws IOException {
            save(2);
            backUp(backup());
            restore(false);
            restore(false);
            assertThat(names(folder))
                    .contains("record-replaced-2026-11-24T080500Z.db", "record-replaced-2026-11-24T080500Z-2.db");
        }

        @Test
        void over_a_fact_that_was_changed_is_refused() throws SQLException {
            save(3);
            backUp(backup());
            execute("DROP TRIGGER event_is_never_changed");
            execute("UPDATE event SET zone = 'UTC' WHERE sequence = 2");
            assertRefused(() -> restore(false), Reason.EXISTS, "1 fact that");
        }

        @Test
        void while_another_program_writes_is_refused() {
            save(3);
            backUp(backup());
            try (SqliteEventJournal writer = open()) {
                assertRefused(() -> restore(true), Reason.BUSY, "already open for writing");
                writer.append(randomFacts(1));
            }
            assertThat(record()).hasSize(4);
        }

        @Test
        void of_what_is_not_sound_is_refused() throws IOException, SQLException {
            List<RecordedEvent> saved = save(3);
            Path kept = folder;
            folder = temporary.resolve("other");
            save(5);
            execute("DROP TRIGGER event_is_never_removed");
            execute("DELETE FROM event WHERE sequence = 2");
            backUp(backup());
            folder = kept;
            assertRefused(() -> restore(true), Reason.CORRUPT, "is not sound and was not restored");
            Files.writeString(backup(), "This is a letter and not a record. ".repeat(100));
            assertRefused(() -> restore(true), Reason.NOT_A_RECORD, "stick.db is not a record");
            Files.delete(backup());
            assertRefused(() -> restore(true), Reason.NOT_A_RECORD, "there is no such file");
            assertThat(record()).isEqualTo(saved);
            assertThat(names(folder)).allMatch(name -> name.startsWith("record.db") || name.equals("record.lock"));
        }

        @Test
        void of_the_record_itself_is_refused() {
            save(3);
            assertRefused(
                    () -> new RecordRestore(folder, CLOCK, ZoneOffset.UTC).from(database(), true),
                    Reason.EXISTS,
                    "is the record itself");
            assertThat(record()).hasSize(3);
        }

        @Test
        void over_a_record_that_cannot_be_read_must_be_asked_for() throws IOException {
            List<RecordedEvent> saved = save(200);
            backUp(backup());
            byte[] bytes = Files.readAllBytes(database());
            Files.write(database(), Arrays.copyOf(bytes, bytes.length / 2));
            byte[] broken = Files.readAllBytes(database());
            assertRefused(() -> restore(false), Reason.EXISTS, "cannot be read", "--replace");
            assertThat(database()).hasBinaryContent(broken);
            Restored restored = restore(true);
            assertThat(restored.kept()).isNotNull().hasBinaryContent(broken);
            assertThat(record()).isEqualTo(saved);
        }

        @Test
        void over_a_log_that_lost_its_record_must_be_asked_for_and_names_where_the_log_is() throws IOException {
            List<RecordedEvent> saved = save(5);
            backUp(backup());
            Path crashed = temporary.resolve("crashed");
            Files.createDirectories(crashed);
            try (SqliteEventJournal journal = open()) {
                journal.append(randomFacts(4));
                Files.copy(folder.resolve("record.db-wal"), crashed.resolve("record.db-wal"));
            }
            folder = crashed;
            byte[] log = Files.readAllBytes(crashed.resolve("record.db-wal"));
            assertRefused(() -> restore(false), Reason.EXISTS, "its log record.db-wal is still beside it", "--replace");
            assertThat(crashed.resolve("record.db-wal")).hasBinaryContent(log);

            Restored restored = restore(true);
            assertThat(restored.kept())
                    .isEqualTo(crashed.resolve("record-replaced-2026-11-24T080500Z.db-wal"))
                    .hasBinaryContent(log);
            assertThat(record()).isEqualTo(saved);
            assertThat(restore(false).kept())
                    .as("beside the log it would be taken for the record of that log")
                    .isEqualTo(crashed.resolve("record-replaced-2026-11-24T080500Z-2.db"));
        }

        @Test
        void leaves_no_log_of_the_old_record_beside_the_new_one() throws IOException {
            List<RecordedEvent> saved = save(5);
            backUp(backup());
            List<RecordedEvent> longer = new ArrayList<>(saved);
            Path snapshot = temporary.resolve("crashed");
            try (SqliteEventJournal journal = open()) {
                longer.addAll(journal.append(randomFacts(4)));
                Files.createDirectories(snapshot);
                for (String name : List.of("record.db", "record.db-wal")) {
                    Files.copy(folder.resolve(name), snapshot.resolve(name));
                }
            }
            folder = snapshot;
            restore(true);
            assertThat(record()).isEqualTo(saved);
            Files.move(
                    folder.resolve("record-replaced-2026-11-24T080500Z.db"),
                    database(),
                    StandardCopyOption.REPLACE_EXISTING);
            assertThat(openAgain()).isEqualTo(longer);
        }
    }
}
