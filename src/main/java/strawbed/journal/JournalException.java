package strawbed.journal;

import org.jspecify.annotations.Nullable;

/** The record cannot do what it was asked. The message says what happened and what to do next. */
public final class JournalException extends RuntimeException {
    private final Reason reason;

    public JournalException(Reason reason, String message, @Nullable Throwable cause) {
        super(message, cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }

    /** What kind of trouble it is: each is told and mended differently. */
    public enum Reason {
        /** Another program uses the record. */
        BUSY,
        /** The disk is full. */
        FULL,
        /** The record may be read but not written. */
        READ_ONLY,
        /** The record is damaged. */
        CORRUPT,
        /** A newer version of the program wrote it. */
        NEWER,
        /** What is there is not a record. */
        NOT_A_RECORD,
        /** Something is there already that must not be lost. */
        EXISTS,
        /** Anything else, such as a disk that fails. */
        FAILED
    }
}
