package strawbed.testkit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;

/** How much memory this process has, in bytes. */
public final class ProcessMemory {
    private static final Path STATUS = Path.of("/proc/self/status");
    private static final String RESIDENT = "VmRSS:";
    private static final int KIB = 1024;

    private ProcessMemory() {}

    /** What is left of the heap's content after what nobody holds was collected. */
    public static long heapAfterCollection() {
        Runtime java = Runtime.getRuntime();
        // The first one leaves what was in use when it began.
        System.gc();
        System.gc();
        return java.totalMemory() - java.freeMemory();
    }

    /** The resident set, also of the native recogniser; empty on a system that does not tell it. */
    public static OptionalLong resident() throws IOException {
        if (!Files.isReadable(STATUS)) {
            return OptionalLong.empty();
        }
        return Files.readAllLines(STATUS).stream()
                .filter(line -> line.startsWith(RESIDENT))
                .mapToLong(line -> KIB * Long.parseLong(line.replaceAll("\\D", "")))
                .findFirst();
    }
}
