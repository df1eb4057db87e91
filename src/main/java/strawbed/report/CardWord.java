package strawbed.report;

/** The words that stand on a card whatever calf it is about. */
public enum CardWord {
    FEED,
    NAVEL,
    CHECK,
    /** Where the first day begins. */
    FROM_BIRTH,
    /** Where it begins of a calf that was found. */
    FROM_FIRST_SEEN,
    DONE,
    PLANNED,
    /** What the drawing of it is called when the page is read out. */
    FIRST_DAY,
    /** Where nothing of a kind was done or is planned, when the page is read out. */
    NONE,
    NOTHING_TO_DO,
    NOTHING_RECORDED
}
