package strawbed.exchange;

import org.jspecify.annotations.Nullable;

/** A file cannot be read or written at all. The message says why and what to do next. */
public final class ExchangeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    ExchangeException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }

    /** Of a file that the system does not let us read. */
    static ExchangeException unreadable(Object file, Throwable failure) {
        return new ExchangeException(
                file + " cannot be read: " + failure + ". Check its name, and who may read it.", failure);
    }
}
