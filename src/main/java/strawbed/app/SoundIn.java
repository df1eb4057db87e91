package strawbed.app;

import java.time.Duration;
import java.util.Optional;
import strawbed.audio.MicrophoneState;
import strawbed.audio.Sound;

/** Where the station's sound comes from. Owned by one thread. */
interface SoundIn extends AutoCloseable {
    /** As {@link strawbed.audio.LiveMicrophone#poll}. */
    Optional<Sound> poll(Duration wait, boolean mayJump);

    /** As {@link strawbed.audio.LiveMicrophone#changed}. */
    Optional<MicrophoneState> changed();

    /** What to do about its state. */
    String sentence();

    /** Whether it is too loud now. */
    boolean clips();

    /** In dB of full scale. */
    double level();

    /** What was lost since the start. */
    Losses losses();

    @Override
    void close();

    /**
     * What was lost.
     *
     * @param dropped blocks of 20 ms that nobody took in time
     * @param overruns how often the device's own buffer was full
     * @param gone how often the microphone went away
     */
    record Losses(long dropped, long overruns, long gone) {}
}
