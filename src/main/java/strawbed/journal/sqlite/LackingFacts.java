package strawbed.journal.sqlite;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException;

/** Counts the facts of a record that a backup lacks, in portions: neither is ever whole in memory. */
final class LackingFacts {
    private static final int PORTION = 5000;

    private final EventTable table = new EventTable(ZoneOffset.UTC, () -> new UUID(0, 0));
    private final Handle backup;
    private final List<RecordedEvent> portion = new ArrayList<>();
    private long count;
    private @Nullable Instant first;

    private LackingFacts(Handle backup) {
        this.backup = backup;
    }

    /**
     * Looks for each fact of the record, as it is and at its place.
     *
     * @throws JournalException if the record cannot be read to its end
     */
    static LackingFacts of(RecordFile record, Handle backup) {
        LackingFacts lacking = new LackingFacts(backup);
        try (Handle handle = Jdbi.open(record.connectReadOnly())) {
            new EventParts(lacking.table).forEach(handle, Long.MAX_VALUE, lacking::take);
            lacking.look();
        } catch (JdbiException e) {
            throw SqliteFailure.of("the record was not read", record.path(), e);
        }
        return lacking;
    }

    boolean isNone() {
        return count == 0;
    }

    /** How many, and since when, as in "3 facts that backup.db lacks, the first saved at ...". */
    String told(String what) {
        return (count == 1 ? "1 fact" : count + " facts") + " that " + what + " lacks, the first saved at " + first;
    }

    private void take(RecordedEvent event) {
        portion.add(event);
        if (portion.size() == PORTION) {
            look();
        }
    }

    private void look() {
        Set<RecordedEvent> there = new HashSet<>(table.withIdsOf(backup, portion));
        for (RecordedEvent event : portion) {
            if (!there.contains(event)) {
                count++;
                first = first == null || event.recordedAt().isBefore(first) ? event.recordedAt() : first;
            }
        }
        portion.clear();
    }
}
