package strawbed.app;

import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import strawbed.audio.Sound;
import strawbed.hearing.Heard;
import strawbed.statement.Interpretation;

/** What makes statements of sound; or nothing, where this computer cannot hear. Owned by one thread. */
interface Attention extends AutoCloseable {
    /** Takes the next block and gives the utterance that ended with it, if one did. */
    Optional<Heard> accept(Sound block);

    /** Gives the utterance that the end of the source cut off, if one was begun. */
    Optional<Heard> finish();

    /** Gives an utterance of sound that had to wait until it could be heard; to be asked again and again. */
    default Optional<Heard> late() {
        return Optional.empty();
    }

    /** Whether sound has to wait, as the ears are still being made. */
    default boolean isComing() {
        return false;
    }

    /**
     * Hears a kept sound once more, with what is known by now.
     *
     * @param began when its first word began
     */
    Interpretation again(Sound sound, Instant began);

    /** The last statement was answered: what follows stands for itself. */
    void settle();

    /** Whether somebody speaks now. */
    boolean isSpeaking();

    /** Listens for these calves from now on. */
    void listenFor(Collection<String> openCalves, boolean sameCalf);

    /** Which state of the grammar's files is in use, for the record. */
    String grammarVersion();

    /** Which speech model is in use, for the record. */
    String modelName();

    /** Why nothing is heard, in a sentence; empty where it hears. */
    Optional<String> whyDeaf();

    @Override
    void close();
}
