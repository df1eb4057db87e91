package strawbed.journal.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import strawbed.event.CalfId;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventCodec;
import strawbed.journal.RecordParts.Naming;

/**
 * Reads parts of the table of facts through the indexes of schemas 4 and 5. An older record has none and is read all the same,
 * only slower.
 */
final class EventParts {
    /** The white space that {@link String#strip} takes away. */
    private static final String BLANKS = "char(9, 10, 11, 12, 13, 28, 29, 30, 31, 32, 5760, 8192, 8193, 8194, 8195,"
            + " 8196, 8197, 8198, 8200, 8201, 8202, 8232, 8233, 8287, 12288)";

    /** No day that a clock can have told is outside of it. */
    private static final Instant FIRST_DAY = Instant.parse("0000-01-01T00:00:00Z");

    private static final Instant LAST_DAY = Instant.parse("9999-12-31T00:00:00Z");

    private final EventTable table;
    private final EventCodec codec = new EventCodec();

    EventParts(EventTable table) {
        this.table = table;
    }

    long count(Handle handle, long last) {
        return handle.createQuery("SELECT count(*) FROM event WHERE sequence <= :last")
                .bind("last", last)
                .mapTo(Long.class)
                .one();
    }

    void forEach(Handle handle, long last, Consumer<RecordedEvent> reader) {
        handle.createQuery("SELECT * FROM event WHERE sequence <= :last ORDER BY sequence")
                .bind("last", last)
                .map((row, context) -> table.read(row))
                .forEach(reader);
    }

    List<CalfId> calves(Handle handle) {
        return handle.createQuery("SELECT calf FROM event WHERE type = 'CalfOpened' AND calf IS NOT NULL"
                        + " GROUP BY calf ORDER BY min(sequence)")
                .map((row, context) -> CalfId.of(row.getString(1)))
                .list();
    }

    Set<CalfId> calvesRecorded(Handle handle, Instant from, Instant until) {
        return calves(handle.createQuery("SELECT DISTINCT calf FROM event"
                        + " WHERE substr(recorded_at, 1, 10) BETWEEN :from AND :until AND calf IS NOT NULL"
                        + " AND type <> 'CardPrinted'")
                .bind("from", day(from))
                .bind("until", day(until)));
    }

    Set<CalfId> calvesNaming(Handle handle, Naming how, Map<String, Instant> since) {
        if (since.isEmpty()) {
            return Set.of();
        }
        List<String> wanted = new ArrayList<>();
        since.forEach((name, from) -> wanted.add(day(from) + (how == Naming.BATCH ? name : plain(name))));
        return calves(handle.createQuery("SELECT DISTINCT named.calf FROM json_each(:wanted) AS wanted"
                        + " CROSS JOIN event AS named ON " + names(how) + " = substr(wanted.value, 11)"
                        + " AND named.type " + kinds(how)
                        + " WHERE named.calf IS NOT NULL AND EXISTS (SELECT 1 FROM event AS told"
                        + " WHERE told.calf = named.calf"
                        + " AND substr(told.recorded_at, 1, 10) >= substr(wanted.value, 1, 10))")
                .bind("wanted", codec.json(wanted)));
    }

    List<RecordedEvent> since(Handle handle, Instant day) {
        // What withdraws these facts follows them, so it is among them. Without the plus sign SQLite would go through
        // the
        // record from its start to find the least sequence, and not take the index of days.
        List<RecordedEvent> since = handle.createQuery(
                        "SELECT * FROM event WHERE sequence >= (SELECT min(+sequence) FROM event"
                                + " WHERE substr(recorded_at, 1, 10) >= :day) ORDER BY sequence")
                .bind("day", day(day))
                .map((row, context) -> table.read(row))
                .list();
        if (since.isEmpty()) {
            return List.of();
        }
        Set<String> calves = new LinkedHashSet<>();
        since.forEach(event -> {
            if (event.calf() != null) {
                calves.add(event.calf().toString());
            }
        });
        List<RecordedEvent> earlier =
                ofCalves(handle, toldBefore(handle, since.get(0).sequence(), calves));
        if (earlier.isEmpty()) {
            return since;
        }
        SortedMap<Long, RecordedEvent> all = new TreeMap<>();
        earlier.forEach(event -> all.put(event.sequence(), event));
        since.forEach(event -> all.put(event.sequence(), event));
        return List.copyOf(all.values());
    }

    private Set<CalfId> toldBefore(Handle handle, long sequence, Set<String> calves) {
        return calves(handle.createQuery("SELECT DISTINCT told.calf FROM json_each(:calves) AS wanted"
                        + " CROSS JOIN event AS told ON told.calf = wanted.value WHERE told.sequence < :sequence")
                .bind("calves", codec.json(List.copyOf(calves)))
                .bind("sequence", sequence));
    }

    List<RecordedEvent> ofCalves(Handle handle, Collection<CalfId> calves) {
        if (calves.isEmpty()) {
            return List.of();
        }
        return withWithdrawals(
                handle,
                "calf IN (SELECT value FROM json_each(:calves))",
                Map.of(
                        "calves",
                        codec.json(calves.stream().map(CalfId::toString).toList())));
    }

    List<RecordedEvent> ofBarn(Handle handle, Instant from) {
        return withWithdrawals(
                handle,
                "calf IS NULL AND type <> 'EventWithdrawn' AND (substr(occurred_at, 1, 10) >= :from"
                        + " OR type = 'ProtocolAdopted' OR sequence = (SELECT max(sequence) FROM event"
                        + " WHERE calf IS NULL AND type = 'OperatorChosen'))",
                Map.of("from", day(from)));
    }

    List<RecordedEvent> protocols(Handle handle) {
        return withWithdrawals(handle, "calf IS NULL AND type = 'ProtocolAdopted'", Map.of());
    }

    List<RecordedEvent> air(Handle handle, Instant from, Instant until) {
        return withWithdrawals(
                handle,
                "calf IS NULL AND type = 'BarnClimateNoted'"
                        + " AND substr(occurred_at, 1, 10) BETWEEN :from AND :until",
                Map.of("from", day(from), "until", day(until)));
    }

    List<RecordedEvent> stored(Handle handle, Collection<String> batches) {
        if (batches.isEmpty()) {
            return List.of();
        }
        // The kinds stand there as in the index, without which SQLite would not take it.
        return withWithdrawals(
                handle,
                "+calf IS NULL AND type IN ('ColostrumSourceNoted', 'ColostrumStored')"
                        + " AND json_extract(json, '$.batch') IN (SELECT value FROM json_each(:batches))"
                        + " AND type = 'ColostrumStored'",
                Map.of("batches", codec.json(List.copyOf(batches))));
    }

    /**
     * In two steps: in one, SQLite would first gather all of the part to look for withdrawals, which takes it longer than
     * all the rest.
     */
    private List<RecordedEvent> withWithdrawals(Handle handle, String which, Map<String, String> values) {
        Query query = handle.createQuery("SELECT * FROM event WHERE " + which);
        values.forEach(query::bind);
        // Sorted here: SQLite would write whole rows down to sort them, which takes it a tenth of the time of all.
        List<RecordedEvent> part = query.map((row, context) -> table.read(row)).stream()
                .sorted(Comparator.comparingLong(RecordedEvent::sequence))
                .toList();
        List<RecordedEvent> withdrawals = withdrawals(handle, part);
        if (withdrawals.isEmpty()) {
            return part;
        }
        SortedMap<Long, RecordedEvent> all = new TreeMap<>();
        part.forEach(event -> all.put(event.sequence(), event));
        withdrawals.forEach(event -> all.put(event.sequence(), event));
        return List.copyOf(all.values());
    }

    /** Withdrawals of withdrawals too, for as long as any are found. */
    private List<RecordedEvent> withdrawals(Handle handle, List<RecordedEvent> part) {
        return handle.createQuery("WITH RECURSIVE withdrawn (sequence, id) AS (SELECT 0, value FROM json_each(:ids)"
                        + " UNION SELECT later.sequence, later.id FROM withdrawn CROSS JOIN event AS later"
                        + " ON json_extract(later.json, '$.event') = withdrawn.id AND later.type = 'EventWithdrawn')"
                        + " SELECT event.* FROM withdrawn CROSS JOIN event ON event.sequence = withdrawn.sequence")
                .bind(
                        "ids",
                        codec.json(part.stream()
                                .map(event -> event.id().toString())
                                .toList()))
                .map((row, context) -> table.read(row))
                .list();
    }

    private static String names(Naming how) {
        return switch (how) {
            case NUMBER -> plainInSql("number");
            case DAM -> plainInSql("dam");
            case TWIN -> plainInSql("of");
            case BATCH -> "json_extract(named.json, '$.batch')";
        };
    }

    /** Letter for letter as in the index, without which SQLite would go through all facts for each name. */
    private static String kinds(Naming how) {
        return switch (how) {
            case NUMBER -> "IN ('CalfOpened', 'CalfNumbered', 'EarTagFitted')";
            case DAM -> "IN ('CalfOpened', 'DamNoted')";
            case TWIN -> "= 'TwinNoted'";
            case BATCH -> "IN ('ColostrumSourceNoted', 'ColostrumStored') AND named.type <> 'ColostrumStored'";
        };
    }

    private static String plainInSql(String field) {
        return "ltrim(trim(json_extract(named.json, '$." + field + "'), " + BLANKS + "), '0')";
    }

    /** As the indexes have it: of a lone zero nothing is left. */
    private static String plain(String number) {
        return number.strip().replaceFirst("^0+", "");
    }

    /** Days sort as texts; whole instants do not, as their fractions of a second have no fixed length. */
    private static String day(Instant time) {
        Instant known = time.isBefore(FIRST_DAY) ? FIRST_DAY : time.isAfter(LAST_DAY) ? LAST_DAY : time;
        return known.toString().substring(0, "9999-12-31".length());
    }

    private static Set<CalfId> calves(Query query) {
        Set<CalfId> calves = new LinkedHashSet<>();
        query.map((row, context) -> CalfId.of(text(row))).forEach(calves::add);
        return calves;
    }

    private static String text(ResultSet row) throws SQLException {
        return String.valueOf(row.getString(1));
    }
}
