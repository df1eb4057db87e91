package strawbed.audio;

import org.jspecify.annotations.Nullable;

/** A speaker that is missing or taken; the message says what to do. The work goes on without sound. */
public final class SpeakerException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    SpeakerException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
