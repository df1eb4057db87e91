package strawbed.journal.sqlite;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashMap;
import java.util.Map;

/**
 * What a write-ahead log holds for its file.
 *
 * @param laidOver pages of finished changes whose checksums are right: by number, where their bytes begin in the log
 * @param behind the same with the pages that come after a damaged place, up to the last finished change; empty where no
 *     place is damaged. Their checksums prove nothing, so their rows must be proven otherwise.
 * @param pageSize as the log's header says; 0 if it is not to be believed
 * @param told what was in it, as sentences
 */
record LogFrames(Map<Integer, Long> laidOver, Map<Integer, Long> behind, long pageSize, String told) {
    private static final int HEADER = 32;
    private static final int FRAME_HEADER = 24;
    private static final int MAGIC = 0x377f0682;

    LogFrames {
        laidOver = Map.copyOf(laidOver);
        behind = Map.copyOf(behind);
    }

    /** The page size that a sound header of a log says; 0 if there is none. */
    static long pageSize(PageFile file) {
        Header header = Header.of(file.log(0, HEADER));
        return header.isSound() ? header.pageSize() : 0;
    }

    /**
     * Reads the log.
     *
     * @param pageSize of the file, in bytes
     */
    static LogFrames of(PageFile file, int pageSize) {
        if (!file.hasLog()) {
            return new LogFrames(
                    Map.of(),
                    Map.of(),
                    0,
                    "There is no write-ahead log beside it. If there was one when it was copied, the facts saved last"
                            + " are in that log: put it beside the file under the file's name with \"-wal\" behind.");
        }
        if (file.logLength() == 0) {
            return new LogFrames(Map.of(), Map.of(), 0, "Its write-ahead log is empty.");
        }
        return new Walk(file, pageSize).walk();
    }

    /** The log's first bytes. The two halves of a checksum are kept in one number, as the format's own text has them. */
    private record Header(boolean isSound, long pageSize, long salts, ByteOrder order, int first, int second) {
        static Header of(byte[] bytes) {
            if (bytes.length < HEADER) {
                return new Header(false, 0, 0, ByteOrder.BIG_ENDIAN, 0, 0);
            }
            ByteBuffer in = ByteBuffer.wrap(bytes);
            int magic = in.getInt(0);
            ByteOrder order = (magic & 1) == 1 ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
            Sum sum = new Sum(order);
            sum.add(bytes, 0, 24);
            boolean isSound = (magic & ~1) == MAGIC && sum.is(in.getInt(24), in.getInt(28));
            return new Header(isSound, in.getInt(8), in.getLong(16), order, in.getInt(24), in.getInt(28));
        }
    }

    /** The checksum of a log, over words of four bytes. */
    private static final class Sum {
        private final ByteOrder order;
        private int first;
        private int second;

        Sum(ByteOrder order) {
            this.order = order;
        }

        void add(byte[] bytes, int from, int length) {
            ByteBuffer words = ByteBuffer.wrap(bytes, from, length).order(order);
            while (words.remaining() >= 2 * Integer.BYTES) {
                first += words.getInt() + second;
                second += words.getInt() + first;
            }
        }

        void start(int one, int two) {
            first = one;
            second = two;
        }

        boolean is(int one, int two) {
            return first == one && second == two;
        }
    }

    /** One way along the frames. */
    private static final class Walk {
        private final PageFile file;
        private final int pageSize;
        private final Header header;
        private final Sum sum;
        private final Map<Integer, Long> laidOver = new HashMap<>();
        private final Map<Integer, Long> pending = new HashMap<>();
        private final Map<Integer, Long> behind = new HashMap<>();
        private boolean isSound;
        private long salts;
        private int frames;
        private int taken;
        private int changes;
        private int damagedAt;

        Walk(PageFile file, int pageSize) {
            this.file = file;
            this.pageSize = pageSize;
            this.header = Header.of(file.log(0, HEADER));
            this.sum = new Sum(header.order());
            this.isSound = header.isSound() && header.pageSize() == pageSize;
            this.salts = header.salts();
        }

        LogFrames walk() {
            sum.start(header.first(), header.second());
            int length = FRAME_HEADER + pageSize;
            for (long at = HEADER; at + length <= file.logLength(); at += length) {
                frame(file.log(at, length), at + FRAME_HEADER);
            }
            return new LogFrames(laidOver, damagedAt == 0 ? Map.of() : behind, header.pageSize(), told());
        }

        private void frame(byte[] bytes, long content) {
            if (bytes.length < FRAME_HEADER + pageSize) {
                damaged();
                return;
            }
            ByteBuffer in = ByteBuffer.wrap(bytes);
            if (!header.isSound() && frames == 0) {
                salts = in.getLong(8);
                damaged();
            }
            // Behind the end of a log lie frames of an older one, with other salts.
            if (in.getLong(8) != salts) {
                isSound = false;
                return;
            }
            frames++;
            int number = in.getInt(0);
            boolean ends = in.getInt(4) != 0;
            sum.add(bytes, 0, 8);
            sum.add(bytes, FRAME_HEADER, pageSize);
            if (isSound ? !sum.is(in.getInt(16), in.getInt(20)) : damagedAt == 0) {
                damaged();
            }
            if (number > 0) {
                pending.put(number, content);
            }
            if (!ends) {
                return;
            }
            behind.putAll(pending);
            if (isSound) {
                laidOver.putAll(pending);
                taken = frames;
                changes++;
            }
            pending.clear();
        }

        private void damaged() {
            if (damagedAt == 0) {
                damagedAt = frames + (header.isSound() ? 0 : 1);
            }
            isSound = false;
        }

        private String told() {
            StringBuilder told = new StringBuilder("Its write-ahead log has "
                    + (frames == 1 ? "1 page" : frames + " pages") + "; "
                    + (taken == 1 ? "1 was" : taken + " were") + " laid over the file's, of "
                    + (changes == 1 ? "1 finished change." : changes + " finished changes."));
            if (damagedAt > 0) {
                told.append(" From its page ")
                        .append(Math.max(1, damagedAt))
                        .append(" on the log is damaged: what lies"
                                + " behind was taken only where the chain proves it.");
            } else if (taken < frames) {
                told.append(" The rest is of a change that was never finished, and was left out.");
            }
            return told.toString();
        }
    }
}
