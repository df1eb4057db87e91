package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Takes cells of a table's leaf pages apart: size of the row, its number, its types, its values, and the chain of pages
 * that hold what did not fit. Believes no number in the file: each is checked against what is there. Owned by one
 * thread.
 */
final class CellReader {
    /** Bytes beside the row that a cell of a leaf page must leave room for; from the format. */
    private static final int BESIDE = 35;

    private final Pages pages;
    private final Set<Integer> continued;

    /** @param continued takes the pages on which rows go on */
    CellReader(Pages pages, Set<Integer> continued) {
        this.pages = pages;
        this.continued = continued;
    }

    /**
     * A cell whose sizes agree.
     *
     * @param number of the row
     * @param size of the row in bytes, wherever they are
     * @param from where they begin on the page
     * @param local how many of them are on the page
     * @param head how many of them say the types
     * @param end of the cell on the page
     */
    record Cell(long number, long size, int from, int local, int head, List<Long> types, int end) {}

    /** The values of a cell, and why they are not whole; null if they are. */
    record Values(List<@Nullable Object> list, @Nullable String fault) {}

    /** The cell that begins here; empty where none does. */
    Optional<Cell> cell(byte[] page, int at) {
        Varints in = new Varints(page, at, page.length);
        long size = in.next();
        long number = in.next();
        if (in.isOver() || size < 2 || size > (long) pages.count() * pages.usable()) {
            return Optional.empty();
        }
        int local = local(size);
        int end = in.at() + local + (local < size ? Integer.BYTES : 0);
        if (end > page.length) {
            return Optional.empty();
        }
        return types(page, in.at(), local, size)
                .map(head -> new Cell(number, size, in.at(), local, head.length, head.types, end));
    }

    private record Head(int length, List<Long> types) {}

    /** The types say together how many bytes the row has: that fits by chance almost never. */
    private static Optional<Head> types(byte[] page, int from, int local, long size) {
        Varints in = new Varints(page, from, from + local);
        long length = in.next();
        if (in.isOver() || length < 2 || length > local) {
            return Optional.empty();
        }
        List<Long> types = new ArrayList<>();
        long sum = length;
        while (in.at() < from + length) {
            long type = in.next();
            long bytes = SerialType.bytes(type);
            if (in.isOver() || bytes < 0) {
                return Optional.empty();
            }
            types.add(type);
            sum += bytes;
            if (sum > size) {
                return Optional.empty();
            }
        }
        return in.at() == from + length && sum == size ? Optional.of(new Head((int) length, types)) : Optional.empty();
    }

    /** How much of a row stays on its page; from the format. */
    private int local(long size) {
        int usable = pages.usable();
        int most = usable - BESIDE;
        if (size <= most) {
            return (int) size;
        }
        int least = (usable - 12) * 32 / 255 - 23;
        int fitting = least + (int) ((size - least) % (usable - 4));
        return fitting <= most ? fitting : least;
    }

    /** The values of a cell on its page. */
    Values values(byte[] page, Cell cell) {
        byte[] row = new byte[Math.toIntExact(cell.size())];
        System.arraycopy(page, cell.from(), row, 0, cell.local());
        int there = cell.local();
        String fault = null;
        if (there < row.length) {
            Tail tail = new Tail(row, there);
            fault = tail.read(whole(page, cell.from() + cell.local()));
            there = tail.filled;
        }
        List<@Nullable Object> values = new ArrayList<>();
        int at = cell.head();
        for (long type : cell.types()) {
            int length = (int) SerialType.bytes(type);
            int left = Math.max(0, Math.min(length, there - at));
            values.add(
                    left == length
                            ? SerialType.value(type, row, at, length)
                            : new SerialType.Damaged(shown(type, row, at, left)));
            at += length;
        }
        return new Values(values, fault);
    }

    private static String shown(long type, byte[] row, int at, int left) {
        @Nullable Object part = left == 0 ? null : SerialType.value(type, row, at, left);
        return (part instanceof SerialType.Damaged damaged ? damaged.shown() : part == null ? "" : part)
                + " [the rest is lost]";
    }

    private static int whole(byte[] page, int at) {
        return (page[at] & 0xff) << 24
                | (page[at + 1] & 0xff) << 16
                | (page[at + 2] & 0xff) << 8
                | (page[at + 3] & 0xff);
    }

    /** What of a row is on further pages. */
    private final class Tail {
        private final byte[] row;
        private int filled;

        Tail(byte[] row, int filled) {
            this.row = row;
            this.filled = filled;
        }

        /** @return what is wrong, as a clause; null if nothing is */
        @Nullable
        String read(int first) {
            Set<Integer> seen = new HashSet<>();
            int number = first;
            while (filled < row.length) {
                if (number < 2 || number > pages.count() || !seen.add(number)) {
                    return "the page on which it goes on cannot be told any more";
                }
                byte[] page = pages.page(number);
                int wanted = Math.min(row.length - filled, pages.usable() - Integer.BYTES);
                int there = Math.max(0, Math.min(wanted, page.length - Integer.BYTES));
                if (there > 0) {
                    System.arraycopy(page, Integer.BYTES, row, filled, there);
                    filled += there;
                }
                if (there < wanted) {
                    return "page " + number + ", on which it goes on, is not there to its end";
                }
                number = whole(page, 0);
            }
            if (number != 0) {
                return "the page on which it goes on is damaged";
            }
            continued.addAll(seen);
            return null;
        }
    }
}
