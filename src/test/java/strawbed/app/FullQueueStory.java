package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import strawbed.print.PrintException;
import strawbed.print.PrintJob;
import strawbed.print.PrintQueue;
import strawbed.print.PrintUse;

/** A queue of pages on a disk that fills up: run by {@link DiskFaultsIT} on a small disk. Ends with 0 if all is well. */
final class FullQueueStory {
    private static final byte[] PAGE = new byte[60_000];

    private FullQueueStory() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        PrintQueue queue = new PrintQueue(folder.resolve("print-queue"), Clock.systemUTC());
        List<Integer> promised = new ArrayList<>();
        int refused = 0;
        for (int i = 0; i < 100; i++) {
            try {
                promised.add(queue.add(PAGE, "a card", PrintUse.CARDS, "CARDS").number());
            } catch (PrintException full) {
                refused++;
                check(full.toString().contains("disk has room"), full.toString());
            }
        }
        check(refused > 0 && !promised.isEmpty(), "the disk never filled up: " + promised.size());
        PrintQueue.Contents contents = queue.contents();
        check(contents.damaged().isEmpty(), contents.damaged().toString());
        check(contents.jobs().stream().map(PrintJob::number).toList().equals(promised), "not what was promised");
        for (int number : promised) {
            check(Files.size(queue.document(number)) == PAGE.length, "a page was cut off: " + number);
        }
        try (Stream<Path> files = Files.list(folder.resolve("print-queue"))) {
            check(files.noneMatch(file -> file.toString().endsWith(".part")), "a half page was left");
        }
        Files.delete(queue.document(promised.get(0)));
        Files.delete(queue.document(promised.get(1)));
        check(queue.add(PAGE, "a card", PrintUse.CARDS, "CARDS").number() > promised.size(), "no room was taken");
        System.out.println("queued " + promised.size() + ", refused " + refused);
    }

    private static void check(boolean good, String otherwise) {
        if (!good) {
            throw new AssertionError(otherwise);
        }
    }
}
