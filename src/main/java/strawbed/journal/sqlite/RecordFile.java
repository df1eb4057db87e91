package strawbed.journal.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.JournalMode;
import org.sqlite.SQLiteConfig.SynchronousMode;
import org.sqlite.SQLiteDataSource;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** The SQLite file of a data folder: how it is opened, and whether it is a record this program knows. */
final class RecordFile {
    /** The number of the newest script in db/migration. */
    static final int SCHEMA = 1;

    private static final int BUSY_MILLISECONDS = 250;
    private static final String NOT_OPENED = "the record was not opened";

    private final Path path;

    RecordFile(Path directory) {
        this.path = directory.resolve("record.db");
    }

    /** A connection for writing to a sound record of the newest schema. */
    Connection connect() {
        // SQLite would open it all the same and refuse the first fact, in the middle of the night.
        if (Files.exists(path) && !Files.isWritable(path)) {
            throw SqliteFailure.readOnly(NOT_OPENED, path, null);
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        return connect(config, path.toString(), true);
    }

    /** A connection for reading from a record of the newest schema. */
    Connection connectReadOnly() {
        if (!Files.isRegularFile(path)) {
            throw notARecord("there is no such file");
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        return connect(config, unchanging() ? path.toUri() + "?immutable=1" : path.toString(), false);
    }

    /**
     * On a folder that takes no writing, such as a stick with its switch set, SQLite cannot make the files through which
     * readers and writer agree. Nobody writes there, so it need not; unless a log was left behind that must be read.
     */
    private boolean unchanging() {
        return !Files.isWritable(path.toAbsolutePath().resolveSibling(""))
                && !Files.exists(path.resolveSibling(path.getFileName() + "-wal"));
    }

    JournalException failure(String otherwise, Exception e) {
        return SqliteFailure.of(otherwise, path, e);
    }

    @Override
    public String toString() {
        return path.toString();
    }

    private Connection connect(SQLiteConfig config, String name, boolean migrate) {
        config.setBusyTimeout(BUSY_MILLISECONDS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + name);
        try {
            Connection connection = source.getConnection();
            try {
                examine(connection, source, migrate);
                return connection;
            } catch (RuntimeException e) {
                connection.close();
                throw e;
            }
        } catch (SQLException | JdbiException | FlywayException e) {
            throw failure(NOT_OPENED, e);
        }
    }

    private void examine(Connection connection, SQLiteDataSource source, boolean migrate) {
        Handle handle = Jdbi.open(connection);
        String health =
                handle.createQuery("PRAGMA quick_check(1)").mapTo(String.class).one();
        if (!health.equals("ok")) {
            throw SqliteFailure.damaged(NOT_OPENED, path, health, null);
        }
        int schema = schema(handle).orElse(0);
        if (schema > SCHEMA) {
            throw new JournalException(
                    Reason.NEWER,
                    "The record " + path + " was written by a newer Strawbed (its schema is " + schema
                            + ", this program knows " + SCHEMA + "). Use the newer program.",
                    null);
        }
        if (schema < SCHEMA && !migrate) {
            throw notARecord("its schema is " + schema + ", not " + SCHEMA);
        }
        // Flyway costs half a second in a fresh program: only where there is something to do.
        if (schema < SCHEMA) {
            migrate(source);
        }
    }

    private Optional<Integer> schema(Handle handle) {
        int tables = count(handle, "SELECT count(*) FROM sqlite_schema");
        if (tables == 0) {
            return Optional.empty();
        }
        if (count(handle, "SELECT count(*) FROM sqlite_schema WHERE name = 'flyway_schema_history'") == 0) {
            throw notARecord("it is a database for something else");
        }
        return handle.createQuery("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history WHERE success")
                .mapTo(Integer.class)
                .findOne();
    }

    private static int count(Handle handle, String sql) {
        return handle.createQuery(sql).mapTo(Integer.class).one();
    }

    private static void migrate(SQLiteDataSource source) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .failOnMissingLocations(true)
                .load()
                .migrate();
    }

    private JournalException notARecord(String why) {
        return new JournalException(
                Reason.NOT_A_RECORD,
                "The file " + path + " is not a record: " + why
                        + ". Choose another data folder, or move the file away.",
                null);
    }
}
