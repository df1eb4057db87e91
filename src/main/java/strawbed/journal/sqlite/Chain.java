package strawbed.journal.sqlite;

import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;
import strawbed.journal.JournalException;
import strawbed.journal.JournalException.Reason;

/** The links of facts that are added in one transaction, which the caller holds. */
final class Chain implements AutoCloseable {
    private final String station;
    private final PreparedBatch links;
    private @Nullable String last;

    /** Goes on behind the station's last link. */
    Chain(Handle handle) {
        this.station = handle.createQuery("SELECT id FROM station")
                .mapTo(String.class)
                .findOne()
                .orElseThrow(() -> new JournalException(
                        Reason.CORRUPT,
                        "The record has lost the name of its station. It is damaged; restore it from a backup.",
                        null));
        this.last = last(handle, station).orElse(null);
        this.links = handle.prepareBatch("INSERT INTO event_chain (sequence, station, previous, hash)"
                + " VALUES (:sequence, :station, :previous, :hash)");
    }

    /** Names the station of a record that has none yet. */
    static void name(Handle handle, UUID station) {
        handle.execute("INSERT INTO station (only_one, id) VALUES (1, ?)", station.toString());
    }

    void add(long sequence, EventRow row) {
        String hash = ChainHash.of(station, last, row);
        links.bind("sequence", sequence)
                .bind("station", station)
                .bind("previous", last)
                .bind("hash", hash)
                .add();
        last = hash;
    }

    /** Writes what was added; the facts must be there. */
    void write() {
        if (links.size() > 0) {
            links.execute();
        }
    }

    @Override
    public void close() {
        links.close();
    }

    private static Optional<String> last(Handle handle, String station) {
        return handle.createQuery("SELECT hash FROM event_chain WHERE station = ? ORDER BY sequence DESC LIMIT 1")
                .bind(0, station)
                .mapTo(String.class)
                .findOne();
    }
}
