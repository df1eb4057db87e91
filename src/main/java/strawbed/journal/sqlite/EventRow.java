package strawbed.journal.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jspecify.annotations.Nullable;

/**
 * A row of the table of facts as it stands there, without its place.
 *
 * @param version of the stored form of its kind, from 1
 */
record EventRow(
        String id,
        String recordedAt,
        String occurredAt,
        String zone,
        @Nullable String calf,
        String type,
        int version,
        String json,
        String source,
        @Nullable String words,
        @Nullable String verdict,
        @Nullable String grammar,
        @Nullable String model,
        @Nullable String sound,
        @Nullable String operator) {
    /**
     * The row on which the result stands.
     *
     * @throws IllegalArgumentException if a column that is never empty is empty, as only damage can make it
     */
    static EventRow of(ResultSet row) throws SQLException {
        return new EventRow(
                present(row, "id"),
                present(row, "recorded_at"),
                present(row, "occurred_at"),
                present(row, "zone"),
                row.getString("calf"),
                present(row, "type"),
                row.getInt("version"),
                present(row, "json"),
                present(row, "source"),
                row.getString("words"),
                row.getString("verdict"),
                row.getString("grammar"),
                row.getString("model"),
                row.getString("sound"),
                row.getString("operator"));
    }

    <T extends SqlStatement<T>> T bindTo(T statement) {
        return statement
                .bind("id", id)
                .bind("recorded_at", recordedAt)
                .bind("occurred_at", occurredAt)
                .bind("zone", zone)
                .bind("calf", calf)
                .bind("type", type)
                .bind("version", version)
                .bind("json", json)
                .bind("source", source)
                .bind("words", words)
                .bind("verdict", verdict)
                .bind("grammar", grammar)
                .bind("model", model)
                .bind("sound", sound)
                .bind("operator", operator);
    }

    private static String present(ResultSet row, String column) throws SQLException {
        @Nullable String text = row.getString(column);
        if (text == null) {
            throw new IllegalArgumentException("its column " + column + " is empty");
        }
        return text;
    }
}
