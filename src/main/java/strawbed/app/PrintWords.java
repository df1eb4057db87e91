package strawbed.app;

import java.nio.file.Path;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.print.PrintFault;
import strawbed.print.PrintJob;
import strawbed.station.Paper;
import strawbed.station.PaperState;
import strawbed.text.CalfNames;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/** What the recorder tells of pages on their way to the printer, in its language. Immutable, safe for any thread. */
record PrintWords(Messages messages) {
    /** What a calf's card is called in the queue. */
    String card(CalfRecord calf, Herd herd) {
        return messages.text(MessageKey.PRINT_CARD_OF, new CalfNames(messages).of(calf, herd));
    }

    /** What the sheet for the next shift is called in the queue. */
    String handover() {
        return messages.text(MessageKey.PRINT_HANDOVER_SHEET);
    }

    String notSent(Path file, String why) {
        return messages.text(MessageKey.PRINT_NOT_SENT, file.toString(), why);
    }

    /** What is known of a job, in a sentence. */
    String told(PrintJob job) {
        String number = Integer.toString(job.number());
        return switch (job.state()) {
            case HANDED_OVER -> messages.text(MessageKey.PRINT_TOLD_HANDED_OVER, job.printer(), number, job.what());
            case DROPPED -> messages.text(MessageKey.PRINT_TOLD_GIVEN_UP, number, job.what());
            case WAITING -> messages.text(MessageKey.PRINT_TOLD_WAITS, job.printer(), number, job.what(), why(job));
        };
    }

    /** Why it waits. */
    String why(PrintJob job) {
        PrintFault fault = job.fault();
        if (fault == null) {
            return messages.text(MessageKey.PRINT_NOT_TRIED);
        }
        String printer = job.printer();
        return switch (fault.kind()) {
            case PRINTER_GONE -> messages.text(MessageKey.PRINT_FAULT_GONE, printer);
            case CLOSED -> messages.text(MessageKey.PRINT_FAULT_CLOSED, printer);
            case PAUSED ->
                fault.detail().isEmpty()
                        ? messages.text(MessageKey.PRINT_FAULT_PAUSED, printer)
                        : messages.text(MessageKey.PRINT_FAULT_PAUSED_WHY, printer, fault.detail());
            case SILENT -> messages.text(MessageKey.PRINT_FAULT_SILENT, printer);
            case REFUSED -> messages.text(MessageKey.PRINT_FAULT_REFUSED, printer, fault.detail());
            case NO_PROGRAM -> messages.text(MessageKey.PRINT_FAULT_NO_PROGRAM, printer);
            case PAGE_LOST -> messages.text(MessageKey.PRINT_FAULT_PAGE_LOST);
            case BUSY -> messages.text(MessageKey.PRINT_FAULT_BUSY);
            case ENDED -> messages.text(MessageKey.PRINT_FAULT_ENDED);
            case OTHER -> fault.sentence();
        };
    }

    /** A job as the station shows it. */
    Paper paper(PrintJob job) {
        PaperState state = switch (job.state()) {
            case WAITING -> PaperState.WAITING;
            case HANDED_OVER -> PaperState.HANDED_OVER;
            case DROPPED -> PaperState.GIVEN_UP;
        };
        return new Paper(job.number(), job.what(), job.printer(), state, state == PaperState.WAITING ? why(job) : "");
    }

    /** The folder of the queue cannot be read or changed. */
    String unusable(Path folder) {
        return messages.text(MessageKey.PRINT_QUEUE_UNUSABLE, folder.toString());
    }

    /** Some notes in it cannot be read. */
    String damaged(int jobs) {
        return messages.text(MessageKey.PRINT_JOBS_DAMAGED, Integer.toString(jobs));
    }

    String noPrinter() {
        return messages.text(MessageKey.PRINT_NO_PRINTER);
    }

    /** A page that somebody wanted something of is no longer in the queue. */
    String gone() {
        return messages.text(MessageKey.PRINT_JOB_GONE);
    }

    /** Something that should never be. */
    String odd(RuntimeException failure) {
        return messages.text(MessageKey.PRINT_ODD, failure.toString());
    }
}
