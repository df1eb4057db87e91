package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException.Reason;

/** A record of the program before this one, made with its own script. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ChainMigrationIT extends RecordInFolder {
    private static final int FACTS = 2300;
    private static final String COLUMNS = "sequence, id, recorded_at, occurred_at, zone, calf, type, version, json,"
            + " source, words, verdict, grammar, model, sound";

    /** @return its facts, which have the same places */
    private List<RecordedEvent> recordOfSchemaOne() throws IOException, SQLException {
        folder = temporary.resolve("newer");
        List<RecordedEvent> saved;
        try (SqliteEventJournal journal = open()) {
            saved = journal.append(randomFacts(FACTS));
        }
        Path newer = database();
        folder = temporary.resolve("data");
        Files.createDirectories(folder);
        Flyway.configure()
                .dataSource("jdbc:sqlite:" + database(), null, null)
                .locations("classpath:db/migration")
                .target("1")
                .load()
                .migrate();
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            assertThat(statement
                            .executeQuery("SELECT max(version) FROM flyway_schema_history")
                            .getInt(1))
                    .isEqualTo(1);
            statement.executeUpdate("ATTACH '" + newer + "' AS newer");
            statement.executeUpdate("INSERT INTO main.event SELECT " + COLUMNS + " FROM newer.event");
        }
        return saved;
    }

    private Path copy() {
        return folder.resolve("record-schema-1-2026-11-24T080500Z.db");
    }

    @Test
    void can_be_read_as_it_is() throws IOException, SQLException {
        List<RecordedEvent> saved = recordOfSchemaOne();
        try (SqliteEventJournal journal = openReadOnly()) {
            assertThat(journal.all()).isEqualTo(saved);
            assertThat(journal.openStatements()).isEmpty();
            assertThat(journal.verify()).isEqualTo(new RecordHealth(FACTS, false, 0, null, List.of()));
        }
        assertThat(copy()).doesNotExist();
    }

    @Test
    void is_copied_and_then_chained() throws IOException, SQLException {
        List<RecordedEvent> saved = recordOfSchemaOne();
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.all()).isEqualTo(saved);
            RecordHealth health = journal.verify();
            assertThat(health.findings()).isEmpty();
            assertThat(health.last()).isEqualTo(FACTS);
            journal.append(randomFacts(3));
            assertThat(journal.verify().findings()).isEmpty();
        }
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy())))
                .isEqualTo("rw-------");
        Files.createDirectories(temporary.resolve("older"));
        Files.copy(copy(), temporary.resolve("older/record.db"));
        folder = temporary.resolve("older");
        try (SqliteEventJournal older = openReadOnly()) {
            assertThat(older.all()).isEqualTo(saved);
            assertThat(older.verify()).isEqualTo(new RecordHealth(FACTS, false, 0, null, List.of()));
        }
    }

    @Test
    void keeps_the_chain_of_schema_two() throws IOException, SQLException {
        recordOfSchemaOne();
        Flyway.configure()
                .dataSource("jdbc:sqlite:" + database(), null, null)
                .locations("classpath:db/migration")
                .javaMigrations(new ChainMigration(ids))
                .target("2")
                .load()
                .migrate();
        String head;
        try (SqliteEventJournal journal = openReadOnly()) {
            RecordHealth health = journal.verify();
            assertThat(health.findings()).isEmpty();
            assertThat(health.isChained()).isTrue();
            head = health.head();
        }
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.verify()).isEqualTo(new RecordHealth(FACTS, true, FACTS, head, List.of()));
        }
        assertThat(folder.resolve("record-schema-2-2026-11-24T080500Z.db")).exists();
    }

    @Test
    void is_copied_once() throws IOException, SQLException {
        recordOfSchemaOne();
        open().close();
        open().close();
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "record.db", "record.lock", copy().getFileName().toString());
        }
    }

    @Test
    void stays_as_it_is_when_something_fails_on_the_way() throws IOException, SQLException {
        List<RecordedEvent> saved = recordOfSchemaOne();
        execute("CREATE TABLE event_chain (sequence INTEGER)");
        assertRefused(this::open, Reason.FAILED, "event_chain");
        try (SqliteEventJournal journal = openReadOnly()) {
            assertThat(journal.all()).isEqualTo(saved);
        }
        execute("DROP TABLE event_chain");
        try (SqliteEventJournal journal = open()) {
            assertThat(journal.verify().findings()).isEmpty();
        }
    }

    @Test
    void gets_a_station_of_its_own() throws IOException, SQLException {
        recordOfSchemaOne();
        open().close();
        String first = station();
        open().close();
        assertThat(station()).isEqualTo(first);
        // Source: RFC 9562, section 5.7.
        assertThat(UUID.fromString(first).version()).isEqualTo(7);
    }

    private String station() throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            return statement.executeQuery("SELECT id FROM station").getString(1);
        }
    }
}
