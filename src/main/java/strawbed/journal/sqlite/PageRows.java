package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import strawbed.journal.sqlite.CellReader.Cell;
import strawbed.journal.sqlite.CellReader.Values;

/**
 * Finds the rows of one page without its neighbours in the tree: first those that the page lists as its cells, then, byte
 * by byte, those that lie elsewhere on it, because its head is damaged or they are old copies. Owned by one thread.
 */
final class PageRows {
    static final int TABLE_LEAF = 0x0d;

    private static final int HEAD = 8;

    private final Pages pages;
    private final CellReader cells;

    /** @param continued takes the pages on which rows go on */
    PageRows(Pages pages, Set<Integer> continued) {
        this.pages = pages;
        this.cells = new CellReader(pages, continued);
    }

    /**
     * What is on a page.
     *
     * @param rows of the record's tables
     * @param others how many cells of other tables it has
     * @param unread what is left of listed cells that cannot be taken apart
     */
    record Found(List<StoredRow> rows, int others, List<String> unread) {}

    private record Placed(int index, StoredRow row) {}

    /** The rows that a page lists. */
    Found listed(int number) {
        return listed(number, pages.page(number), new BitSet());
    }

    /** All rows on a page, listed or not. */
    Found all(int number) {
        byte[] page = pages.page(number);
        BitSet covered = new BitSet();
        Found found = listed(number, page, covered);
        List<StoredRow> rows = new ArrayList<>(found.rows());
        rows.addAll(unlisted(number, page, covered));
        return new Found(rows, found.others(), found.unread());
    }

    private Found listed(int number, byte[] page, BitSet covered) {
        int begin = Pages.begin(number);
        List<Placed> rows = new ArrayList<>();
        List<String> unread = new ArrayList<>();
        int others = 0;
        if (page.length < begin + HEAD || page[begin] != TABLE_LEAF) {
            return new Found(List.of(), others, unread);
        }
        int count = two(page, begin + 3);
        for (int i = 0; i < count && begin + HEAD + 2 * i + 1 < page.length; i++) {
            int at = two(page, begin + HEAD + 2 * i);
            Optional<Cell> cell = at < begin + HEAD ? Optional.empty() : cells.cell(page, at);
            Optional<RowKind> kind = cell.flatMap(known -> RowKind.of(known.types()));
            if (cell.isEmpty()) {
                unread.add(readable(page, at));
            } else if (kind.isEmpty()) {
                others++;
            } else {
                rows.add(new Placed(i, row(number, page, cell.get(), kind.get(), true)));
            }
            cell.ifPresent(known -> covered.set(at, known.end()));
        }
        return new Found(numbered(rows), others, unread);
    }

    /** In a record that only grows, the rows of a page have numbers without a gap: one that does not follow is damaged. */
    private static List<StoredRow> numbered(List<Placed> rows) {
        Map<RowKind, Map<Long, Integer>> starts = new EnumMap<>(RowKind.class);
        for (Placed placed : rows) {
            starts.computeIfAbsent(placed.row().kind(), kind -> new HashMap<>())
                    .merge(placed.row().number() - placed.index(), 1, Integer::sum);
        }
        return rows.stream()
                .map(placed -> {
                    Map<Long, Integer> same = starts.getOrDefault(placed.row().kind(), Map.of());
                    int agreeing = same.getOrDefault(placed.row().number() - placed.index(), 0);
                    return placed.row().withNumber(agreeing > 1 || same.size() == 1);
                })
                .toList();
    }

    private List<StoredRow> unlisted(int number, byte[] page, BitSet covered) {
        List<StoredRow> rows = new ArrayList<>();
        int at = 0;
        while (at < page.length) {
            int from = at;
            Optional<Cell> cell = covered.get(from) ? Optional.empty() : cells.cell(page, from);
            Optional<StoredRow> row = cell.flatMap(
                            known -> RowKind.of(known.types()).map(kind -> row(number, page, known, kind, false)))
                    .filter(RowShapes::isWellFormed);
            row.ifPresent(rows::add);
            at = row.isPresent() ? cell.orElseThrow().end() : at + 1;
        }
        return rows.stream().map(row -> row.withNumber(hasNeighbour(row, rows))).toList();
    }

    private static boolean hasNeighbour(StoredRow row, List<StoredRow> rows) {
        return rows.stream()
                .anyMatch(other -> other.kind() == row.kind() && Math.abs(other.number() - row.number()) == 1);
    }

    private StoredRow row(int number, byte[] page, Cell cell, RowKind kind, boolean isListed) {
        Values values = cells.values(page, cell);
        return new StoredRow(kind, cell.number(), values.list(), number, isListed, false, values.fault());
    }

    private static String readable(byte[] page, int from) {
        int most = Math.min(page.length, from + 400);
        StringBuilder text = new StringBuilder();
        for (int i = from; i < most; i++) {
            text.append(page[i] >= ' ' && page[i] < 0x7f ? (char) page[i] : '.');
        }
        return text.toString();
    }

    private static int two(byte[] page, int at) {
        return (page[at] & 0xff) << Byte.SIZE | (page[at + 1] & 0xff);
    }
}
