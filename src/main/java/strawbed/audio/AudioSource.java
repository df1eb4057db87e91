package strawbed.audio;

import java.util.Optional;

/** Something that gives sound block by block, from its start to its end. Owned by one thread. */
public interface AudioSource extends AutoCloseable {
    /** Samples in a block: 20 ms. */
    int BLOCK = Sound.RATE / 50;

    /**
     * The next 20 ms; the last block may be shorter. Waits when the source is live.
     *
     * @return empty at the end
     * @throws AudioException when a file cannot be read further
     * @throws MicrophoneException when the microphone went away
     */
    Optional<Sound> read();

    /** The number of samples given so far, at 16,000 a second. */
    long position();

    /** Lets the file or device go; a second call does nothing. */
    @Override
    void close();
}
