package strawbed.app;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.hearing.Heard;
import strawbed.statement.Interpretation;

/**
 * Ears that are still being made. The sound that comes meanwhile is kept, and heard as soon as they are there: a person
 * may speak, and press keys, while the speech model is loading.
 */
final class ComingEars implements Attention {
    private final CompletableFuture<Attention> coming;

    /** Blocks, and ends of the source as empty ones, in the order in which they came. */
    private final Deque<Optional<Sound>> waiting = new ArrayDeque<>();

    private @Nullable Attention here;
    private Wanted wanted = new Wanted(List.of(), false);

    /** What to listen for. */
    private record Wanted(Collection<String> openCalves, boolean sameCalf) {}

    private ComingEars(CompletableFuture<Attention> coming) {
        this.coming = coming;
    }

    /**
     * Begins to make them on another thread.
     *
     * @param openCalves what they are made for
     */
    static ComingEars begin(Collection<String> openCalves, Supplier<Attention> maker) {
        ComingEars ears = new ComingEars(CompletableFuture.supplyAsync(maker));
        ears.listenFor(openCalves, false);
        return ears;
    }

    @Override
    public Optional<Heard> accept(Sound block) {
        waiting.add(Optional.of(block));
        return late();
    }

    @Override
    public Optional<Heard> finish() {
        waiting.add(Optional.empty());
        return late();
    }

    /** One utterance at a time: the answer to it may change what is listened for. */
    @Override
    public Optional<Heard> late() {
        if (isComing()) {
            return Optional.empty();
        }
        Attention ears = ears();
        while (!waiting.isEmpty()) {
            Optional<Heard> heard = waiting.remove().map(ears::accept).orElseGet(ears::finish);
            if (heard.isPresent()) {
                return heard;
            }
        }
        return Optional.empty();
    }

    @Override
    public boolean isComing() {
        return here == null && !coming.isDone();
    }

    /** Waits for them. */
    private Attention ears() {
        Attention ears = here;
        if (ears == null) {
            ears = LoadingEars.wait(coming);
            ears.listenFor(wanted.openCalves(), wanted.sameCalf());
            here = ears;
        }
        return ears;
    }

    /** Waits for the ears if need be. */
    @Override
    public Interpretation again(Sound sound, Instant began) {
        return ears().again(sound, began);
    }

    @Override
    public void settle() {
        if (!isComing()) {
            ears().settle();
        }
    }

    @Override
    public boolean isSpeaking() {
        return !isComing() && ears().isSpeaking();
    }

    @Override
    public void listenFor(Collection<String> openCalves, boolean sameCalf) {
        wanted = new Wanted(List.copyOf(openCalves), sameCalf);
        if (here != null) {
            here.listenFor(openCalves, sameCalf);
        }
    }

    /** Of statements, so when they are there. */
    @Override
    public String grammarVersion() {
        return ears().grammarVersion();
    }

    @Override
    public String modelName() {
        return ears().modelName();
    }

    @Override
    public Optional<String> whyDeaf() {
        return isComing() ? Optional.empty() : ears().whyDeaf();
    }

    /** Waits for them if need be; what could not be made needs no closing. */
    @Override
    public void close() {
        coming.handle((ears, failure) -> Optional.ofNullable(ears)).join().ifPresent(Attention::close);
    }
}
