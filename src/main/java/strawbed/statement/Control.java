package strawbed.statement;

import strawbed.event.Term;

/** The phrases that steer the recorder. The word is the phrase's name in the grammar's tags. */
public enum Control implements Term {
    CONFIRM_ENTRY,
    CANCEL_ENTRY,
    REPEAT_ENTRY,
    UNDO_LAST_ENTRY,
    WHAT_IS_DUE,
    HOW_IS_CALF,
    PRINT_CARD,
    PUT_IT_OFF,
    PAUSE_RECORDER,
    WAKE_UP_RECORDER
}
