package strawbed.print;

/** How far a page came. */
public enum JobState {
    /** It is tried until a printer takes it or a person gives it up. */
    WAITING,
    /** The print system took it; more cannot be known. */
    HANDED_OVER,
    /** A person gave it up. */
    DROPPED
}
