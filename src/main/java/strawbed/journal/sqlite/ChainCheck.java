package strawbed.journal.sqlite;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import strawbed.journal.JournalException;

/** Goes once along all facts: gaps, hashes, links, and whether each can be read. */
final class ChainCheck {
    private final boolean isChained;
    private final Consumer<Finding> findings;
    private final EventTable reader = new EventTable(ZoneOffset.UTC, () -> new UUID(0, 0));

    /** The newest link of each station. */
    private final Map<String, String> heads = new HashMap<>();

    private long facts;
    private long place;
    private long last;
    private @Nullable String head;

    ChainCheck(boolean isChained, Consumer<Finding> findings) {
        this.isChained = isChained;
        this.findings = findings;
    }

    void look(Handle handle) {
        String rows = isChained
                ? "SELECT event.*, link.station, link.previous, link.hash FROM event"
                        + " LEFT JOIN event_chain AS link ON link.sequence = event.sequence ORDER BY event.sequence"
                : "SELECT * FROM event ORDER BY sequence";
        handle.createQuery(rows).map((row, context) -> fact(row)).forEach(number -> place = number);
        if (isChained) {
            handle.createQuery("SELECT sequence FROM event_chain WHERE sequence > ? ORDER BY sequence")
                    .bind(0, place)
                    .mapTo(Long.class)
                    .forEach(number -> add(number, "is gone; only its link in the chain is left"));
        }
    }

    long facts() {
        return facts;
    }

    long last() {
        return last;
    }

    @Nullable
    String head() {
        return head;
    }

    private long fact(ResultSet row) throws SQLException {
        long number = row.getLong("sequence");
        boolean follows = number == place + 1;
        if (!follows) {
            add(place + 1, number - place == 2 ? "is gone" : "is gone, and all up to number " + (number - 1));
        }
        facts++;
        if (isChained) {
            link(row, number, follows);
        }
        try {
            reader.read(row);
        } catch (JournalException e) {
            findings.accept(new Finding(number, String.valueOf(e.getMessage()), RecordVerification.COMPARE));
        }
        return number;
    }

    private void link(ResultSet row, long number, boolean follows) throws SQLException {
        @Nullable String station = row.getString("station");
        @Nullable String previous = row.getString("previous");
        @Nullable String hash = row.getString("hash");
        if (station == null || hash == null) {
            add(number, "has no link in the chain: it was not saved by Strawbed, or its link was removed");
            return;
        }
        if (follows && !Objects.equals(previous, heads.get(station))) {
            add(
                    number,
                    "does not follow on the one before: between them something was taken out or put in, or facts"
                            + " were swapped");
        }
        if (!isOf(hash, station, previous, row)) {
            add(number, "is not as it was saved: it or its link was changed afterwards");
        }
        // What is stored and not what it should be, so that one change is told once.
        heads.put(station, hash);
        last = number;
        head = hash;
    }

    /** A row with a hole has no hash; that it cannot be read is told besides. */
    private static boolean isOf(String hash, String station, @Nullable String previous, ResultSet row)
            throws SQLException {
        try {
            return ChainHash.of(station, previous, EventRow.of(row)).equals(hash);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private void add(long number, String what) {
        findings.accept(
                new Finding(number, "Number " + number + " of the record " + what + ".", RecordVerification.COMPARE));
    }
}
