package strawbed.app;

import java.util.Optional;
import strawbed.audio.MicrophoneState;

/** Sees when the microphone goes away and comes back. Owned by one thread. */
final class MicrophoneWatch {
    private final SoundIn in;
    private Optional<MicrophoneState> seen = Optional.empty();

    MicrophoneWatch(SoundIn in) {
        this.in = in;
    }

    /** What became of it since the last look. */
    enum News {
        NONE,
        /** It fares otherwise, and a person need not be told aloud. */
        OTHER,
        /** No sound comes any more. */
        LOST
    }

    News look() {
        Optional<MicrophoneState> now = in.changed();
        if (now.isEmpty()) {
            return News.NONE;
        }
        boolean wasLost = isLost();
        seen = now;
        return isLost() && !wasLost ? News.LOST : News.OTHER;
    }

    /** Whether no sound comes. */
    boolean isLost() {
        return seen.isPresent() && !isReady() && !seen.equals(Optional.of(MicrophoneState.OPENING));
    }

    /** Whether sound comes. */
    boolean isReady() {
        return seen.equals(Optional.of(MicrophoneState.LISTENING));
    }
}
