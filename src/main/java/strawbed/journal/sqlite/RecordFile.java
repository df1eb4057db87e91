package strawbed.journal.sqlite;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.ObjIntConsumer;
import java.util.function.Supplier;
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
    /** The number of the newest migration. */
    static final int SCHEMA = 5;

    /** In bytes: about 6,000 calves, looked through in a fifth of a second. */
    private static final long SMALL = 100_000_000;

    /** Facts are read from this schema on without a migration. */
    private static final int OLDEST_READABLE = 1;

    /** From this schema on facts have an operator. */
    private static final int OPERATOR_SCHEMA = 3;

    /** Sorts by time and is a file name on every system. */
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private static final int BUSY_MILLISECONDS = 250;
    private static final String NOT_OPENED = "the record was not opened";

    private final Path path;

    private RecordFile(Path path) {
        this.path = path;
    }

    /** The record of a data folder. */
    static RecordFile in(Path directory) {
        return new RecordFile(directory.resolve("record.db"));
    }

    /** A record elsewhere, such as a backup. */
    static RecordFile at(Path file) {
        return new RecordFile(file);
    }

    Path path() {
        return path;
    }

    /** Where another file of this record goes: named after it, what it is and the time, and not there yet. */
    Path beside(String what, Instant time) {
        String stem = "record-" + what + "-" + STAMP.format(time);
        Path free = path.resolveSibling(stem + ".db");
        // A log of that name would be taken for the log of the new file.
        for (int i = 2; Files.exists(free) || Files.exists(free.resolveSibling(free.getFileName() + "-wal")); i++) {
            free = path.resolveSibling(stem + "-" + i + ".db");
        }
        return free;
    }

    /**
     * A connection for writing to a sound record of the newest schema. A record of an older one is first copied as it
     * is, then brought to the newest.
     *
     * @param clock dates the copy
     * @param ids names the station of a record that has none
     */
    Connection connect(Clock clock, Supplier<UUID> ids) {
        // SQLite would open it all the same and refuse the first fact, in the middle of the night.
        if (EmptiedRecord.isThere(path) && !Files.isWritable(path)) {
            throw SqliteFailure.readOnly(NOT_OPENED, path, null);
        }
        // SQLite gives the log and its index the rights of the file.
        DataFolder.makeOwners(path);
        SQLiteDataSource source = source(writing(), path.toString());
        return connect(source, (handle, schema) -> {
            // Flyway costs half a second in a fresh program: only where there is something to do.
            if (schema < SCHEMA) {
                if (schema >= OLDEST_READABLE) {
                    RecordCopy.write(handle, beside("schema-" + schema, clock.instant()));
                }
                migrate(source, ids);
            }
        });
    }

    /** A connection for reading from a record of any schema that has facts. */
    Connection connectReadOnly() {
        if (!EmptiedRecord.isThere(path)) {
            throw notARecord(Files.exists(path) ? "it is empty" : "there is no such file");
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        SQLiteDataSource source = source(config, unchanging() ? path.toUri() + "?immutable=1" : path.toString());
        return connect(source, (handle, schema) -> {
            if (schema < OLDEST_READABLE) {
                refuseWithoutLog();
                throw notARecord("its schema is " + schema + ", not " + SCHEMA);
            }
            if (schema < OPERATOR_SCHEMA) {
                // Over the table of the same name, so that whoever reads need not know of older ones.
                handle.execute("CREATE TEMP VIEW event AS SELECT *, NULL AS operator FROM main.event");
            }
        });
    }

    /** A record whose first night was never folded in has all its facts, and even its tables, in its log. */
    private void refuseWithoutLog() {
        HeadNote.Head newest = HeadNote.of(path).read().newest();
        if (newest != null) {
            throw new JournalException(
                    Reason.CORRUPT,
                    "The record was not read. " + newest.missing("all are gone").text(),
                    null);
        }
    }

    /** Takes what is in the log beside the file into the file. Nobody else may write. */
    void foldLog() {
        try (Handle handle = Jdbi.open(source(writing(), path.toString()).getConnection())) {
            handle.createQuery("PRAGMA wal_checkpoint(TRUNCATE)").mapToMap().list();
        } catch (SQLException | JdbiException e) {
            throw failure("the record was not put in order", e);
        }
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

    private static SQLiteConfig writing() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(JournalMode.WAL);
        config.setSynchronous(SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        return config;
    }

    private static SQLiteDataSource source(SQLiteConfig config, String name) {
        config.setBusyTimeout(BUSY_MILLISECONDS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + name);
        return source;
    }

    /** @param prepare is given the schema, 0 for an empty file */
    private Connection connect(SQLiteDataSource source, ObjIntConsumer<Handle> prepare) {
        try {
            Connection connection = source.getConnection();
            try {
                Handle handle = Jdbi.open(connection);
                prepare.accept(handle, knownSchema(handle));
                return connection;
            } catch (RuntimeException e) {
                connection.close();
                throw e;
            }
        } catch (SQLException | JdbiException | FlywayException e) {
            throw failure(NOT_OPENED, e);
        }
    }

    private int knownSchema(Handle handle) {
        if (isSmall()) {
            refuseDamaged(handle);
        } else {
            // Reads its first page, so that what is no database is told as such.
            count(handle, "PRAGMA schema_version");
        }
        int schema = schema(handle).orElse(0);
        if (schema > SCHEMA) {
            throw new JournalException(
                    Reason.NEWER,
                    "The record " + path + " was written by a newer Strawbed (its schema is " + schema
                            + ", this program knows " + SCHEMA + "). Use the newer program.",
                    null);
        }
        return schema;
    }

    /** Whether it can be looked through and read while a person waits. */
    boolean isSmall() {
        return path.toFile().length() <= SMALL;
    }

    /**
     * Looks through the file of a big record, which opening it does not do; of a small one it has been done. Others may
     * write meanwhile.
     *
     * @throws JournalException for {@link Reason#CORRUPT} if it is damaged
     */
    void lookThrough() {
        if (!isSmall()) {
            try (Handle handle = Jdbi.open(connectReadOnly())) {
                refuseDamaged(handle);
            } catch (JdbiException e) {
                throw failure("the record was not looked through", e);
            }
        }
    }

    private void refuseDamaged(Handle handle) {
        String health =
                handle.createQuery("PRAGMA quick_check(1)").mapTo(String.class).one();
        if (!health.equals("ok")) {
            throw SqliteFailure.damaged(NOT_OPENED, path, health, null);
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
        return Optional.of(newestMigration(handle));
    }

    /** The schema of a record. */
    static int newestMigration(Handle handle) {
        return count(
                handle, "SELECT coalesce(max(CAST(version AS INTEGER)), 0) FROM flyway_schema_history WHERE success");
    }

    private static int count(Handle handle, String sql) {
        return handle.createQuery(sql).mapTo(Integer.class).one();
    }

    private static void migrate(SQLiteDataSource source, Supplier<UUID> ids) {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/migration")
                .failOnMissingLocations(true)
                .javaMigrations(new ChainMigration(ids))
                .group(true)
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
