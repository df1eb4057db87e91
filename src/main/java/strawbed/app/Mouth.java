package strawbed.app;

import java.util.Optional;
import strawbed.audio.Sound;

/** What the station can be heard with. Safe for any thread. */
interface Mouth {
    /** Says a text after what is being said. */
    void say(String text);

    /** Plays a sound after what is being said. */
    void play(Sound sound);

    /** Whether something is being said, or waits to be. */
    boolean isSpeaking();

    /** What is wrong with it since the last sound and what to do; empty while it can be heard. */
    Optional<String> trouble();

    /** Ends what is being said, and what waits. */
    void stop();
}
