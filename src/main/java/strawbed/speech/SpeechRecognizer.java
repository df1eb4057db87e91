package strawbed.speech;

import java.util.List;
import strawbed.audio.Sound;

/**
 * Reads one utterance after another with a fixed vocabulary. It may be given an utterance bit by bit while it is spoken,
 * so that little is left to do at its end. Used by one thread at a time: whoever hands it to another one waits for that.
 */
public interface SpeechRecognizer extends AutoCloseable {
    /** 0.2 s: so much at once is worked on with little waste, and little is left to do when speech ends. */
    int BITE = Sound.RATE / 5;

    /**
     * Takes the next block of an utterance; the first one after {@link #finish} or {@link #forget} begins another.
     *
     * @throws IllegalStateException after close
     */
    void accept(Sound block);

    /** The words of the utterance so far, as they are written; what comes may change them. Empty before the first word. */
    List<String> wordsSoFar();

    /**
     * Takes the end of the utterance. The words come back as they are written, that is with the vocabulary's stand-ins
     * mapped back; nothing of them is remembered for the next utterance.
     *
     * @param ending how the sound that was taken ends; {@link Ending#CUT_OFF} is always right and takes longer
     * @return the readings, best first; empty when no word was heard
     * @throws IllegalStateException after close
     */
    List<Hypothesis> finish(Ending ending);

    /** Drops what was taken of an utterance. */
    void forget();

    /** Reads a whole utterance, bit by bit as well, so that it is read as one that is just spoken. */
    default List<Hypothesis> recognize(Sound sound) {
        for (int at = 0; at < sound.length(); at += BITE) {
            accept(sound.slice(at, Math.min(sound.length(), at + BITE)));
        }
        return finish(Ending.CUT_OFF);
    }

    /** Lets the native memory go; a second call does nothing. */
    @Override
    void close();
}
