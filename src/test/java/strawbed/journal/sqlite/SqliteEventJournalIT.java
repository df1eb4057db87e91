package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SqliteEventJournalIT extends RecordInFolder {
    @Test
    void what_is_appended_is_read_back_equal_and_in_order() {
        List<NewEvent> events = randomFacts(60);
        try (SqliteEventJournal journal = open()) {
            List<RecordedEvent> saved = new ArrayList<>(journal.append(events.subList(0, 20)));
            saved.addAll(journal.append(events.subList(20, 60)));

            assertThat(saved)
                    .extracting(RecordedEvent::event)
                    .as("seed %s", SEED)
                    .isEqualTo(events.stream().map(NewEvent::event).toList());
            assertThat(saved)
                    .extracting(RecordedEvent::sequence)
                    .startsWith(1L, 2L)
                    .endsWith(59L, 60L);
            assertThat(saved).allSatisfy(each -> {
                assertThat(each.recordedAt()).isEqualTo(NOW);
                assertThat(each.zone()).isEqualTo(ZONE);
            });
            assertThat(journal.all()).as("seed %s", SEED).isEqualTo(saved);
            assertThat(journal.find(saved.get(41).id())).contains(saved.get(41));
            assertThat(journal.find(new EventId(new UUID(1, 2)))).isEmpty();
        }
    }

    @Test
    void the_whole_envelope_is_kept() {
        Provenance spoken = new Provenance(
                Provenance.Source.VOICE, List.of("calf", "130", "two words"), "unsure", "g1", "m1", "0001.wav", "Ines");
        try (SqliteEventJournal journal = open()) {
            RecordedEvent saved = journal.append(
                            List.of(new NewEvent(CALF, new Event.DamNursed(), NOW.minusNanos(1), spoken)))
                    .get(0);
            assertThat(journal.all())
                    .containsExactly(new RecordedEvent(
                            saved.id(), 1, NOW, NOW.minusNanos(1), ZONE, CALF, new Event.DamNursed(), spoken));
        }
    }

    @Test
    void the_order_stays_after_reopening() {
        List<RecordedEvent> saved = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            try (SqliteEventJournal journal = open()) {
                saved.addAll(journal.append(randomFacts(5)));
            }
        }
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.all()).isEqualTo(saved);
        }
    }

    @Test
    void nothing_is_saved_when_one_of_several_cannot_be() {
        UUID same = new UUID(1, 1);
        List<UUID> twice = new ArrayList<>(List.of(new UUID(0, 0), new UUID(1, 0), same, same));
        try (SqliteEventJournal journal = open(() -> twice.remove(0))) {
            journal.append(randomFacts(1));
            assertRefused(() -> journal.append(randomFacts(2)), Reason.FAILED, "2 facts were not saved");
            assertThat(journal.all()).hasSize(1);
            twice.add(new UUID(1, 3));
            assertThat(journal.append(randomFacts(1)).get(0).sequence()).isEqualTo(2);
        }
    }

    @Test
    void appending_nothing_saves_nothing() {
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.append(List.of())).isEmpty();
            assertThat(journal.all()).isEmpty();
        }
    }

    @Test
    void a_statement_stays_open_until_it_is_settled() {
        NewOpenStatement first = new NewOpenStatement(
                NOW, Duration.ofNanos(2_400_000_001L), "unsure", List.of("calf", "130"), "{\"a\":1}", "1.wav");
        NewOpenStatement second = new NewOpenStatement(NOW, Duration.ZERO, "not understood", List.of(), null, "2.wav");
        OpenStatement kept;
        try (SqliteEventJournal journal = open()) {
            kept = journal.keep(first);
            journal.keep(second);
            assertThat(kept.recordedAt()).isEqualTo(NOW);
        }
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.openStatements())
                    .extracting(OpenStatement::statement)
                    .containsExactly(first, second);
            assertThat(journal.openStatements()).contains(kept);
            journal.settle(kept.id(), "dropped");
            assertThat(journal.openStatements())
                    .extracting(OpenStatement::statement)
                    .containsExactly(second);
            assertThatThrownBy(() -> journal.settle(kept.id(), "confirmed"))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining(kept.id().toString());
        }
    }

    @Test
    void what_was_open_at_an_earlier_time_can_be_asked() {
        NewOpenStatement said =
                new NewOpenStatement(NOW, Duration.ZERO, "unsure", List.of("calf", "130"), null, "1.wav");
        NewOpenStatement later =
                new NewOpenStatement(NOW, Duration.ZERO, "unsure", List.of("calf", "131"), null, "2.wav");
        OpenStatement kept;
        try (SqliteEventJournal journal = open(NOW)) {
            kept = journal.keep(said);
        }
        try (SqliteEventJournal journal = open(NOW.plusSeconds(60))) {
            journal.settle(kept.id(), "dropped");
            journal.keep(later);
        }
        try (SqliteEventJournal journal = open(NOW.plusSeconds(120))) {
            assertThat(journal.openStatementsAt(NOW.minusMillis(1))).isEmpty();
            assertThat(journal.openStatementsAt(NOW)).containsExactly(kept);
            assertThat(journal.openStatementsAt(NOW.plusMillis(59_999))).containsExactly(kept);
            assertThat(journal.openStatementsAt(NOW.plusSeconds(60)))
                    .extracting(OpenStatement::statement)
                    .containsExactly(later);
            assertThat(journal.openStatementsAt(NOW.plusSeconds(120))).isEqualTo(journal.openStatements());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE event SET json = '{}'",
                "DELETE FROM event",
                "INSERT OR REPLACE INTO event SELECT * FROM event",
                "REPLACE INTO event SELECT 99, id, recorded_at, occurred_at, zone, calf, type, version, json, source,"
                        + " words, verdict, grammar, model, sound, operator FROM event",
                "REPLACE INTO event SELECT sequence, 'another', recorded_at, occurred_at, zone, calf, type, version, json,"
                        + " source, words, verdict, grammar, model, sound, operator FROM event",
                "REPLACE INTO open_statement SELECT 99, id, recorded_at, began_at, length, verdict, words, reading, sound"
                        + " FROM open_statement",
                "REPLACE INTO open_statement SELECT sequence, 'another', recorded_at, began_at, length, verdict, words,"
                        + " reading, sound FROM open_statement",
                "UPDATE open_statement SET verdict = 'sure'",
                "DELETE FROM open_statement",
                "REPLACE INTO open_statement SELECT * FROM open_statement",
                "UPDATE statement_settled SET how = 'confirmed'",
                "DELETE FROM statement_settled",
                "REPLACE INTO statement_settled SELECT * FROM statement_settled",
                "UPDATE event_chain SET hash = previous",
                "DELETE FROM event_chain",
                "REPLACE INTO event_chain SELECT * FROM event_chain",
                "UPDATE station SET id = 'another'",
                "DELETE FROM station",
                "REPLACE INTO station SELECT * FROM station",
            })
    void the_file_itself_refuses_to_change_or_remove(String sql) throws SQLException {
        try (SqliteEventJournal journal = open()) {
            journal.append(randomFacts(1));
            journal.settle(
                    journal.keep(new NewOpenStatement(NOW, Duration.ZERO, "unsure", List.of(), null, "1.wav"))
                            .id(),
                    "dropped");
        }
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            assertThatThrownBy(() -> statement.executeUpdate(sql))
                    .isInstanceOf(SQLException.class)
                    .hasMessageContaining("the record only grows");
        }
    }

    @Test
    void commits_are_fully_synced_and_logged_ahead() throws SQLException {
        try (Connection connection = connectionOfNewRecord();
                Statement statement = connection.createStatement()) {
            // Source of the numbers: SQLite, PRAGMA synchronous (FULL is 2).
            assertThat(statement.executeQuery("PRAGMA synchronous").getInt(1)).isEqualTo(2);
            assertThat(statement.executeQuery("PRAGMA journal_mode").getString(1))
                    .isEqualTo("wal");
            assertThat(statement.executeQuery("PRAGMA foreign_keys").getInt(1)).isEqualTo(1);
        }
    }

    @Test
    void a_migration_is_never_edited() throws SQLException {
        open().close();
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            assertThat(statement
                            .executeQuery("SELECT group_concat(version || ' ' || checksum) FROM flyway_schema_history")
                            .getString(1))
                    .isEqualTo("1 -762872413,2 777175762,3 1046008043,4 789254917,5 1481452935");
        }
    }

    @Test
    void a_new_folder_is_its_owners_alone() throws IOException {
        open().close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
    }

    /** The station's id is asked for while the tables are made. */
    @Test
    void a_new_record_is_its_owners_alone_from_its_making_on() throws IOException {
        Files.createDirectories(folder);
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        List<String> rights = new ArrayList<>();
        open(() -> {
                    for (String name : List.of("record.db", "record.db-wal", "record.lock")) {
                        rights.add(rights(folder.resolve(name)));
                    }
                    return ids.get();
                })
                .close();
        assertThat(rights).hasSize(3).containsOnly("rw-------");
    }

    private static String rights(Path file) {
        try {
            return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void closing_twice_is_closing_once() {
        SqliteEventJournal journal = open();
        journal.close();
        assertThatCode(journal::close).doesNotThrowAnyException();
        assertThatThrownBy(journal::all).isInstanceOf(IllegalStateException.class);
    }

    @Nested
    @DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
    class When_another_one_has_it_open {
        @Test
        void a_second_writer_in_this_program_is_refused() {
            try (SqliteEventJournal first = open()) {
                assertRefused(SqliteEventJournalIT.this::open, Reason.BUSY, "this program itself");
                first.append(randomFacts(1));
            }
            open().close();
        }

        @Test
        void a_reader_sees_what_the_writer_saved() {
            try (SqliteEventJournal writer = open();
                    SqliteEventJournal reader = openReadOnly()) {
                List<RecordedEvent> saved = writer.append(randomFacts(3));
                assertThat(reader.all()).isEqualTo(saved);
            }
        }

        @Test
        void a_foreign_program_that_writes_is_told_from_other_trouble() throws SQLException {
            try (SqliteEventJournal journal = open();
                    Connection raw = raw();
                    Statement statement = raw.createStatement()) {
                statement.execute("BEGIN IMMEDIATE");
                assertRefused(() -> journal.append(randomFacts(1)), Reason.BUSY, "1 fact was not saved");
                statement.execute("ROLLBACK");
                journal.append(randomFacts(1));
            }
            try (SqliteEventJournal journal = open()) {
                assertThat(journal.all()).hasSize(1);
            }
        }
    }
}
