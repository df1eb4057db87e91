package strawbed.speech;

/** How the sound of an utterance ends. */
public enum Ending {
    /** In a quarter of a second or more without speech. */
    IN_QUIET,
    /** Anywhere, perhaps in a word: a recogniser loses the last sound of it unless it is given quiet behind it. */
    CUT_OFF
}
