package strawbed.voice;

import strawbed.audio.Sound;

/** Speaks. Owned by one thread. */
public interface Voice {
    /**
     * The text as sound that starts at 0.
     *
     * @throws VoiceException when the voice fails
     */
    Sound speak(String text);
}
