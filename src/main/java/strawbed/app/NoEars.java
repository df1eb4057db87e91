package strawbed.app;

import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import strawbed.audio.Sound;
import strawbed.hearing.Heard;
import strawbed.statement.Interpretation;

/**
 * A station without a speech model or a grammar that can be used: its keys work, and no sound is kept.
 *
 * @param why nothing is heard, and what to do, in a sentence
 */
record NoEars(String why) implements Attention {
    @Override
    public Optional<Heard> accept(Sound block) {
        return Optional.empty();
    }

    @Override
    public Optional<Heard> finish() {
        return Optional.empty();
    }

    /** @throws BadInputException always: it says why */
    @Override
    public Interpretation again(Sound sound, Instant began) {
        throw new BadInputException(why);
    }

    @Override
    public void settle() {}

    @Override
    public boolean isSpeaking() {
        return false;
    }

    @Override
    public void listenFor(Collection<String> openCalves, boolean sameCalf) {}

    @Override
    public String grammarVersion() {
        return "none";
    }

    @Override
    public String modelName() {
        return "none";
    }

    @Override
    public Optional<String> whyDeaf() {
        return Optional.of(why);
    }

    @Override
    public void close() {}
}
