package strawbed.journal.sqlite;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/** The types of values in a row: a number says what a value is and how many bytes it takes. */
final class SerialType {
    static final long NULL = 0;

    private static final int ZERO = 8;
    private static final int ONE = 9;
    private static final int FIRST_BLOB = 12;
    private static final int[] BYTES_OF_NUMBERS = {0, 1, 2, 3, 4, 6, 8, 8, 0, 0};
    private static final int FLOAT = 7;

    private SerialType() {}

    /** A value that is not as the program writes it, as far as it can be shown. */
    record Damaged(String shown) {}

    static boolean isText(long type) {
        return type > FIRST_BLOB && (type & 1) == 1;
    }

    static boolean isWhole(long type) {
        return (type >= 1 && type < FLOAT) || type == ZERO || type == ONE;
    }

    /** Bytes of a value of this type; -1 for a type that the format does not use. */
    static long bytes(long type) {
        if (type < 0 || type == 10 || type == 11) {
            return -1;
        }
        return type < BYTES_OF_NUMBERS.length ? BYTES_OF_NUMBERS[(int) type] : (type - FIRST_BLOB) / 2;
    }

    /**
     * A value.
     *
     * @return a text, a whole number as Long, {@link Damaged}, or null
     */
    static @Nullable Object value(long type, byte[] bytes, int from, int length) {
        if (type == NULL) {
            return null;
        }
        if (isText(type)) {
            return text(bytes, from, length);
        }
        if (type == ZERO || type == ONE) {
            return type - ZERO;
        }
        if (isWhole(type)) {
            long whole = length > 0 ? bytes[from] : 0;
            for (int i = 1; i < length; i++) {
                whole = whole << Byte.SIZE | (bytes[from + i] & 0xff);
            }
            return whole;
        }
        return new Damaged("bytes " + HexFormat.of().formatHex(bytes, from, from + length));
    }

    private static Object text(byte[] bytes, int from, int length) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes, from, length))
                    .toString();
        } catch (CharacterCodingException e) {
            return new Damaged(new String(bytes, from, length, StandardCharsets.UTF_8));
        }
    }
}
