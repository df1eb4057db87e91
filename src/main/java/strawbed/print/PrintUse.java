package strawbed.print;

/** What a printer is chosen for, as its paper differs. */
public enum PrintUse {
    /** Hutch cards: labels or A6. */
    CARDS,
    /** Handover and crib sheets: letter or A4. */
    SHEETS
}
