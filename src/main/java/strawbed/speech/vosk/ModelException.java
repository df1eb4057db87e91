package strawbed.speech.vosk;

/** A speech model that cannot be unpacked, loaded or used; the message says what to do. */
public final class ModelException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ModelException(String message) {
        super(message);
    }

    ModelException(String message, Throwable cause) {
        super(message, cause);
    }
}
