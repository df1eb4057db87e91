package strawbed.journal.sqlite;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.zip.CRC32;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.migration.Context;
import org.flywaydb.core.api.migration.JavaMigration;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * From schema 1 to 2, in one transaction: makes the tables of the chain, names the station and links all facts that are
 * there. In Java, because SQLite has no SHA-256.
 */
final class ChainMigration implements JavaMigration {
    static final String SCRIPT = "/db/V2__chain.sql";

    /** Links written at once: a record of many nights need not fit in memory. */
    private static final int AT_ONCE = 1000;

    private final Supplier<UUID> ids;

    ChainMigration(Supplier<UUID> ids) {
        this.ids = ids;
    }

    @Override
    public MigrationVersion getVersion() {
        return MigrationVersion.fromVersion("2");
    }

    @Override
    public String getDescription() {
        return "chain";
    }

    @Override
    public Integer getChecksum() {
        CRC32 sum = new CRC32();
        sum.update(script(SCRIPT).getBytes(StandardCharsets.UTF_8));
        return (int) sum.getValue();
    }

    @Override
    public boolean canExecuteInTransaction() {
        return true;
    }

    @Override
    public void migrate(Context context) throws SQLException {
        try (Statement statement = context.getConnection().createStatement()) {
            statement.executeUpdate(script(SCRIPT));
        }
        // Not closed: the connection is Flyway's, which commits.
        Handle handle = Jdbi.open(context.getConnection());
        Chain.name(handle, ids.get());
        link(handle);
    }

    /** A script of the program as text, with the line ends of Unix. */
    static String script(String name) {
        try (InputStream script = ChainMigration.class.getResourceAsStream(name)) {
            if (script == null) {
                throw new LinkageError("the program lacks its file " + name);
            }
            return new String(script.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException("the program's file " + name + " cannot be read", e);
        }
    }

    private static void link(Handle handle) {
        long done = 0;
        long found;
        do {
            long before = done;
            try (Chain chain = new Chain(handle)) {
                done = handle.createQuery(
                                "SELECT *, NULL AS operator FROM event WHERE sequence > ? ORDER BY sequence LIMIT "
                                        + AT_ONCE)
                        .bind(0, before)
                        .map((row, context) -> {
                            chain.add(row.getLong("sequence"), EventRow.of(row));
                            return row.getLong("sequence");
                        })
                        .reduce(before, (earlier, later) -> later);
                chain.write();
            }
            found = done - before;
        } while (found > 0);
    }
}
