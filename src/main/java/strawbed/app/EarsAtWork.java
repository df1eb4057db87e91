package strawbed.app;

import java.time.Instant;
import java.util.Collection;
import java.util.Optional;
import strawbed.audio.Sound;
import strawbed.hearing.Heard;
import strawbed.hearing.Hearing;
import strawbed.statement.Interpretation;

/** Ears and what they hear with; closing it closes the ears. */
record EarsAtWork(Ears ears, Hearing hearing) implements Attention {
    @Override
    public Optional<Heard> accept(Sound block) {
        return hearing.accept(block);
    }

    @Override
    public Optional<Heard> finish() {
        return hearing.finish();
    }

    @Override
    public Interpretation again(Sound sound, Instant began) {
        return hearing.again(sound, began);
    }

    @Override
    public void settle() {
        hearing.settle();
    }

    @Override
    public boolean isSpeaking() {
        return hearing.isSpeaking();
    }

    @Override
    public void listenFor(Collection<String> openCalves, boolean sameCalf) {
        ears.listenFor(openCalves, sameCalf, hearing);
    }

    @Override
    public String grammarVersion() {
        return ears.grammarVersion();
    }

    @Override
    public String modelName() {
        return ears.model().name();
    }

    @Override
    public Optional<String> whyDeaf() {
        return Optional.empty();
    }

    @Override
    public void close() {
        ears.close();
    }
}
