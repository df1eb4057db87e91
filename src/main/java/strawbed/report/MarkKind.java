package strawbed.report;

/** What a mark on the timeline stands for. */
public enum MarkKind {
    /** Milk given or due. */
    FEED,
    /** The navel dipped or due. */
    DIP,
    /** A look at the calf. */
    CHECK
}
