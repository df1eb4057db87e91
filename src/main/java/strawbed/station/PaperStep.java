package strawbed.station;

/** What can be done about a page on its way to the printer. */
public enum PaperStep {
    /** One that waits is tried now. */
    TRY,
    /** One that waits is not tried any more. */
    GIVE_UP,
    /** One that waits no longer is sent once more, to the printer chosen now. */
    AGAIN
}
