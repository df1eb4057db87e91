package strawbed.app;

/** Something that was asked for cannot be done as it was asked. The message says what to do instead. */
final class BadInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BadInputException(String message) {
        super(message);
    }
}
