package strawbed.protocol.file;

/** The protocol's file cannot be written. The message says why and what to do next. */
public final class ProtocolFileException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ProtocolFileException(String message, Throwable cause) {
        super(message, cause);
    }
}
