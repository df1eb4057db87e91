package strawbed.station;

/** What a key of a pedal, a clicker or a keyboard can mean. */
public enum Meaning {
    TALK,
    CONFIRM,
    CANCEL,
    REPEAT,
    UNDO,
    NEXT,
    BEFORE
}
