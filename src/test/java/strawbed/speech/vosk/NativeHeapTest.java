package strawbed.speech.vosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.jna.Native;
import com.sun.jna.Pointer;
import java.io.IOException;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.testkit.ProcessMemory;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NativeHeapTest {
    private static final int PIECE = 4000;
    private static final int PIECES = 50_000;
    private static final long MIB = 1 << 20;

    @Test
    void what_is_free_between_pieces_in_use_goes_back_to_the_system() throws IOException {
        assumeTrue(NativeHeap.trim().isPresent(), "only GNU's C library gives memory back when asked");
        long[] pieces = LongStream.range(0, PIECES).map(any -> filledPiece()).toArray();
        for (int i = 0; i < PIECES; i++) {
            if (!stays(i)) {
                Native.free(pieces[i]);
            }
        }
        long before = ProcessMemory.resident().orElseThrow();

        NativeHeap.giveBack();

        assertThat((before - ProcessMemory.resident().orElseThrow()) / MIB)
                .as("MiB given back of %d MiB freed", (long) PIECE * PIECES / MIB)
                .isGreaterThan(100);
        for (int i = 0; i < PIECES; i++) {
            if (stays(i)) {
                assertThat(new Pointer(pieces[i]).getByte(PIECE - 1)).isEqualTo((byte) 1);
                Native.free(pieces[i]);
            }
        }
    }

    /** Each hundredth, so that what is freed lies between them and not at an end. */
    private static boolean stays(int piece) {
        return piece % 100 == 99;
    }

    private static long filledPiece() {
        long piece = Native.malloc(PIECE);
        // Memory that was never written takes none.
        new Pointer(piece).setMemory(0, PIECE, (byte) 1);
        return piece;
    }
}
