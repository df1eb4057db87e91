package strawbed.print;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One document on its way to a printer.
 *
 * @param number in its queue, from 1
 * @param what in words, such as "the card of calf 312"
 * @param tries how often it was tried since it was asked for
 * @param lastTry null before the first
 * @param fault why the last try failed; null if there was none
 */
public record PrintJob(
        int number,
        String what,
        PrintUse use,
        String printer,
        Instant askedAt,
        JobState state,
        int tries,
        @Nullable Instant lastTry,
        @Nullable PrintFault fault) {
    private static final Duration FIRST_WAIT = Duration.ofSeconds(15);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(5);

    boolean isWaiting() {
        return state == JobState.WAITING;
    }

    /** Whether it waits and has waited long enough: twice as long after each try, at most some minutes. */
    boolean isDue(Instant now) {
        if (!isWaiting() || lastTry == null) {
            return isWaiting();
        }
        Duration wait = FIRST_WAIT;
        for (int i = 1; i < tries && wait.compareTo(LONGEST_WAIT) < 0; i++) {
            wait = wait.multipliedBy(2);
        }
        Duration most = wait.compareTo(LONGEST_WAIT) < 0 ? wait : LONGEST_WAIT;
        // A clock that was set back must not hold it for days.
        return now.isBefore(lastTry) || !now.isBefore(lastTry.plus(most));
    }

    PrintJob failed(Instant now, PrintFault why) {
        return new PrintJob(number, what, use, printer, askedAt, state, tries + 1, now, why);
    }

    PrintJob handedOver(Instant now) {
        return new PrintJob(number, what, use, printer, askedAt, JobState.HANDED_OVER, tries + 1, now, null);
    }

    PrintJob dropped() {
        return new PrintJob(number, what, use, printer, askedAt, JobState.DROPPED, tries, lastTry, fault);
    }

    /** As if it was asked for anew. */
    PrintJob again(String onPrinter, Instant now) {
        return new PrintJob(number, what, use, onPrinter, now, JobState.WAITING, 0, null, null);
    }
}
