package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import strawbed.print.JobState;
import strawbed.print.Porter;
import strawbed.print.PrintFault;
import strawbed.print.PrintJob;
import strawbed.print.PrintQueue;
import strawbed.print.PrintUse;
import strawbed.print.Printers;

/** Queue, porter and chosen printers of a data folder, for one command. */
final class PrintDesk {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Settings settings;
    private final PrintQueue queue;
    private final Porter porter;

    PrintDesk(Settings settings, Printers printers) {
        this.settings = settings;
        this.queue = queue(settings);
        this.porter = new Porter(queue, printers, settings.clock(), PATIENCE);
    }

    static PrintQueue queue(Settings settings) {
        return new PrintQueue(settings.data().resolve("print-queue"), settings.clock());
    }

    PrintQueue queue() {
        return queue;
    }

    Porter porter() {
        return porter;
    }

    /** The printer that was chosen for this use. */
    String chosen(PrintUse use) {
        String word = word(use);
        return StationFile.in(settings.data())
                .printer(use)
                .orElseThrow(() -> new BadInputException("No printer is chosen for " + word
                        + ". Type \"strawbed printer\" to see which there are, then \"strawbed printer use NAME --for "
                        + word + "\"."));
    }

    /** Queues a file, tries it, and tells what came of it in a sentence. */
    String send(Path file, String what, PrintUse use) {
        try {
            return send(Files.readAllBytes(file), what, use);
        } catch (IOException e) {
            throw new BadInputException(file + " was written, but cannot be read to be printed: " + e.getMessage()
                    + ". Give another file with -o.");
        }
    }

    String send(byte[] pdf, String what, PrintUse use) {
        PrintJob job = queue.add(pdf, what, use, chosen(use));
        return sentence(porter.carry(job).after());
    }

    /** What is known of a job, in a sentence. */
    static String sentence(PrintJob job) {
        String name = "job " + job.number() + ", " + job.what();
        return switch (job.state()) {
            case HANDED_OVER -> "Handed over to the printer " + job.printer() + ": " + name + ".";
            case DROPPED -> "Given up: " + name + ".";
            case WAITING ->
                "Waits for the printer " + job.printer() + ": " + name + ". " + fault(job)
                        + " Nothing is lost: a running recorder tries it again, or type \"strawbed printer retry\".";
        };
    }

    /** Why it waits. */
    static String fault(PrintJob job) {
        PrintFault fault = job.fault();
        return fault == null ? "It was not tried yet." : fault.sentence();
    }

    /** As it is typed. */
    static String word(PrintUse use) {
        return use.name().toLowerCase(Locale.ROOT);
    }

    static boolean isDone(PrintJob job) {
        return job.state() != JobState.WAITING;
    }
}
