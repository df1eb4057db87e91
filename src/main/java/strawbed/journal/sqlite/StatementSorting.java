package strawbed.journal.sqlite;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import strawbed.journal.JournalException;
import strawbed.journal.OpenStatement;
import strawbed.journal.sqlite.PastStatement.End;

/**
 * Decides which statements, and which of their ends, come into the new record. The chain does not hold them, so only
 * what pages list is taken. Owned by one thread, used once.
 */
final class StatementSorting {
    private final boolean withUnlisted;
    private final StatementTable reader = new StatementTable(() -> new UUID(0, 0));
    private final TreeMap<Long, OpenStatement> statements = new TreeMap<>();
    private final Map<UUID, End> ends = new LinkedHashMap<>();
    private final Set<Long> listed = new TreeSet<>();
    private final Set<String> idsLeftOut = new HashSet<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private long last;

    StatementSorting(boolean withUnlisted) {
        this.withUnlisted = withUnlisted;
    }

    /**
     * What became of the statements.
     *
     * @param taken in the order of their old numbers
     * @param missing the numbers of which no row was found
     * @param missingIds ids that an index still tells of those
     * @param lostEnds ids of statements that had come to an end, of which no row was found
     */
    record Sorted(
            List<PastStatement> taken,
            List<Places> missing,
            Map<Long, String> missingIds,
            List<String> lostEnds,
            List<LeftOut> leftOut) {}

    Sorted sort(FoundRows found, IndexVotes indexes) {
        listedFirst(found.rows(RowKind.STATEMENT)).forEach(this::statement);
        Set<UUID> ids = new HashSet<>();
        statements.values().forEach(statement -> ids.add(statement.id()));
        listedFirst(found.rows(RowKind.SETTLED)).forEach(row -> end(row, ids));
        Set<Long> known = new TreeSet<>(listed);
        known.addAll(statements.keySet());
        Map<Long, String> missingIds = indexes.missing(RowKind.STATEMENT);
        last = Places.reach(last, missingIds.keySet());
        List<String> lostEnds = indexes.missing(RowKind.SETTLED).values().stream()
                .filter(id -> ids.contains(UUID.fromString(id)))
                .toList();
        List<PastStatement> taken = statements.values().stream()
                .map(statement -> new PastStatement(statement, ends.get(statement.id())))
                .toList();
        return new Sorted(taken, Places.gaps(known, last), missingIds, lostEnds, List.copyOf(leftOut));
    }

    private static List<StoredRow> listedFirst(List<StoredRow> rows) {
        List<StoredRow> ordered = new ArrayList<>(rows);
        ordered.sort(Comparator.comparing(row -> !row.isListed()));
        return ordered;
    }

    private void statement(StoredRow row) {
        if (isCopy(row)) {
            return;
        }
        if (row.numberStands() && row.isListed()) {
            last = Math.max(last, row.number());
        }
        try {
            OpenStatement statement = decoded(row);
            if (!row.isListed() && !withUnlisted) {
                leaveOut(row, row.number(), "its page is damaged or it is an old copy, and nothing proves it");
            } else if (statements.putIfAbsent(row.number(), statement) != null) {
                leaveOut(row, row.number(), "another statement has its number");
            }
        } catch (JournalException e) {
            leaveOut(row, row.number(), e.what());
        } catch (DateTimeException | IllegalArgumentException e) {
            leaveOut(row, row.number(), String.valueOf(e.getMessage()));
        }
    }

    /** An old copy of one that is there, or is listed. */
    private boolean isCopy(StoredRow row) {
        return statements.values().stream()
                        .anyMatch(other ->
                                other.id().toString().equals(row.values().get(1)))
                || (!row.isListed() && (statements.containsKey(row.number()) || listed.contains(row.number())));
    }

    private OpenStatement decoded(StoredRow row) {
        requireReadable(row);
        return reader.decoded(
                row.present(1),
                row.present(2),
                row.present(3),
                row.present(4),
                row.present(5),
                row.present(6),
                row.text(7),
                row.present(8));
    }

    private void end(StoredRow row, Set<UUID> ids) {
        try {
            requireReadable(row);
            UUID id = UUID.fromString(row.present(0));
            End end = new End(Instant.parse(row.present(1)), row.present(2));
            if (ends.containsKey(id)) {
                return;
            }
            if (!ids.contains(id)) {
                leaveOut(row, "the statement that it ends was not rescued");
            } else if (row.isListed() || withUnlisted) {
                ends.put(id, end);
            } else {
                leaveOut(row, "its page is damaged or it is an old copy, and nothing proves it");
            }
        } catch (DateTimeException | IllegalArgumentException e) {
            leaveOut(row, String.valueOf(e.getMessage()));
        }
    }

    private static void requireReadable(StoredRow row) {
        if (row.fault() != null) {
            throw new IllegalArgumentException(row.fault());
        }
        if (!RowShapes.isWellFormed(row)) {
            throw new IllegalArgumentException("its id or its time is not as it is written");
        }
    }

    private void leaveOut(StoredRow row, long number, String why) {
        listed.add(number);
        leaveOut(row, why);
    }

    /** Once, however many copies there are. */
    private void leaveOut(StoredRow row, String why) {
        String id = row.kind() + " " + row.values().get(row.kind() == RowKind.SETTLED ? 0 : 1);
        if (idsLeftOut.add(id)) {
            leftOut.add(new LeftOut(
                    (row.kind() == RowKind.SETTLED
                                    ? "The end of a statement"
                                    : "The statement with number " + row.number())
                            + ", found on page " + row.page(),
                    why,
                    row.content()));
        }
    }
}
