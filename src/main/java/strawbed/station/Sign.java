package strawbed.station;

/** Whether anybody listens now: what a person must see from two metres. */
public enum Sign {
    /** The program is not ready yet. */
    STARTING,
    /** Every word may become a statement. */
    LISTENING,
    /** It listens as long as the talk key is held. */
    HOLD_TO_TALK,
    /** It speaks, and does not listen on an open speaker. */
    SPEAKING,
    /** It was paused by a person. */
    PAUSED,
    /** No sound comes in; the buttons work. */
    NO_SOUND;

    /** Whether what is said now is heard. */
    public boolean isListening() {
        return this == LISTENING;
    }
}
