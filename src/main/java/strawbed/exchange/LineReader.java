package strawbed.exchange;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** Reads a file line by line and never holds more than one of them, however long it is. */
final class LineReader implements Closeable {
    /** In bytes. No event comes near it; a line without end must not fill the memory. */
    static final int LONGEST = 1 << 20;

    private static final String MARK = "\uFEFF";

    private final InputStream in;
    private long number;

    LineReader(InputStream in) {
        this.in = new BufferedInputStream(in);
    }

    /**
     * @param number from 1
     * @param text without its end; null where it cannot be read
     * @param problem why it cannot be read, else empty
     */
    record Line(long number, @Nullable String text, String problem) {}

    /** The next line, or null at the end of the file. */
    @Nullable
    Line next() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        long length = 0;
        int letter = in.read();
        if (letter < 0) {
            return null;
        }
        while (letter >= 0 && letter != '\n') {
            length++;
            if (length <= LONGEST) {
                bytes.write(letter);
            }
            letter = in.read();
        }
        number++;
        if (length > LONGEST) {
            return new Line(number, null, "the line has more than " + LONGEST + " bytes, too many for an event");
        }
        return decoded(bytes.toByteArray());
    }

    private Line decoded(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (number == 1 && text.startsWith(MARK)) {
                text = text.substring(MARK.length());
            }
            return new Line(number, text.endsWith("\r") ? text.substring(0, text.length() - 1) : text, "");
        } catch (CharacterCodingException e) {
            return new Line(number, null, "it is not UTF-8 text (" + e.getMessage() + ")");
        }
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
