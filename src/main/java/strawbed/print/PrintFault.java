package strawbed.print;

/**
 * Why a page was not handed over.
 *
 * @param kind what is wrong, for who tells it in other words
 * @param detail what the print system says of it, in its own words; may be empty
 * @param sentence all of it in a sentence, with a remedy
 */
public record PrintFault(Kind kind, String detail, String sentence) {
    /** What is wrong. */
    public enum Kind {
        /** The computer does not know this printer now. */
        PRINTER_GONE,
        /** It takes no jobs. */
        CLOSED,
        PAUSED,
        /** It does not answer in time. */
        SILENT,
        /** It was asked, and did not take the page. */
        REFUSED,
        /** The program by which pages are handed over is not installed. */
        NO_PROGRAM,
        /** The document is gone, or cannot be read. */
        PAGE_LOST,
        /** Another program hands pages over just now. */
        BUSY,
        /** The program ended before the printer answered. */
        ENDED,
        /** Only the sentence tells, as in notes of earlier versions. */
        OTHER
    }

    static PrintFault of(Kind kind, String sentence) {
        return new PrintFault(kind, "", sentence);
    }
}
