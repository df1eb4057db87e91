package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SqliteTroubleIT extends RecordInFolder {
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
                assertRefused(SqliteTroubleIT.this::open, Reason.READ_ONLY, "may only be read");
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
            try (Connection connection = RecordFile.in(folder).connectReadOnly();
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
            assertRefused(SqliteTroubleIT.this::open, Reason.NOT_A_RECORD, folder + " is a file");
        }
    }

    @Nested
    @DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
    class When_it_is_not_a_sound_record {
        @Test
        void a_newer_schema_is_left_alone() throws SQLException {
            open().close();
            execute(
                    "INSERT INTO flyway_schema_history SELECT 99, '99', 'newer', type, 'V99__newer.sql', 1, installed_by,"
                            + " installed_on, 1, success FROM flyway_schema_history LIMIT 1");
            assertRefused(
                    SqliteTroubleIT.this::open,
                    Reason.NEWER,
                    "its schema is 99, this program knows " + RecordFile.SCHEMA);
            assertRefused(SqliteTroubleIT.this::openReadOnly, Reason.NEWER, "Use the newer program");
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
            assertRefused(SqliteTroubleIT.this::openReadOnly, Reason.NOT_A_RECORD, "there is no such file");
        }

        @Test
        void another_programs_file_is_left_alone() throws IOException {
            Files.createDirectories(folder);
            String text = "This is a letter and not a record. ".repeat(100);
            Files.writeString(database(), text);
            assertRefused(SqliteTroubleIT.this::open, Reason.NOT_A_RECORD, "record.db is not a record");
            assertRefused(SqliteTroubleIT.this::openReadOnly, Reason.NOT_A_RECORD, "record.db is not a record");
            assertThat(database()).hasContent(text);
        }

        @Test
        void another_programs_database_is_left_alone() throws IOException, SQLException {
            Files.createDirectories(folder);
            execute("CREATE TABLE milk (litres REAL)");
            assertRefused(SqliteTroubleIT.this::open, Reason.NOT_A_RECORD, "a database for something else");
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

        /** The file is made big by what SQLite leaves behind of a table that is gone. */
        @Test
        void a_big_record_opens_at_once_and_is_looked_through_later() throws IOException, SQLException {
            open().close();
            execute("CREATE TABLE filler (bytes BLOB)");
            execute("INSERT INTO filler VALUES (zeroblob(101000000))");
            execute("DROP TABLE filler");
            assertThatCode(() -> SqliteEventJournal.lookThrough(folder)).doesNotThrowAnyException();
            noise(rootPage("event_by_sound"));
            open().close();
            openReadOnly().close();
            assertRefused(() -> SqliteEventJournal.lookThrough(folder), Reason.CORRUPT, "is damaged");
        }

        private int rootPage(String index) throws SQLException {
            try (Connection raw = raw();
                    Statement statement = raw.createStatement()) {
                return statement
                        .executeQuery("SELECT rootpage FROM sqlite_schema WHERE name = '" + index + "'")
                        .getInt(1);
            }
        }

        private void noise(int page) throws IOException {
            byte[] noise = new byte[4096];
            new Random(SEED).nextBytes(noise);
            try (RandomAccessFile file = new RandomAccessFile(database().toFile(), "rw")) {
                file.seek((page - 1) * 4096L);
                file.write(noise);
            }
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
}
