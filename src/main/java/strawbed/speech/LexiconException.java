package strawbed.speech;

/** A faulty list of stand-ins; the message names file, line and remedy. */
public final class LexiconException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    LexiconException(String message) {
        super(message);
    }
}
