package strawbed.care;

/** How a due item stands at a given time. */
public enum DueState {
    /** Its time has not begun. */
    AHEAD,
    /** Now is the time. */
    DUE,
    /** Its time has passed; it should still be done. */
    LATE,
    /** It was not done, and doing it now would not make up for it. */
    MISSED,
    /** It was done. */
    DONE,
    /** Something else made it needless. */
    NOT_NEEDED;

    /** Whether it was neither done nor made needless. */
    public boolean isOpen() {
        return this != DONE && this != NOT_NEEDED;
    }

    /** Whether somebody should do it now. */
    public boolean isPressing() {
        return this == DUE || this == LATE;
    }
}
