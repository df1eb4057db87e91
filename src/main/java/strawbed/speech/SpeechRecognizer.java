package strawbed.speech;

import java.util.List;
import strawbed.audio.Sound;

/**
 * Reads one utterance after another with a fixed vocabulary. It may be given an utterance bit by bit while it is spoken,
 * so that little is left to do at its end. Owned by the thread that made it, from there to close.
 */
public interface SpeechRecognizer extends AutoCloseable {
    /**
     * Takes the next block of an utterance; the first one after {@link #finish} or {@link #forget} begins another.
     *
     * @throws IllegalStateException after close
     */
    void accept(Sound block);

    /**
     * Takes the end of the utterance. The words come back as they are written, that is with the vocabulary's stand-ins
     * mapped back; nothing of them is remembered for the next utterance.
     *
     * @return the readings, best first; empty when no word was heard
     * @throws IllegalStateException after close
     */
    List<Hypothesis> finish();

    /** Drops what was taken of an utterance. */
    void forget();

    /** Reads a whole utterance. */
    default List<Hypothesis> recognize(Sound sound) {
        accept(sound);
        return finish();
    }

    /** Lets the native memory go; a second call does nothing. */
    @Override
    void close();
}
