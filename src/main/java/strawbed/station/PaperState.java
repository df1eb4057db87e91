package strawbed.station;

/** How far a page came on its way to the printer. */
public enum PaperState {
    WAITING,
    /** The print system took it; more cannot be known. */
    HANDED_OVER,
    /** A person gave it up. */
    GIVEN_UP
}
