package strawbed.app;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import strawbed.audio.AudioException;
import strawbed.audio.Sound;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.journal.NewOpenStatement;

/**
 * Statements on their way to the open ones. What record or disk refuse waits here and is tried again, so that a disk
 * that is full for an hour costs nothing that was said. Owned by one thread.
 */
final class LeftOpen {
    /** Some hours of talk that nobody confirms; the oldest are let go beyond, and told, as memory has an end too. */
    static final int MOST = 200;

    private final EventJournal journal;
    private final SoundFolder sounds;
    private final Deque<Slip> waiting = new ArrayDeque<>();
    private String refusal = "";
    private int letGo;

    /** A statement that was left, in the record or not yet. */
    static final class Slip {
        private final NewOpenStatement statement;
        private @Nullable Sound unwritten;
        private @Nullable UUID id;
        private @Nullable String how;
        private boolean settled;

        private Slip(NewOpenStatement statement, @Nullable Sound unwritten) {
            this.statement = statement;
            this.unwritten = unwritten;
        }

        /** Whether the record has it, and how it ended where it did. */
        boolean isKept() {
            return id != null && (how == null || settled);
        }
    }

    LeftOpen(EventJournal journal, SoundFolder sounds) {
        this.journal = journal;
        this.sounds = sounds;
    }

    /**
     * Leaves a statement.
     *
     * @param unwritten its sound, if that is not on the disk yet
     * @param how it ended already; null while it is open
     */
    Slip leave(NewOpenStatement statement, @Nullable Sound unwritten, @Nullable String how) {
        Slip slip = new Slip(statement, unwritten);
        slip.how = how;
        add(slip);
        return slip;
    }

    /** A statement that was left came to its end. */
    void settle(Slip slip, String how) {
        slip.how = how;
        if (!waiting.contains(slip)) {
            add(slip);
        } else {
            tryAgain();
        }
    }

    /** Tries everything that waits once more, oldest first. */
    void tryAgain() {
        for (Iterator<Slip> slips = waiting.iterator(); slips.hasNext(); ) {
            Slip slip = slips.next();
            try {
                record(slip);
                writeSound(slip);
                slips.remove();
            } catch (AudioException failure) {
                refusal = sentence(failure);
            } catch (JournalException failure) {
                refusal = sentence(failure);
                // The record refuses the others too.
                return;
            }
        }
    }

    boolean isWaiting() {
        return !waiting.isEmpty();
    }

    /** Why something waits, in sentences; also what is lost by now. */
    String refusal() {
        return switch (letGo) {
            case 0 -> refusal;
            case 1 -> refusal + " Memory is full as well: 1 older statement is lost.";
            default -> refusal + " Memory is full as well: " + letGo + " older statements are lost.";
        };
    }

    static String sentence(RuntimeException failure) {
        return Objects.requireNonNullElse(failure.getMessage(), failure.toString());
    }

    private void add(Slip slip) {
        if (waiting.size() == MOST) {
            waiting.removeFirst();
            letGo++;
        }
        waiting.add(slip);
        tryAgain();
    }

    private void record(Slip slip) {
        if (slip.id == null) {
            slip.id = journal.keep(slip.statement).id();
        }
        if (slip.how != null && !slip.settled) {
            journal.settle(slip.id, slip.how);
            slip.settled = true;
        }
    }

    private void writeSound(Slip slip) {
        if (slip.unwritten != null) {
            sounds.write(slip.statement.sound(), slip.unwritten);
            slip.unwritten = null;
        }
    }
}
