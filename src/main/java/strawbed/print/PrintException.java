package strawbed.print;

import org.jspecify.annotations.Nullable;

/** Something on the way to the printer went wrong. The message says what, and what to do. */
public final class PrintException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PrintException(String message, @Nullable Throwable cause) {
        super(message, cause);
    }

    public PrintException(String message) {
        this(message, null);
    }
}
