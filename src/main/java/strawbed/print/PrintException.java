package strawbed.print;

import org.jspecify.annotations.Nullable;

/** Something on the way to the printer went wrong. The message says what, and what to do. */
public final class PrintException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient @Nullable PrintFault fault;

    PrintException(String message, @Nullable Throwable cause) {
        super(message, cause);
        this.fault = null;
    }

    PrintException(PrintFault fault, @Nullable Throwable cause) {
        super(fault.sentence(), cause);
        this.fault = fault;
    }

    public PrintException(String message) {
        this(message, null);
    }

    /** What is wrong, with this message as its sentence. */
    PrintFault fault() {
        return fault == null ? PrintFault.of(PrintFault.Kind.OTHER, String.valueOf(getMessage())) : fault;
    }
}
