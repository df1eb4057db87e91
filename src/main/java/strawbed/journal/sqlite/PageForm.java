package strawbed.journal.sqlite;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;

/**
 * How a file is cut into pages.
 *
 * @param size of a page, in bytes: a power of two from 512 to 65536
 * @param reserved how many bytes at the end of each page hold nothing
 */
record PageForm(int size, int reserved) {
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
    private static final int SMALLEST = 512;
    private static final int LARGEST = 65536;
    private static final int USUAL = 4096;

    /** What is left of a page must at least be this. */
    private static final int LEAST_USABLE = 480;

    int usable() {
        return size - reserved;
    }

    static boolean isSize(long size) {
        return size >= SMALLEST && size <= LARGEST && Long.bitCount(size) == 1;
    }

    /** Whether a file begins as a file of SQLite does. */
    static boolean isSqlite(byte[] header) {
        return header.length >= MAGIC.length && Arrays.equals(MAGIC, 0, MAGIC.length, header, 0, MAGIC.length);
    }

    /** What a header says that shows no damage, nothing otherwise. */
    static Set<PageForm> sound(byte[] header) {
        boolean fixed = header.length == PageFile.HEADER
                && header[20] == 0
                && header[21] == 64
                && header[22] == 32
                && header[23] == 32;
        return fixed && isSqlite(header) ? said(header) : Set.of();
    }

    /**
     * All that may be, the likeliest first.
     *
     * @param logSize the page size that the log tells; 0 if it tells none
     */
    static Set<PageForm> possible(byte[] header, long logSize) {
        Set<PageForm> forms = new LinkedHashSet<>(said(header));
        if (isSize(logSize)) {
            forms.add(new PageForm((int) logSize, 0));
        }
        forms.add(new PageForm(USUAL, 0));
        for (int size = SMALLEST; size <= LARGEST; size *= 2) {
            forms.add(new PageForm(size, 0));
        }
        return forms;
    }

    /** The size stands in the bytes 16 and 17, where 1 is 65536; what is reserved in byte 20. */
    private static Set<PageForm> said(byte[] header) {
        if (header.length < PageFile.HEADER) {
            return Set.of();
        }
        int two = (header[16] & 0xff) << 8 | (header[17] & 0xff);
        PageForm form = new PageForm(two == 1 ? LARGEST : two, header[20] & 0xff);
        return isSize(form.size()) && form.usable() >= LEAST_USABLE ? Set.of(form) : Set.of();
    }
}
