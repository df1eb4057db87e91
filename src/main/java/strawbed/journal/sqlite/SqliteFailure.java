package strawbed.journal.sqlite;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** Says in a sentence what SQLite says in a result code. Source of the codes: SQLite, Result and Error Codes. */
final class SqliteFailure {
    private static final int PRIMARY = 0xff;

    private static final long INDEX_STEP = 32 * 1024;

    private static final String RESCUE =
            "\"strawbed rescue --to DIR\" takes all facts that are intact into a new record.";

    private SqliteFailure() {}

    /**
     * The exception for a failure of SQLite.
     *
     * @param otherwise what did not happen, as a clause
     */
    static JournalException of(String otherwise, Path file, Exception failure) {
        SQLException sql = firstSql(failure);
        int code = sql == null ? -1 : sql.getErrorCode() & PRIMARY;
        if (is(code, SQLiteErrorCode.SQLITE_BUSY, SQLiteErrorCode.SQLITE_LOCKED)) {
            return exception(
                    Reason.BUSY, otherwise, "another program uses " + file, "Close it, then try again.", failure);
        }
        if (is(code, SQLiteErrorCode.SQLITE_FULL) || (is(code, SQLiteErrorCode.SQLITE_IOERR) && noSpaceFor(file))) {
            return exception(
                    Reason.FULL,
                    otherwise,
                    "the disk that holds " + file + " is full",
                    "What was saved before is safe. Free some space, then try again.",
                    failure);
        }
        if (is(code, SQLiteErrorCode.SQLITE_READONLY, SQLiteErrorCode.SQLITE_PERM)
                || (is(code, SQLiteErrorCode.SQLITE_CANTOPEN) && !folderOf(file).canWrite())) {
            return readOnly(otherwise, file, failure);
        }
        if (is(code, SQLiteErrorCode.SQLITE_CORRUPT)) {
            return damaged(otherwise, file, text(sql), failure);
        }
        if (is(code, SQLiteErrorCode.SQLITE_NOTADB)) {
            return exception(
                    Reason.NOT_A_RECORD,
                    otherwise,
                    file + " is not a record",
                    "Choose another data folder, or move the file away. If it was a record once, " + RESCUE,
                    failure);
        }
        return exception(
                Reason.FAILED,
                otherwise,
                file + " gave the error \"" + text(sql == null ? failure : sql) + "\"",
                "Check the disk and your right to write there, then try again.",
                failure);
    }

    static JournalException readOnly(String otherwise, Path file, @Nullable Exception cause) {
        return exception(
                Reason.READ_ONLY,
                otherwise,
                file + " may only be read",
                "Ask for the right to write to it, or choose another data folder.",
                cause);
    }

    /** When the record's file could not even be made. */
    static JournalException notMade(Path file, IOException failure) {
        boolean noSpace = String.valueOf(failure.getMessage()).contains("No space");
        return exception(
                noSpace ? Reason.FULL : Reason.FAILED,
                "the record was not opened",
                noSpace ? "the disk that holds " + file + " is full" : file + " cannot be made (" + failure + ")",
                noSpace ? "Free some space, then try again." : "Check the disk and your right to write there.",
                failure);
    }

    static JournalException damaged(String otherwise, Path file, String how, @Nullable Exception cause) {
        return exception(
                Reason.CORRUPT,
                otherwise,
                file + " is damaged (" + how.strip() + ")",
                "Keep it as it is, and put a copy of the record that is sound in its place; if none is new enough, "
                        + RESCUE,
                cause);
    }

    private static JournalException exception(
            Reason reason, String otherwise, String why, String remedy, @Nullable Exception cause) {
        String clause = Character.toUpperCase(otherwise.charAt(0)) + otherwise.substring(1);
        return new JournalException(reason, clause + ": " + why + ". " + remedy, cause);
    }

    private static @Nullable SQLException firstSql(Throwable failure) {
        for (Throwable each = failure; each != null; each = each.getCause()) {
            if (each instanceof SQLException sql) {
                return sql;
            }
        }
        return null;
    }

    /** The log's index, which SQLite reports as an error of the disk and not as a full one, grows by 32 KiB at once. */
    private static boolean noSpaceFor(Path file) {
        return folderOf(file).getUsableSpace() < INDEX_STEP;
    }

    private static File folderOf(Path file) {
        return file.toAbsolutePath().resolveSibling("").toFile();
    }

    private static boolean is(int code, SQLiteErrorCode... codes) {
        for (SQLiteErrorCode each : codes) {
            if (each.code == code) {
                return true;
            }
        }
        return false;
    }

    private static String text(@Nullable Throwable failure) {
        return failure == null ? "no reason" : String.valueOf(failure.getMessage());
    }
}
