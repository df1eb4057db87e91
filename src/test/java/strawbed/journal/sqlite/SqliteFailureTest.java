package strawbed.journal.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.SQLException;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** Source of the codes: SQLite, Result and Error Codes; an extended code has its primary one in its lowest byte. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SqliteFailureTest {
    @TempDir
    Path folder;

    private JournalException told(Exception failure) {
        return SqliteFailure.of("1 fact was not saved", folder.resolve("record.db"), failure);
    }

    @ParameterizedTest
    @CsvSource({
        "3, SQLITE_PERM, READ_ONLY, may only be read",
        "5, SQLITE_BUSY, BUSY, another program uses",
        "6, SQLITE_LOCKED, BUSY, another program uses",
        "8, SQLITE_READONLY, READ_ONLY, may only be read",
        "10, SQLITE_IOERR, FAILED, Check the disk",
        "11, SQLITE_CORRUPT, CORRUPT, is damaged",
        "13, SQLITE_FULL, FULL, is full",
        "14, SQLITE_CANTOPEN, FAILED, Check the disk",
        "19, SQLITE_CONSTRAINT, FAILED, gave the error",
        "26, SQLITE_NOTADB, NOT_A_RECORD, is not a record",
        "264, SQLITE_READONLY_RECOVERY, READ_ONLY, may only be read",
        "267, SQLITE_CORRUPT_VTAB, CORRUPT, is damaged",
        "517, SQLITE_BUSY_SNAPSHOT, BUSY, another program uses",
        "778, SQLITE_IOERR_WRITE, FAILED, Check the disk",
        "1032, SQLITE_READONLY_DBMOVED, READ_ONLY, may only be read",
    })
    void each_code_has_its_reason_and_remedy(int code, String name, Reason reason, String part) {
        JournalException failure = told(new IllegalStateException(new SQLException(name, null, code)));
        assertThat(failure.reason()).as(name).isEqualTo(reason);
        assertThat(failure)
                .hasMessageStartingWith("1 fact was not saved: ")
                .hasMessageContainingAll(part, folder.resolve("record.db").toString())
                .hasMessageEndingWith(".");
    }

    /** Where the log of a record was left on a stick with its switch set, SQLite cannot make the log's index. */
    @Test
    void what_cannot_be_opened_in_a_folder_that_takes_no_writing_is_told_as_read_only() throws IOException {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-x------"));
        try {
            assumeThat(folder.toFile().canWrite()).as("nothing binds this user").isFalse();
            assertThat(told(new SQLException("SQLITE_CANTOPEN", null, 14)).reason())
                    .isEqualTo(Reason.READ_ONLY);
        } finally {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    @Test
    void what_is_no_failure_of_sqlite_is_told_in_its_own_words() {
        JournalException failure = told(new IllegalStateException("hay in the drive"));
        assertThat(failure.reason()).isEqualTo(Reason.FAILED);
        assertThat(failure).hasMessageContaining("\"hay in the drive\"");
    }

    @Test
    void a_record_that_cannot_be_made_for_lack_of_room_is_told_as_a_full_disk() {
        Path file = folder.resolve("record.db");
        assertThat(SqliteFailure.notMade(file, new IOException(file + ": No space left on device"))
                        .reason())
                .isEqualTo(Reason.FULL);
        assertThat(SqliteFailure.notMade(file, new IOException("Input/output error"))
                        .reason())
                .isEqualTo(Reason.FAILED);
    }
}
