package strawbed.journal.sqlite;

import java.time.DateTimeException;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.journal.JournalException;
import strawbed.journal.sqlite.ChainProof.Verdict;

/** Decides which of the facts that were found come into the new record. Owned by one thread, used once. */
final class FactSorting {
    private final ChainProof proof;
    private final boolean withChanged;
    private final EventTable reader = new EventTable(ZoneOffset.UTC, () -> new UUID(0, 0));
    private final List<RecordedEvent> taken = new ArrayList<>();
    private final Set<EventId> ids = new HashSet<>();
    private final Set<Long> there = new TreeSet<>();
    private final Set<Long> unproven = new TreeSet<>();
    private final Set<Long> changed = new TreeSet<>();
    private final Set<Long> listed = new TreeSet<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private long last;

    FactSorting(ChainProof proof, boolean withChanged) {
        this.proof = proof;
        this.withChanged = withChanged;
        this.last = proof.last();
    }

    /**
     * What became of the facts.
     *
     * @param taken facts for the new record in the order of their old numbers, which they bear
     * @param unproven the numbers of those that nothing proves
     * @param changed the numbers of those taken though they do not fit the chain
     * @param missing the numbers of which no row was found, each with its id where an index still tells it
     */
    record Sorted(
            List<RecordedEvent> taken,
            Set<Long> unproven,
            Set<Long> changed,
            List<Places> missing,
            Map<Long, String> missingIds,
            List<LeftOut> leftOut) {}

    /** How good a copy of a fact is; the better is taken before the worse. */
    private enum Rank {
        PROVEN,
        UNPROVEN,
        CHANGED,
        UNREADABLE
    }

    /** @param why why it is not taken by itself, as a clause; null if it is */
    private record Candidate(
            StoredRow row,
            long number,
            Rank rank,
            @Nullable RecordedEvent fact,
            @Nullable String why) {
        RecordedEvent decoded() {
            if (fact == null) {
                throw new AssertionError("an unreadable row was to be taken: " + row);
            }
            return fact;
        }
    }

    /** @param indexes tell of facts of which no row was found */
    Sorted sort(List<StoredRow> rows, IndexVotes indexes) {
        List<Candidate> candidates = candidates(rows, indexes);
        candidates.sort(Comparator.comparing(Candidate::rank)
                .thenComparing(candidate -> !candidate.row().isListed())
                .thenComparing(Candidate::number));
        candidates.forEach(this::decide);
        taken.sort(Comparator.comparingLong(RecordedEvent::sequence));
        Set<Long> known = new TreeSet<>(there);
        known.addAll(listed);
        Map<Long, String> missingIds = new TreeMap<>(indexes.missing(RowKind.EVENT));
        missingIds.entrySet().removeIf(entry -> known.contains(entry.getKey()) || isTaken(entry.getValue()));
        last = Places.reach(last, missingIds.keySet());
        return new Sorted(
                List.copyOf(taken), unproven, changed, Places.gaps(known, last), missingIds, List.copyOf(leftOut));
    }

    private List<Candidate> candidates(List<StoredRow> rows, IndexVotes indexes) {
        List<Candidate> candidates = new ArrayList<>();
        List<StoredRow> doubtful = new ArrayList<>();
        for (StoredRow row : rows) {
            Candidate candidate = candidate(row);
            if (candidate.rank() == Rank.CHANGED || candidate.rank() == Rank.UNPROVEN) {
                doubtful.add(row);
            } else {
                candidates.add(candidate);
            }
        }
        Set<String> proven = new HashSet<>();
        candidates.stream()
                .filter(candidate -> candidate.rank() == Rank.PROVEN)
                .forEach(candidate -> proven.add(candidate.decoded().id().toString()));
        // Last, when the links that are spoken for are known.
        for (StoredRow row : doubtful) {
            EventRow columns = RowShapes.event(row);
            if (proven.contains(columns.id())) {
                continue;
            }
            // A row whose number is damaged must not pass for one that has no link.
            OptionalLong named = indexes.numberOf(columns.id());
            OptionalLong linked = proof.numberOf(columns);
            long number = named.orElse(linked.orElse(row.number()));
            candidates.add(
                    decoded(row, number, columns, linked.isPresent() ? Verdict.PROVEN : proof.of(number, columns)));
        }
        return candidates;
    }

    private Candidate candidate(StoredRow row) {
        if (row.fault() != null) {
            return new Candidate(row, row.number(), Rank.UNREADABLE, null, row.fault());
        }
        EventRow columns;
        try {
            columns = RowShapes.event(row);
        } catch (IllegalArgumentException e) {
            return new Candidate(row, row.number(), Rank.UNREADABLE, null, String.valueOf(e.getMessage()));
        }
        return decoded(row, row.number(), columns, proof.of(row.number(), columns));
    }

    private Candidate decoded(StoredRow row, long number, EventRow columns, Verdict verdict) {
        RecordedEvent fact;
        try {
            fact = reader.decoded(number, columns);
            if (verdict != Verdict.PROVEN) {
                RowShapes.requireExact(columns, fact);
            }
        } catch (JournalException e) {
            return new Candidate(row, number, Rank.UNREADABLE, null, e.what());
        } catch (DateTimeException | IllegalArgumentException e) {
            return new Candidate(row, number, Rank.UNREADABLE, null, String.valueOf(e.getMessage()));
        }
        return switch (verdict) {
            case PROVEN -> new Candidate(row, number, Rank.PROVEN, fact, null);
            case UNPROVEN ->
                row.isListed()
                        ? new Candidate(row, number, Rank.UNPROVEN, fact, null)
                        : new Candidate(
                                row,
                                number,
                                Rank.CHANGED,
                                fact,
                                "its page is damaged or it is an old copy, and no link of the chain is left to prove it");
            case CHANGED -> new Candidate(row, number, Rank.CHANGED, fact, "it does not fit its link in the chain");
        };
    }

    private void decide(Candidate candidate) {
        switch (candidate.rank()) {
            case PROVEN -> take(candidate, true);
            case UNPROVEN -> {
                if (take(candidate, candidate.row().numberStands())) {
                    unproven.add(candidate.number());
                }
            }
            case CHANGED -> {
                if (isCopy(candidate)) {
                    return;
                }
                if (!withChanged) {
                    leaveOut(candidate);
                } else if (take(candidate, candidate.row().numberStands())) {
                    changed.add(candidate.number());
                }
            }
            case UNREADABLE -> {
                if (!isCopy(candidate)) {
                    leaveOut(candidate);
                }
            }
        }
    }

    private boolean take(Candidate candidate, boolean numberStands) {
        RecordedEvent fact = candidate.decoded();
        if (!ids.add(fact.id())) {
            return false;
        }
        taken.add(fact);
        there.add(fact.sequence());
        reached(fact.sequence(), numberStands);
        return true;
    }

    /** An old copy of what is there, or of what is listed: its number is spoken for, or its id. */
    private boolean isCopy(Candidate candidate) {
        boolean isListed = candidate.row().isListed();
        long number = candidate.number();
        return isTaken(candidate.row().values().get(1))
                || (!isListed && (there.contains(number) || listed.contains(number)));
    }

    private boolean isTaken(@Nullable Object id) {
        return id instanceof String text && IndexEntries.isId(text) && ids.contains(EventId.of(text));
    }

    private void leaveOut(Candidate candidate) {
        StoredRow row = candidate.row();
        listed.add(candidate.number());
        reached(candidate.number(), row.numberStands());
        leftOut.add(new LeftOut(
                "Number " + candidate.number() + ", found on page " + row.page(),
                candidate.why() == null ? "another fact has its id" : candidate.why(),
                row.content()));
    }

    private void reached(long number, boolean stands) {
        if (stands) {
            last = Math.max(last, number);
        }
    }
}
