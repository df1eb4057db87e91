package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import strawbed.journal.sqlite.IndexEntries.Entry;

/**
 * Tells the indexes' pages apart, which all look the same: a page is of the table of whose rows it names most. Immutable
 * once made.
 *
 * <p>Facts have more indexes whose keys look like ids: the calf's, and that of the fact that was withdrawn. Their pages
 * are told by the rows that were found too, and count for nothing.
 */
final class IndexVotes {
    private static final int CALF = 5;
    private static final int JSON = 8;
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

    private static final List<RowKind> INDEXED = List.of(RowKind.EVENT, RowKind.STATEMENT, RowKind.SETTLED);

    private final Map<RowKind, Set<Entry>> found = new EnumMap<>(RowKind.class);
    private final Map<RowKind, List<Entry>> named = new EnumMap<>(RowKind.class);

    /** What other indexes of facts would name of the rows that were found. */
    private final Set<Entry> others = new HashSet<>();

    /** Of facts, by id. */
    private final Map<String, Long> numbers = new HashMap<>();

    IndexVotes(FoundRows rows) {
        for (RowKind kind : INDEXED) {
            found.put(kind, entries(rows.rows(kind)));
            named.put(kind, new ArrayList<>());
        }
        for (StoredRow row : rows.rows(RowKind.EVENT)) {
            others(row);
        }
        for (List<Entry> page : rows.indexes()) {
            if (!isOther(page)) {
                named.computeIfAbsent(kind(page), kind -> new ArrayList<>()).addAll(page);
            }
        }
        named.getOrDefault(RowKind.EVENT, List.of()).forEach(entry -> numbers.put(entry.id(), entry.number()));
    }

    /** The number that the index names for a fact; empty where it does not name the fact. */
    OptionalLong numberOf(String id) {
        Long number = numbers.get(id);
        return number == null ? OptionalLong.empty() : OptionalLong.of(number);
    }

    private static Set<Entry> entries(Collection<StoredRow> rows) {
        Set<Entry> entries = new HashSet<>();
        for (StoredRow row : rows) {
            if (row.values().get(row.kind() == RowKind.SETTLED ? 0 : 1) instanceof String id) {
                entries.add(new Entry(id, row.number()));
            }
        }
        return entries;
    }

    private void others(StoredRow row) {
        if (row.values().get(CALF) instanceof String calf) {
            others.add(new Entry(calf, row.number()));
        }
        if (row.values().get(JSON) instanceof String json) {
            Matcher id = ID.matcher(json);
            while (id.find()) {
                others.add(new Entry(id.group(), row.number()));
            }
        }
    }

    /** An id stands once in its own index; a calf has many facts. */
    private boolean isOther(List<Entry> page) {
        long votes = page.stream().filter(others::contains).count();
        long distinct = page.stream().map(Entry::id).distinct().count();
        return distinct < page.size()
                || votes > page.stream().filter(of(RowKind.EVENT)::contains).count();
    }

    private RowKind kind(List<Entry> page) {
        long most = 0;
        RowKind best = unvoted(page);
        for (RowKind kind : INDEXED) {
            long votes = page.stream().filter(of(kind)::contains).count();
            if (votes > most) {
                most = votes;
                best = kind;
            }
        }
        return best;
    }

    /** Of a page that names no row that was found. The tables of statements have one page where facts have hundreds. */
    private RowKind unvoted(List<Entry> page) {
        Set<Long> numbers = new HashSet<>();
        of(RowKind.EVENT).forEach(entry -> numbers.add(entry.number()));
        if (page.stream().anyMatch(entry -> !numbers.contains(entry.number()))) {
            return RowKind.EVENT;
        }
        return of(RowKind.STATEMENT).isEmpty() ? RowKind.STATEMENT : RowKind.SETTLED;
    }

    private Set<Entry> of(RowKind kind) {
        return found.getOrDefault(kind, Set.of());
    }

    /**
     * The rows that an index names, by number and id, of which neither number nor id was found. Where only one is not,
     * the entry itself is damaged.
     */
    Map<Long, String> missing(RowKind kind) {
        Set<Long> numbers = new HashSet<>();
        Set<String> ids = new HashSet<>();
        of(kind).forEach(entry -> {
            numbers.add(entry.number());
            ids.add(entry.id());
        });
        Map<Long, String> missing = new TreeMap<>();
        named.getOrDefault(kind, List.of()).stream()
                .filter(entry -> !numbers.contains(entry.number()) && !ids.contains(entry.id()))
                .forEach(entry -> missing.put(entry.number(), entry.id()));
        return missing;
    }
}
