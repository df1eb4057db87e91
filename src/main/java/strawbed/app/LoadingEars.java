package strawbed.app;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import strawbed.speech.SpeechModel;

/** Speech model and phrasebook on their way, so that other things can be done meanwhile. Safe for any thread. */
final class LoadingEars implements AutoCloseable {
    private final CompletableFuture<SpeechModel> model;
    private final CompletableFuture<FarmWords> words;
    private volatile boolean taken;

    LoadingEars(Settings settings) {
        this.model = CompletableFuture.supplyAsync(() -> Ears.load(settings));
        this.words = CompletableFuture.supplyAsync(() -> FarmWords.read(settings));
    }

    /** Waits for the model; who takes it closes it. */
    SpeechModel take() {
        SpeechModel loaded = wait(model);
        taken = true;
        return loaded;
    }

    FarmWords words() {
        return wait(words);
    }

    /** What is on its way, or the failure that it came to. */
    static <T> T wait(CompletableFuture<T> coming) {
        try {
            return coming.join();
        } catch (CompletionException failure) {
            throw failure.getCause() instanceof RuntimeException cause ? cause : failure;
        }
    }

    /**
     * Waits for what nobody took and closes it; nobody may take it afterwards. If that failed, what stopped the start
     * before it is told instead.
     */
    @Override
    public void close() {
        if (!taken) {
            model.handle((loaded, failure) -> loaded)
                    .thenAccept(LoadingEars::closeIfThere)
                    .join();
        }
    }

    private static void closeIfThere(@Nullable SpeechModel loaded) {
        if (loaded != null) {
            loaded.close();
        }
    }
}
