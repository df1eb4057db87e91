package strawbed.exchange;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** Stops at a row without end, as a forgotten quotation mark makes of a whole file, before it fills the memory. */
final class RowLimit extends FilterReader {
    /** In characters. */
    static final int LONGEST = 1 << 20;

    private long since;

    RowLimit(Reader in) {
        super(in);
    }

    /** A row is over. */
    void next() {
        since = 0;
    }

    @Override
    public int read() throws IOException {
        int letter = super.read();
        count(1);
        return letter;
    }

    @Override
    public int read(char[] letters, int from, int count) throws IOException {
        int read = super.read(letters, from, count);
        count(Math.max(read, 0));
        return read;
    }

    private void count(int letters) throws IOException {
        since += letters;
        if (since > LONGEST) {
            throw new IOException("a row has more than " + LONGEST + " characters; is a quotation mark missing?");
        }
    }
}
