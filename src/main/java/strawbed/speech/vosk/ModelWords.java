package strawbed.speech.vosk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * All words that a model knows, the most common first, read from its language model {@code Gr.fst}: the native library
 * tells only whether it knows a given one.
 *
 * <p>The file is an OpenFst machine of the kind "ngram": a header, two tables of symbols, then bit fields and arrays
 * (OpenFst, ngram-fst.h; from memory, and tried with the model that comes with the program). The arcs of its first state
 * are the single words with the negative logarithm of how often each is said.
 */
public final class ModelWords {
    private static final int MACHINE = 0x7eb2fdd6;
    private static final int SYMBOLS = 0x7eb2fb74;
    private static final int HAS_INPUT_SYMBOLS = 1;
    private static final int HAS_OUTPUT_SYMBOLS = 2;

    private final ByteBuffer in;

    private ModelWords(ByteBuffer in) {
        this.in = in;
    }

    /**
     * The words of the model in a folder.
     *
     * @throws ModelException when the folder has no language model of this kind
     */
    public static List<String> of(Path directory) {
        Path file = directory.resolve("graph").resolve("Gr.fst");
        try (FileChannel channel = FileChannel.open(file)) {
            ByteBuffer whole = ByteBuffer.allocate(Math.toIntExact(channel.size()));
            while (whole.hasRemaining() && channel.read(whole) >= 0) {
                // Goes on until all is read.
            }
            return new ModelWords(whole.flip().order(ByteOrder.LITTLE_ENDIAN)).words();
        } catch (IOException | RuntimeException e) {
            throw new ModelException(
                    "The words of the speech model in " + directory + " cannot be listed: " + file
                            + " has another form than that of the model that comes with the program.",
                    e);
        }
    }

    private List<String> words() {
        require(in.getInt() == MACHINE);
        require(text().equals("ngram"));
        text();
        in.getInt();
        int flags = in.getInt();
        // Properties, first state, numbers of states and arcs.
        skip(4 * Long.BYTES);
        require((flags & HAS_INPUT_SYMBOLS) != 0);
        Map<Integer, String> symbols = symbols();
        if ((flags & HAS_OUTPUT_SYMBOLS) != 0) {
            symbols();
        }
        long states = in.getLong();
        long arcs = in.getLong();
        long finals = in.getLong();
        skip(bits(2 * states + 1));
        int singles = firstArcs(in.position());
        skip(bits(arcs + states + 1));
        skip(bits(states));
        skip(Integer.BYTES * (states + 1));
        int labels = in.position();
        skip(Integer.BYTES * arcs);
        skip(Float.BYTES * (states + 1));
        skip(Float.BYTES * finals);
        int costs = in.position();
        require(singles <= arcs);
        return IntStream.range(0, singles)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> in.getFloat(costs + Float.BYTES * i)))
                .map(i -> symbols.getOrDefault(in.getInt(labels + Integer.BYTES * i), ""))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private Map<Integer, String> symbols() {
        require(in.getInt() == SYMBOLS);
        text();
        in.getLong();
        long count = in.getLong();
        Map<Integer, String> symbols = new HashMap<>();
        for (long i = 0; i < count; i++) {
            String text = text();
            symbols.put((int) in.getLong(), text);
        }
        return symbols;
    }

    /** The arcs of the first state: as many ones as stand behind the first zero of the bit field. */
    private int firstArcs(int field) {
        int count = 0;
        while (isSet(field, count + 1)) {
            count++;
        }
        require(!isSet(field, 0));
        return count;
    }

    private boolean isSet(int field, int bit) {
        return (in.get(field + bit / Byte.SIZE) >> (bit % Byte.SIZE) & 1) == 1;
    }

    /** The bytes of a bit field, in whole words of 64. */
    private static long bits(long count) {
        return (count + Long.SIZE - 1) / Long.SIZE * Long.BYTES;
    }

    private void skip(long bytes) {
        in.position(Math.toIntExact(in.position() + bytes));
    }

    private String text() {
        byte[] bytes = new byte[in.getInt()];
        in.get(bytes);
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private static void require(boolean asExpected) {
        if (!asExpected) {
            throw new IllegalStateException("Gr.fst has another form than expected");
        }
    }
}
