package strawbed.audio;

import org.jspecify.annotations.Nullable;

/** A microphone that cannot be opened or went away; the message is one sentence with the remedy. */
public final class MicrophoneException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Why there is no sound. */
    public enum Reason {
        /** The computer has no microphone, or none of the name that was asked for. */
        NONE,
        /** There is one, but another program holds it or it refuses the format. */
        BUSY,
        /** It worked, and then stopped giving sound. */
        GONE
    }

    private final Reason reason;
    private final String sentence;

    MicrophoneException(Reason reason, String sentence, @Nullable Throwable cause) {
        super(sentence, cause);
        this.reason = reason;
        this.sentence = sentence;
    }

    /** What happened and what to do. */
    @Override
    public String getMessage() {
        return sentence;
    }

    /** Why there is no sound. */
    public Reason reason() {
        return reason;
    }
}
