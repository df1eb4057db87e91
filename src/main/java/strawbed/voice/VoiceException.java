package strawbed.voice;

import org.jspecify.annotations.Nullable;

/** A voice that cannot be loaded or failed to speak; the message says what to do. */
public final class VoiceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    VoiceException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
