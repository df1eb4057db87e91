package strawbed.journal;

import org.jspecify.annotations.Nullable;

/** The record cannot do what it was asked. The message says what happened and what to do next. */
public final class JournalException extends RuntimeException {
    private final Reason reason;
    private final String what;

    public JournalException(Reason reason, String message, @Nullable Throwable cause) {
        super(message, cause);
        this.reason = reason;
        this.what = message;
    }

    /**
     * With the remedy apart, for who reads the same form from another place than the record.
     *
     * @param what what happened, as a sentence
     * @param remedy what to do next when it happened in the record, as a sentence
     */
    JournalException(Reason reason, String what, String remedy, @Nullable Throwable cause) {
        super(what + " " + remedy, cause);
        this.reason = reason;
        this.what = what;
    }

    /** What happened, as a sentence; without the remedy where that is known apart. */
    public String what() {
        return what;
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
        /** The record has another fact with the same id. */
        CONFLICT,
        /** What is there is not a record. */
        NOT_A_RECORD,
        /** Something is there already that must not be lost. */
        EXISTS,
        /** Anything else, such as a disk that fails. */
        FAILED
    }
}
