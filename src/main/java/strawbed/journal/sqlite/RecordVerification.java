package strawbed.journal.sqlite;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import strawbed.journal.JournalException;

/** One look through a whole record, all of it as it was when the look began. */
final class RecordVerification {
    static final String COMPARE = "Keep the file as it is, and compare it with a backup.";

    private static final String RESTORE = "Keep the file as it is, and restore the record from a backup; if none is new"
            + " enough, \"strawbed rescue --to DIR\" takes all facts that are intact into a new record.";

    /** What made the tables of each schema, from the first on. */
    private static final List<String> SCRIPTS = List.of(
            "/db/migration/V1__journal.sql",
            ChainMigration.SCRIPT,
            "/db/migration/V3__operator.sql",
            "/db/migration/V4__indexes.sql",
            "/db/migration/V5__more_indexes.sql");

    /** More of the same helps nobody. */
    private static final int COMPLAINTS = 20;

    private final Handle handle;
    private final Path file;
    private final List<Finding> findings = new ArrayList<>();

    private RecordVerification(Handle handle, Path file) {
        this.handle = handle;
        this.file = file;
    }

    /**
     * Looks through a record that could be opened.
     *
     * @param handle in no transaction
     * @param file named in findings
     */
    static RecordHealth of(Handle handle, Path file) {
        handle.execute("BEGIN");
        try {
            return new RecordVerification(handle, file).look();
        } finally {
            handle.execute("ROLLBACK");
        }
    }

    private RecordHealth look() {
        int schema = RecordFile.newestMigration(handle);
        boolean isChained = schema >= 2;
        step(open -> integrity());
        step(open -> tables(schema));
        step(open -> references());
        if (isChained) {
            step(open -> station());
        }
        ChainCheck chain = new ChainCheck(isChained, findings::add);
        step(chain::look);
        step(open -> statements());
        return new RecordHealth(chain.facts(), isChained, chain.last(), chain.head(), findings);
    }

    /** What stops one step is a finding too; the others are still worth their while. */
    private void step(Consumer<Handle> look) {
        try {
            look.accept(handle);
        } catch (JdbiException e) {
            add(
                    String.valueOf(SqliteFailure.of("a part of the record was not read", file, e)
                            .getMessage()),
                    RESTORE);
        }
    }

    private void integrity() {
        handle.createQuery("PRAGMA integrity_check(" + COMPLAINTS + ")")
                .mapTo(String.class)
                .filter(complaint -> !complaint.equals("ok"))
                .forEach(complaint -> add("The file is damaged (" + complaint.strip() + ").", RESTORE));
    }

    /** Also finds triggers that a tool took away to change what they protect, and those that it left behind. */
    private void tables(int schema) {
        Map<String, String> found = definitions(handle);
        Map<String, String> made = made(schema);
        made.forEach((name, definition) -> {
            if (!found.containsKey(name)) {
                add("The record's " + name + " is gone: somebody removed it.", COMPARE);
            } else if (!definition.equals(found.get(name))) {
                add("The record's " + name + " is not as Strawbed made it.", COMPARE);
            }
        });
        found.keySet().stream()
                .filter(name -> !made.containsKey(name))
                .forEach(name -> add("The record has a " + name + " that Strawbed did not make.", COMPARE));
    }

    private static Map<String, String> made(int schema) {
        try (Connection memory = DriverManager.getConnection("jdbc:sqlite::memory:");
                Statement statement = memory.createStatement()) {
            for (String script : SCRIPTS.subList(0, schema)) {
                statement.executeUpdate(ChainMigration.script(script));
            }
            return definitions(Jdbi.open(memory));
        } catch (SQLException e) {
            throw new LinkageError("the program's own scripts make no record", e);
        }
    }

    /** By kind and name, such as "table event"; white space does not count. */
    private static Map<String, String> definitions(Handle handle) {
        Map<String, String> definitions = new TreeMap<>();
        handle.createQuery("SELECT type || ' ' || name AS name, sql FROM sqlite_schema"
                        + " WHERE tbl_name <> 'flyway_schema_history' AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\'")
                .map((row, context) -> Map.entry(row.getString("name"), definition(row)))
                .forEach(entry -> definitions.put(entry.getKey(), entry.getValue()));
        return definitions;
    }

    private static String definition(ResultSet row) throws SQLException {
        return String.valueOf(row.getString("sql")).replaceAll("\\s+", " ");
    }

    /** Of links without a fact, the chain's own check tells more. */
    private void references() {
        handle.createQuery("PRAGMA foreign_key_check")
                .map((row, context) -> row.getString("table"))
                .filter(table -> !table.equals("event_chain"))
                .forEach(table -> add("A row of the table " + table + " points at a row that is gone.", COMPARE));
    }

    private void station() {
        List<String> stations =
                handle.createQuery("SELECT id FROM station").mapTo(String.class).list();
        if (stations.size() != 1 || !isId(stations.get(0))) {
            add("The record should name one station and names " + stations + ".", COMPARE);
        }
        handle.createQuery("SELECT DISTINCT station FROM event_chain WHERE station NOT IN (SELECT id FROM station)")
                .mapTo(String.class)
                .forEach(other ->
                        add("Facts are chained to a station " + other + ", which is not the record's.", COMPARE));
    }

    private static boolean isId(String text) {
        try {
            return UUID.fromString(text).toString().equals(text);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private void statements() {
        try {
            new StatementTable(() -> new UUID(0, 0)).open(handle);
        } catch (JournalException e) {
            add(String.valueOf(e.getMessage()), COMPARE);
        }
    }

    private void add(String what, String remedy) {
        findings.add(new Finding(null, what, remedy));
    }
}
