package strawbed.speech;

import strawbed.audio.Sound;

/** Reads one utterance after another with a fixed vocabulary. Owned by the thread that made it, from there to close. */
public interface SpeechRecognizer extends AutoCloseable {
    /**
     * Reads a whole utterance; nothing of it is remembered for the next. The words come back as they are written, that
     * is with the vocabulary's stand-ins mapped back.
     *
     * @throws IllegalStateException after close
     */
    Utterance recognize(Sound sound);

    /** Lets the native memory go; a second call does nothing. */
    @Override
    void close();
}
