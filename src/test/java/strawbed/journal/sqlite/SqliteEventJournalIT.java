package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;
import strawbed.journal.RandomEvents;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SqliteEventJournalIT {
    private static final long SEED = 20261124;
    private static final Instant NOW = Instant.parse("2026-11-24T08:05:00.123456789Z");
    private static final ZoneId ZONE = ZoneId.of("America/Chicago");
    private static final CalfId CALF = CalfId.of("019bb5c0-0000-7000-8000-00000000002a");

    @TempDir
    Path temporary;

    private Path folder;
    private Supplier<UUID> ids;

    @BeforeEach
    void choose_a_new_folder() {
        folder = temporary.resolve("data");
        ids = new TimeOrderedIds(Clock.fixed(NOW, ZoneOffset.UTC), new Random(SEED));
    }

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
                Provenance.Source.VOICE, List.of("calf", "130", "two words"), "unsure", "g1", "m1", "0001.wav");
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
        List<UUID> twice = new ArrayList<>(List.of(new UUID(1, 0), same, same));
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

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE event SET json = '{}'",
                "DELETE FROM event",
                "INSERT OR REPLACE INTO event SELECT * FROM event",
                "REPLACE INTO event SELECT 99, id, recorded_at, occurred_at, zone, calf, type, version, json, source,"
                        + " words, verdict, grammar, model, sound FROM event",
                "UPDATE open_statement SET verdict = 'sure'",
                "DELETE FROM open_statement",
                "REPLACE INTO open_statement SELECT * FROM open_statement",
                "UPDATE statement_settled SET how = 'confirmed'",
                "DELETE FROM statement_settled",
                "REPLACE INTO statement_settled SELECT * FROM statement_settled",
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
    void the_first_migration_is_never_edited() throws SQLException {
        open().close();
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            assertThat(statement
                            .executeQuery("SELECT group_concat(version || ' ' || checksum) FROM flyway_schema_history")
                            .getString(1))
                    .isEqualTo("1 -762872413");
        }
    }

    @Test
    void a_new_folder_is_its_owners_alone() throws IOException {
        open().close();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)))
                .isEqualTo("rwx------");
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

    @Nested
    @DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
    class When_it_cannot_be_written {
        @Test
        void a_record_opened_for_reading_takes_nothing() {
            open().close();
            try (SqliteEventJournal journal = openReadOnly()) {
                assertRefused(() -> journal.append(randomFacts(1)), Reason.READ_ONLY, "reading only");
                assertThat(journal.all()).isEmpty();
            }
        }

        @Test
        void a_folder_that_takes_no_writing_can_be_read() throws IOException {
            List<RecordedEvent> saved;
            try (SqliteEventJournal journal = open()) {
                saved = journal.append(randomFacts(3));
            }
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-x------"));
            try {
                assumeThat(Files.isWritable(folder))
                        .as("nothing binds this user")
                        .isFalse();
                assertRefused(SqliteEventJournalIT.this::open, Reason.READ_ONLY, "may only be read");
                try (SqliteEventJournal journal = openReadOnly()) {
                    assertThat(journal.all()).isEqualTo(saved);
                }
            } finally {
                Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
            }
        }

        @Test
        void what_sqlite_says_of_a_read_only_file_is_understood() throws SQLException {
            open().close();
            try (Connection connection = new RecordFile(folder).connectReadOnly();
                    Statement statement = connection.createStatement()) {
                assertThatThrownBy(() -> statement.executeUpdate("DELETE FROM event"))
                        .isInstanceOfSatisfying(
                                SQLException.class,
                                e -> assertThat(SqliteFailure.of("it was not saved", folder, e)
                                                .reason())
                                        .isEqualTo(Reason.READ_ONLY));
            }
        }

        @Test
        void a_file_where_the_folder_should_be_is_named() throws IOException {
            Files.writeString(folder, "hay");
            assertRefused(SqliteEventJournalIT.this::open, Reason.NOT_A_RECORD, folder + " is a file");
        }

        @Test
        void a_full_disk_hurts_nothing_and_passes() {
            List<RecordedEvent> saved = new ArrayList<>();
            try (SqliteEventJournal journal = open()) {
                saved.addAll(journal.append(randomFacts(3)));
                journal.limitPages(1);
                assertRefused(
                        () -> {
                            for (int i = 0; i < 1000; i++) {
                                saved.addAll(journal.append(randomFacts(40)));
                            }
                        },
                        Reason.FULL,
                        "40 facts were not saved",
                        "full",
                        "Free some space");
                assertThat(journal.all()).isEqualTo(saved);
                journal.limitPages(1_000_000);
                saved.addAll(journal.append(randomFacts(40)));
                assertThat(journal.all()).isEqualTo(saved);
            }
            try (SqliteEventJournal journal = open()) {
                assertThat(journal.all()).isEqualTo(saved);
            }
        }
    }

    @Nested
    @DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
    class When_it_is_not_a_sound_record {
        @Test
        void a_newer_schema_is_left_alone() throws SQLException {
            open().close();
            execute("INSERT INTO flyway_schema_history SELECT 2, '2', 'newer', type, 'V2__newer.sql', 1, installed_by,"
                    + " installed_on, 1, success FROM flyway_schema_history");
            assertRefused(SqliteEventJournalIT.this::open, Reason.NEWER, "its schema is 2, this program knows 1");
            assertRefused(SqliteEventJournalIT.this::openReadOnly, Reason.NEWER, "Use the newer program");
        }

        @Test
        void an_event_of_a_newer_program_is_named_with_its_place() throws SQLException {
            addCopyOfTheFirst("'CalfSang'", "zone");
            try (SqliteEventJournal journal = open()) {
                assertRefused(journal::all, Reason.NEWER, "Number 2 of the record", "CalfSang");
            }
        }

        @Test
        void a_damaged_column_is_named_with_its_place() throws SQLException {
            addCopyOfTheFirst("type", "'Barn/Nowhere'");
            try (SqliteEventJournal journal = open()) {
                assertRefused(journal::all, Reason.CORRUPT, "Number 2 of the record", "Barn/Nowhere");
            }
        }

        private void addCopyOfTheFirst(String type, String zone) throws SQLException {
            try (SqliteEventJournal journal = open()) {
                journal.append(randomFacts(1));
            }
            execute("INSERT INTO event (sequence, id, recorded_at, occurred_at, zone, type, version, json, source)"
                    + " SELECT 2, '019bb5c0-0000-7000-8000-00000000002b', recorded_at, occurred_at, " + zone + ", "
                    + type + ", version, json, source FROM event");
        }

        @Test
        void a_missing_record_cannot_be_read() {
            assertRefused(SqliteEventJournalIT.this::openReadOnly, Reason.NOT_A_RECORD, "there is no such file");
        }

        @Test
        void another_programs_file_is_left_alone() throws IOException {
            Files.createDirectories(folder);
            String text = "This is a letter and not a record. ".repeat(100);
            Files.writeString(database(), text);
            assertRefused(SqliteEventJournalIT.this::open, Reason.NOT_A_RECORD, "record.db is not a record");
            assertRefused(SqliteEventJournalIT.this::openReadOnly, Reason.NOT_A_RECORD, "record.db is not a record");
            assertThat(database()).hasContent(text);
        }

        @Test
        void another_programs_database_is_left_alone() throws IOException, SQLException {
            Files.createDirectories(folder);
            execute("CREATE TABLE milk (litres REAL)");
            assertRefused(SqliteEventJournalIT.this::open, Reason.NOT_A_RECORD, "a database for something else");
        }

        @Test
        void a_truncated_record_is_told_as_damaged() throws IOException {
            byte[] sound = soundRecord();
            for (int kept : List.of(100, 4096, sound.length / 2, sound.length - 4096, sound.length - 1)) {
                Files.write(database(), Arrays.copyOf(sound, kept));
                assertThatThrownBy(() -> openAndReadAll())
                        .as("%s of %s bytes", kept, sound.length)
                        .isInstanceOfSatisfying(
                                JournalException.class,
                                e -> assertThat(e.reason()).isIn(Reason.CORRUPT, Reason.NOT_A_RECORD))
                        .hasMessageMatching("(?s)[A-Z].*\\.");
            }
        }

        @Test
        void a_page_of_noise_is_told_as_damaged() throws IOException {
            byte[] record = soundRecord();
            byte[] noise = new byte[4096];
            new Random(SEED).nextBytes(noise);
            System.arraycopy(noise, 0, record, record.length / 4096 / 2 * 4096, noise.length);
            Files.write(database(), record);
            assertRefused(this::openAndReadAll, Reason.CORRUPT, "is damaged");
        }

        @Test
        void a_flipped_bit_never_ends_without_a_sentence() throws IOException {
            byte[] sound = soundRecord();
            Random random = new Random(SEED);
            for (int i = 0; i < 60; i++) {
                byte[] flipped = sound.clone();
                // Half of them where it hurts most: in the header and the schema.
                int place = random.nextInt(i % 2 == 0 ? 4096 : sound.length);
                flipped[place] ^= (byte) (1 << random.nextInt(8));
                Files.write(database(), flipped);
                try {
                    openAndReadAll();
                } catch (JournalException e) {
                    assertThat(e.getMessage())
                            .as("seed %s, byte %s", SEED, place)
                            .matches("(?s)[A-Z].{30,}\\.");
                }
            }
        }

        private byte[] soundRecord() throws IOException {
            try (SqliteEventJournal journal = open()) {
                journal.append(randomFacts(300));
            }
            return Files.readAllBytes(database());
        }

        private void openAndReadAll() {
            try (SqliteEventJournal journal = open()) {
                journal.all();
                journal.append(randomFacts(1));
            }
        }
    }

    private SqliteEventJournal open() {
        return open(ids);
    }

    private SqliteEventJournal open(Supplier<UUID> chosen) {
        return SqliteEventJournal.open(folder, Clock.fixed(NOW, ZoneOffset.UTC), ZONE, chosen);
    }

    private SqliteEventJournal openReadOnly() {
        return SqliteEventJournal.openReadOnly(folder, Clock.fixed(NOW, ZoneOffset.UTC), ZONE, ids);
    }

    private Connection connectionOfNewRecord() {
        open().close();
        return new RecordFile(folder).connect();
    }

    private Path database() {
        return folder.resolve("record.db");
    }

    private Connection raw() throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + database());
    }

    private void execute(String sql) throws SQLException {
        try (Connection raw = raw();
                Statement statement = raw.createStatement()) {
            statement.executeUpdate(sql);
        }
    }

    private static List<NewEvent> randomFacts(int count) {
        RandomEvents events = new RandomEvents(new Random(SEED));
        List<NewEvent> facts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            facts.add(new NewEvent(
                    i % 5 == 0 ? null : CALF,
                    events.next(),
                    NOW.minusSeconds(i),
                    Provenance.of(Provenance.Source.BUTTON)));
        }
        return facts;
    }

    private static void assertRefused(ThrowingCallable action, Reason reason, String... parts) {
        assertThatThrownBy(action)
                .isInstanceOfSatisfying(
                        JournalException.class, e -> assertThat(e.reason()).isEqualTo(reason))
                .hasMessageContainingAll(parts)
                .hasMessageEndingWith(".");
    }
}
