package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import strawbed.journal.sqlite.IndexEntries.Entry;

/** All that the pages of a damaged record hold, each page looked at by itself. Owned by one thread. */
final class FoundRows {
    /** First bytes of the kinds of pages that trees are made of. */
    private static final Set<Integer> KINDS = Set.of(0x02, 0x05, 0x0a, PageRows.TABLE_LEAF);

    private final List<StoredRow> rows = new ArrayList<>();
    private final List<List<Entry>> indexes = new ArrayList<>();

    /** By page. */
    private final TreeMap<Integer, List<String>> unread = new TreeMap<>();

    private final Set<Integer> continued = new HashSet<>();
    private final List<Integer> strange = new ArrayList<>();
    private final PageFile file;
    private final PageForm form;
    private final LogFrames log;
    private final boolean isSqlite;
    private int pages;

    private FoundRows(PageFile file, PageForm form) {
        this.file = file;
        this.form = form;
        this.log = LogFrames.of(file, form.size());
        this.isSqlite = PageForm.isSqlite(file.header());
    }

    static FoundRows in(PageFile file) {
        for (PageForm form : PageForm.sound(file.header())) {
            FoundRows found = new FoundRows(file, form).look();
            if (!found.rows.isEmpty()) {
                return found;
            }
        }
        return new FoundRows(file, likeliest(file)).look();
    }

    /** Where the header does not tell: the one of which most rows are listed. */
    private static PageForm likeliest(PageFile file) {
        PageForm best = new PageForm(4096, 0);
        int most = -1;
        for (PageForm form : PageForm.possible(file.header(), LogFrames.pageSize(file))) {
            FoundRows found = new FoundRows(file, form);
            Pages all = file.pages(form, found.log.laidOver());
            PageRows reader = new PageRows(all, new HashSet<>());
            int rows = 0;
            for (int number = 1; number <= all.count(); number++) {
                rows += reader.listed(number).rows().size();
            }
            if (rows > most) {
                best = form;
                most = rows;
            }
        }
        return best;
    }

    private FoundRows look() {
        Pages now = file.pages(form, log.laidOver());
        pages = now.count();
        PageRows reader = new PageRows(now, continued);
        for (int number = 1; number <= now.count(); number++) {
            PageRows.Found found = reader.all(number);
            rows.addAll(found.rows());
            boolean isTold = !found.unread().isEmpty();
            if (isTold && !found.rows().isEmpty()) {
                unread.put(number, found.unread());
            }
            List<Entry> entries = IndexEntries.of(now, number);
            if (!entries.isEmpty()) {
                indexes.add(entries);
            }
            if (isStrange(now.page(number), number) || (isTold && found.rows().isEmpty() && found.others() == 0)) {
                strange.add(number);
            }
        }
        strange.removeAll(continued);
        // What lies under the log, and in it behind a damaged place, can hold what is damaged above.
        old(file.pages(form, log.behind()), changed(log.behind(), log.laidOver()));
        old(file.pages(form, Map.of()), log.laidOver().keySet());
        return this;
    }

    private static Set<Integer> changed(Map<Integer, Long> frames, Map<Integer, Long> seen) {
        Set<Integer> changed = new HashSet<>();
        frames.forEach((number, at) -> {
            if (!at.equals(seen.get(number))) {
                changed.add(number);
            }
        });
        return changed;
    }

    private void old(Pages view, Set<Integer> numbers) {
        PageRows reader = new PageRows(view, new HashSet<>());
        for (int number : numbers) {
            reader.all(number).rows().stream()
                    .map(row -> new StoredRow(
                            row.kind(), row.number(), row.values(), row.page(), false, row.numberStands(), row.fault()))
                    .forEach(rows::add);
        }
    }

    private static boolean isStrange(byte[] page, int number) {
        int begin = Pages.begin(number);
        return page.length <= begin || (!KINDS.contains((int) page[begin]) && !isEmpty(page));
    }

    private static boolean isEmpty(byte[] page) {
        return Arrays.equals(page, new byte[page.length]);
    }

    /** Rows of a kind: what pages list before what lies elsewhere. */
    List<StoredRow> rows(RowKind kind) {
        return rows.stream().filter(row -> row.kind() == kind).toList();
    }

    /** The links of the chain that are as the program writes them. */
    List<ChainLink> links() {
        return rows(RowKind.LINK).stream()
                .filter(RowShapes::isWellFormed)
                .map(ChainLink::of)
                .distinct()
                .toList();
    }

    /** The name of the record's station, however often it was found. */
    Set<String> stations() {
        Set<String> names = new HashSet<>();
        rows(RowKind.STATION).stream().filter(RowShapes::isWellFormed).forEach(row -> names.add(row.present(1)));
        return names;
    }

    /** The entries of the indexes, page by page. */
    List<List<Entry>> indexes() {
        return indexes;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    boolean isSqlite() {
        return isSqlite;
    }

    /** What is left of cells that pages list and that cannot be taken apart, by page. */
    Map<Integer, List<String>> unread() {
        return unread;
    }

    /** What was looked at, and how, as sentences. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        told.add(
                pages + (pages == 1 ? " page of " : " pages of ") + form.size() + " bytes were looked at, one by one.");
        if (!isSqlite) {
            told.add("The file does not begin as SQLite's files do; the size of its pages was found by trying.");
        }
        told.add(log.told());
        if (file.refused() > 0) {
            told.add("The disk refused " + file.refused() + " reads: what it would not give counts as damaged.");
        }
        if (!strange.isEmpty()) {
            told.add((strange.size() == 1 ? "1 page is" : strange.size() + " pages are")
                    + " damaged, or not of this record's rows: " + shortened(strange) + ".");
        }
        return told;
    }

    private static String shortened(List<Integer> numbers) {
        return Places.text(Places.of(numbers.stream().map(Integer::longValue).toList()));
    }
}
