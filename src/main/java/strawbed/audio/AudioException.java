package strawbed.audio;

/** A sound file that cannot be read or written; the message is one sentence with the file's name and the remedy. */
public final class AudioException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public AudioException(String message) {
        super(message);
    }

    public AudioException(String message, Throwable cause) {
        super(message, cause);
    }
}
