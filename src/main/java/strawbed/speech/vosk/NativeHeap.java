package strawbed.speech.vosk;

import com.sun.jna.Function;
import com.sun.jna.NativeLibrary;
import com.sun.jna.NativeLong;
import com.sun.jna.Platform;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * The memory of the native library, outside Java's heap. What it needs for an utterance it frees again, on several threads;
 * the C library of Linux keeps the freed pieces, and a station that runs for days would hold more and more memory that
 * nobody uses. So they are given back now and then. Safe for any thread.
 */
final class NativeHeap {
    /** Of one recogniser each: some minutes of people at work. */
    private static final int UTTERANCES = 100;

    private final AtomicInteger heard = new AtomicInteger();

    /** One recogniser is done with one utterance. Returns at once. */
    void heardOne() {
        if (heard.incrementAndGet() % UTTERANCES == 0) {
            // On a thread of its own: a person may be waiting for what was heard.
            Thread giving = new Thread(NativeHeap::giveBack, "memory of the speech library");
            giving.setDaemon(true);
            giving.start();
        }
    }

    /** Gives back what is free, where the system's C library can. Takes some hundredths of a second. */
    static void giveBack() {
        trim().ifPresent(trim -> trim.invokeInt(new Object[] {new NativeLong(0)}));
    }

    /** The function "malloc_trim" of GNU's C library; others do without. */
    static Optional<Function> trim() {
        if (!Platform.isLinux()) {
            return Optional.empty();
        }
        try {
            return Optional.of(NativeLibrary.getProcess().getFunction("malloc_trim"));
        } catch (UnsatisfiedLinkError missing) {
            Logger.getLogger(NativeHeap.class.getName())
                    .log(Level.FINE, "This C library keeps what is freed as it likes", missing);
            return Optional.empty();
        }
    }
}
