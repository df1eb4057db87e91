package strawbed.report.pdf;

/** A card could not be written; the message says why and what to do. */
public final class CardPdfException extends RuntimeException {
    CardPdfException(String message, Throwable cause) {
        super(message, cause);
    }
}
