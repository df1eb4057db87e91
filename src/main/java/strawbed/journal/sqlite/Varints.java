package strawbed.journal.sqlite;

/** Reads numbers of one to nine bytes, the highest first; seven bits of each of the first eight, all of the ninth. */
final class Varints {
    private static final int MOST = 9;

    private final byte[] bytes;
    private final int end;
    private int at;
    private boolean isOver;

    Varints(byte[] bytes, int at, int end) {
        this.bytes = bytes;
        this.at = at;
        this.end = Math.min(end, bytes.length);
    }

    /** The next number; 0 where the bytes end before it does, which {@link #isOver} then says. */
    long next() {
        long value = 0;
        for (int i = 1; i <= MOST; i++) {
            if (at >= end) {
                isOver = true;
                return 0;
            }
            byte next = bytes[at++];
            if (i == MOST) {
                return value << Byte.SIZE | (next & 0xff);
            }
            value = value << 7 | (next & 0x7f);
            if (next >= 0) {
                return value;
            }
        }
        throw new AssertionError("a number has at most " + MOST + " bytes");
    }

    int at() {
        return at;
    }

    boolean isOver() {
        return isOver;
    }
}
