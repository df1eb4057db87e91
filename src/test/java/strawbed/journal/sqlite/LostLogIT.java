package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;

/** A program ended suddenly, and then somebody removed the log, or emptied the record. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LostLogIT extends RecordInFolder {
    private static final int BEFORE = 6;
    private static final int SINCE = 4;

    private Path note() {
        return folder.resolve("record.db-head");
    }

    private Path log() {
        return folder.resolve("record.db-wal");
    }

    /** Leaves the folder as the kill of a program leaves it: six facts in the file, four more in its log alone. */
    private List<RecordedEvent> killedWithFactsInItsLog() throws IOException {
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(BEFORE));
        }
        Path work = folder;
        Path left = temporary.resolve("left");
        List<RecordedEvent> all;
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(SINCE));
            all = journal.all();
            Files.createDirectory(left);
            for (String name : List.of("record.db", "record.db-wal", "record.db-head")) {
                Files.copy(work.resolve(name), left.resolve(name), StandardCopyOption.COPY_ATTRIBUTES);
            }
        }
        folder = left;
        return all;
    }

    private List<String> findings() {
        try (SqliteEventJournal journal = openReadOnly()) {
            return journal.verify().findings().stream().map(Finding::text).toList();
        }
    }

    @Test
    void with_its_log_nothing_is_missing() throws IOException {
        List<RecordedEvent> all = killedWithFactsInItsLog();
        assertThat(findings()).isEmpty();
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings()).isEmpty();
            assertThat(journal.all()).isEqualTo(all);
        }
    }

    @Test
    void without_its_log_a_look_through_tells_what_is_gone_and_what_to_do() throws IOException {
        killedWithFactsInItsLog();
        byte[] removed = Files.readAllBytes(log());
        Files.delete(log());
        assertThat(findings())
                .containsExactly("Facts up to number 10 were saved, and those after number 6 are gone: the log file"
                        + " record.db-wal is probably missing, or the end of the record was cut. If record.db-wal is"
                        + " somewhere else, such as in the bin, put it back beside record.db before anything more is"
                        + " recorded; else restore the record from a backup.");
        // A look for reading may leave a new, empty log behind.
        Files.write(log(), removed);
        assertThat(findings()).as("as the remedy says").isEmpty();
    }

    @Test
    void the_recorder_goes_on_and_the_loss_stays_told() throws IOException {
        killedWithFactsInItsLog();
        Files.delete(log());
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings())
                    .singleElement()
                    .satisfies(found -> assertThat(found.what()).contains("those after number 6 are gone"));
            assertThat(journal.append(randomFacts(SINCE))).hasSize(SINCE);
        }
        assertThat(findings())
                .singleElement()
                .asString()
                .contains("Facts up to number 10 were saved", "do not put an old record.db-wal back")
                .endsWith("remove " + folder.resolve("record.db-lost") + ".");
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings()).as("at each start").hasSize(1);
        }
        Files.delete(folder.resolve("record.db-lost"));
        assertThat(findings()).isEmpty();
    }

    @Test
    void a_second_loss_is_told_beside_the_first() throws IOException {
        killedWithFactsInItsLog();
        Files.delete(log());
        Path other = temporary.resolve("other");
        Files.createDirectory(other);
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(1));
            for (String name : List.of("record.db", "record.db-head", "record.db-lost")) {
                Files.copy(folder.resolve(name), other.resolve(name));
            }
        }
        folder = other;
        open().close();
        assertThat(findings())
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("Facts up to number 10 were"),
                        second -> assertThat(second).startsWith("Facts up to number 7 were"));
    }

    @Test
    void a_record_cut_at_its_end_is_found_without_any_backup() throws SQLException {
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(BEFORE));
        }
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            for (String table : List.of("event_chain", "event")) {
                statement.executeUpdate("DROP TRIGGER " + table + "_is_never_removed");
                statement.executeUpdate("DELETE FROM " + table + " WHERE sequence > 4");
            }
        }
        assertThat(findings())
                .anySatisfy(found ->
                        assertThat(found).startsWith("Facts up to number 6 were saved, and those after number 4"));
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(3));
            assertThat(journal.findings()).hasSize(1);
        }
    }

    @Test
    void a_record_whose_first_night_was_in_its_log_alone_is_not_taken_for_a_new_one() throws IOException {
        Path left = temporary.resolve("left");
        Files.createDirectory(left);
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(SINCE));
            Files.copy(folder.resolve("record.db"), left.resolve("record.db"));
            Files.copy(note(), left.resolve("record.db-head"));
        }
        folder = left;
        assertRefused(this::openReadOnly, Reason.CORRUPT, "Facts up to number 4 were saved", "put it back");
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings())
                    .singleElement()
                    .satisfies(found -> assertThat(found.sequence()).isEqualTo(4L));
        }
    }

    @Test
    void a_backup_put_in_its_place_starts_a_note_of_its_own() throws IOException {
        killedWithFactsInItsLog();
        Files.delete(log());
        open().close();
        Path backup = temporary.resolve("backup.db");
        new RecordBackup(folder).write(backup, CLOCK);
        RecordRestore.Restored restored = new RecordRestore(folder, CLOCK, ZoneOffset.UTC).from(backup, true);
        assertThat(findings()).isEmpty();
        assertThat(Files.readString(note())).startsWith("0000000000000000000" + BEFORE + " ");
        assertThat(Path.of(restored.kept() + "-lost"))
                .as("what is known of the record before goes with it")
                .exists();
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings()).isEmpty();
            journal.append(randomFacts(1));
        }
        assertThat(findings()).isEmpty();
    }

    @Test
    void the_note_keeps_its_length_and_follows_each_fact() throws IOException {
        try (SqliteEventJournal journal = open()) {
            for (int i = 1; i <= 12; i++) {
                journal.append(randomFacts(1));
                assertThat(Files.readString(note())).hasSize(95).startsWith(String.format("%020d ", i));
            }
            assertThat(journal.verify().findings()).isEmpty();
        }
    }

    @Test
    void a_damaged_note_is_told_and_written_anew() throws IOException {
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(2));
        }
        byte[] sound = Files.readAllBytes(note());
        for (int i = 0; i < sound.length; i++) {
            byte[] flipped = sound.clone();
            flipped[i] ^= 1;
            Files.write(note(), flipped);
            assertThat(findings()).as("byte %s", i).singleElement().asString().contains("cannot be read");
        }
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.findings()).hasSize(1);
        }
        assertThat(Files.readAllBytes(note())).isEqualTo(sound);
        // A power cut soon after its making leaves its name and no more.
        Files.write(note(), new byte[sound.length]);
        assertThat(findings()).isEmpty();
    }

    @Test
    void trouble_with_the_note_fails_no_fact_and_is_told() throws IOException {
        Files.createDirectories(note());
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.append(randomFacts(3))).hasSize(3);
            assertThat(journal.findings())
                    .anySatisfy(found -> assertThat(found.what()).contains("The facts are saved, but the note"));
        }
        Files.delete(note());
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.all()).hasSize(3);
            assertThat(journal.findings()).isEmpty();
        }
    }

    @Test
    void an_emptied_record_is_told_apart_from_a_new_one() throws IOException {
        for (String trace : List.of("record.db-head", "record.db-wal", "backups.jsonl", "sounds/one.wav")) {
            folder = temporary.resolve(trace.replace('/', '-'));
            Files.createDirectories(folder.resolve(trace).getParent());
            Files.writeString(folder.resolve(trace), "something");
            Files.createFile(database());
            assertRefused(this::open, Reason.CORRUPT, "is empty, but there was a record", "strawbed restore");
            assertRefused(this::openReadOnly, Reason.CORRUPT, "is empty, but there was a record");
            assertThatThrownBy(() -> SqliteEventJournal.isThere(folder)).hasMessageContaining("is empty");
            assertThat(database()).isEmptyFile();
            assertThat(folder.resolve(trace)).hasContent("something");
        }
    }

    @Test
    void a_log_without_its_record_is_not_thrown_away() throws IOException {
        killedWithFactsInItsLog();
        byte[] saved = Files.readAllBytes(log());
        Files.move(database(), temporary.resolve("elsewhere.db"));
        assertRefused(this::open, Reason.CORRUPT, "is gone, but there was a record", "its log record.db-wal is still");
        assertThat(Files.readAllBytes(log())).isEqualTo(saved);
        Files.move(temporary.resolve("elsewhere.db"), database());
        assertThat(findings()).isEmpty();
    }

    @Test
    void an_empty_file_alone_is_a_record_not_yet_begun() throws IOException {
        Files.createDirectories(folder);
        Files.createFile(database());
        assertThat(SqliteEventJournal.isThere(folder)).isFalse();
        assertRefused(this::openReadOnly, Reason.NOT_A_RECORD, "it is empty");
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.append(randomFacts(1))).hasSize(1);
            assertThat(journal.findings()).isEmpty();
        }
        assertThat(SqliteEventJournal.isThere(folder)).isTrue();
        assertThat(Files.readString(note(), StandardCharsets.US_ASCII)).endsWith("\n");
    }
}
