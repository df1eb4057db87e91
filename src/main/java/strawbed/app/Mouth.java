package strawbed.app;

import strawbed.audio.Sound;

/** What the station can be heard with. Safe for any thread. */
interface Mouth {
    /** Says a text after what is being said. */
    void say(String text);

    /** Plays a sound after what is being said. */
    void play(Sound sound);

    /** Whether something is being said, or waits to be. */
    boolean isSpeaking();

    /** Ends what is being said, and what waits. */
    void stop();
}
