package strawbed.audio;

/** How a {@link LiveMicrophone} fares; its {@link LiveMicrophone#sentence} says what to do. */
public enum MicrophoneState {
    /** It is being opened for the first time. */
    OPENING,
    /** Sound comes. */
    LISTENING,
    /** The computer has no microphone, or none of that name. */
    NONE,
    /** There is one that cannot be opened, or the sound system does not answer. */
    BUSY,
    /** It was there, or opened, and gives no sound any more; stays until sound comes again. */
    GONE,
    /** It gives exact silence, as no microphone does that is on. */
    SILENT,
    /** It gives another format than it was asked for. */
    WRONG_FORMAT;

    static MicrophoneState of(MicrophoneException.Reason reason) {
        return switch (reason) {
            case NONE -> NONE;
            case BUSY -> BUSY;
            case GONE -> GONE;
        };
    }
}
