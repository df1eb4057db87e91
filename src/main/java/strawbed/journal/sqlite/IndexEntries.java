package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * The ids that the pages of the record's indexes name, each with the number of its row. An index outlives rows whose page
 * is lost, so it tells what was there.
 */
final class IndexEntries {
    private static final int LEAF = 0x0a;
    private static final int INTERIOR = 0x02;
    private static final int HEAD_OF_LEAF = 8;
    private static final int HEAD_OF_INTERIOR = 12;

    /** The serial type of a text of 36 bytes, as an id is. */
    private static final long TYPE_OF_ID = 13 + 2 * 36;

    private IndexEntries() {}

    /** An id and the number of its row. */
    record Entry(String id, long number) {}

    /** The entries of a page, which are of one table; none if it is no page of such an index. */
    static List<Entry> of(Pages pages, int number) {
        byte[] page = pages.page(number);
        int begin = Pages.begin(number);
        if (page.length < begin + HEAD_OF_INTERIOR || (page[begin] != LEAF && page[begin] != INTERIOR)) {
            return List.of();
        }
        boolean isLeaf = page[begin] == LEAF;
        int pointers = begin + (isLeaf ? HEAD_OF_LEAF : HEAD_OF_INTERIOR);
        int count = two(page, begin + 3);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < count && pointers + 2 * i + 1 < page.length; i++) {
            // Before each cell of an interior page stands the number of the page below it.
            entry(page, two(page, pointers + 2 * i) + (isLeaf ? 0 : Integer.BYTES))
                    .ifPresent(entries::add);
        }
        return entries;
    }

    private static Optional<Entry> entry(byte[] page, int at) {
        Varints in = new Varints(page, at, page.length);
        long size = in.next();
        int from = in.at();
        long head = in.next();
        long id = in.next();
        long number = in.next();
        long bytes = SerialType.isWhole(number) ? SerialType.bytes(number) : -1;
        int values = in.at();
        int length = (int) SerialType.bytes(TYPE_OF_ID);
        if (in.isOver()
                || id != TYPE_OF_ID
                || bytes < 0
                || head != values - from
                || size != head + length + bytes
                || from + size > page.length) {
            return Optional.empty();
        }
        return SerialType.value(id, page, values, length) instanceof String text
                        && SerialType.value(number, page, values + length, (int) bytes) instanceof Long row
                        && isId(text)
                ? Optional.of(new Entry(text, row))
                : Optional.empty();
    }

    static boolean isId(String text) {
        try {
            return UUID.fromString(text).toString().equals(text);
        } catch (IllegalArgumentException e) {
            // What does not read is no id; that is the answer.
            return false;
        }
    }

    private static int two(byte[] page, int at) {
        return (page[at] & 0xff) << Byte.SIZE | (page[at + 1] & 0xff);
    }
}
