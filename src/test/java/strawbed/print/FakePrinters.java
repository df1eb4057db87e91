package strawbed.print;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;

/** Printers of the tests: they take pages, refuse them, or do not answer. */
public final class FakePrinters implements Printers {
    private final List<String> taken = Collections.synchronizedList(new ArrayList<>());
    private volatile @Nullable String fault;
    private volatile CountDownLatch answers = new CountDownLatch(0);

    /** From now on every page is refused with this sentence; with null it is taken. */
    public void refuse(@Nullable String sentence) {
        fault = sentence;
    }

    /** From now on nobody answers until {@link #wakeUp}. */
    public void fallSilent() {
        answers = new CountDownLatch(1);
    }

    public void wakeUp() {
        answers.countDown();
    }

    /** Printer, title and bytes of what was handed over, in order. */
    public List<String> taken() {
        return List.copyOf(taken);
    }

    @Override
    public List<Known> all() {
        await();
        return List.of(new Known("CARDS", Optional.ofNullable(fault)), new Known("OFFICE", Optional.empty()));
    }

    @Override
    public void handOver(Path pdf, String printer, String title) {
        await();
        String why = fault;
        if (why != null) {
            throw new PrintException(why);
        }
        try {
            taken.add(printer + " " + title + " " + Files.readString(pdf, StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private void await() {
        try {
            answers.await();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}
