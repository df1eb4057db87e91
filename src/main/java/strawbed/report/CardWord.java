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
    NOTHING_TO_DO,
    NOTHING_RECORDED
}
