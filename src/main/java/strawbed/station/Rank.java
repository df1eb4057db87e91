package strawbed.station;

/** How much a key weighs on its screen. */
public enum Rank {
    /** The answer that is wanted: the largest key. */
    YES,
    /** The answer against: apart from the one that is wanted. */
    NO,
    /** Something that takes time to get right or to wait for, such as a late task. */
    PRESSING,
    /** Any other. */
    USUAL,
    /** What is chosen now, of several. */
    CHOSEN
}
