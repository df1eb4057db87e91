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
    NO_SOUND,
    /** Nothing can be made of sound, as there is no speech model; the buttons work. */
    KEYS_ONLY,
    /** It does not work at all; why stands on the screen. */
    STOPPED;

    /** Whether what is said now is heard. */
    public boolean isListening() {
        return this == LISTENING;
    }

    /** Whether nothing can be heard until somebody mends something. */
    public boolean isDeaf() {
        return this == NO_SOUND || this == KEYS_ONLY || this == STOPPED;
    }
}
