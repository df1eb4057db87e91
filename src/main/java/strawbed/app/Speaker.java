package strawbed.app;

import java.io.PrintWriter;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import strawbed.audio.SpeakerException;
import strawbed.audio.SpeakerSink;
import strawbed.voice.FreeTtsVoice;
import strawbed.voice.Voice;
import strawbed.voice.VoiceException;

/** Speaks sentences one after the other on its own thread, so that listening never waits for it. */
final class Speaker implements AutoCloseable {
    private final @Nullable Voice voice;
    private final SpeakerSink sink = new SpeakerSink();
    private final PrintWriter err;
    private final AtomicInteger waiting = new AtomicInteger();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread made = new Thread(task, "speaker");
        made.setDaemon(true);
        return made;
    });

    private Speaker(@Nullable Voice voice, PrintWriter err) {
        this.voice = voice;
        this.err = err;
    }

    /** A speaker; one that is quiet, or has no voice, speaks nothing and says why once. */
    static Speaker open(boolean quiet, PrintWriter err) {
        if (quiet) {
            return new Speaker(null, err);
        }
        try {
            return new Speaker(new FreeTtsVoice(), err);
        } catch (VoiceException failure) {
            err.println(failure.getMessage());
            return new Speaker(null, err);
        }
    }

    void say(String text) {
        if (voice == null || text.isBlank()) {
            return;
        }
        waiting.incrementAndGet();
        thread.execute(() -> {
            try {
                sink.play(voice.speak(text));
            } catch (SpeakerException | VoiceException failure) {
                err.println(failure.getMessage());
            } finally {
                waiting.decrementAndGet();
            }
        });
    }

    boolean isSpeaking() {
        return waiting.get() > 0;
    }

    /** Ends what is being said. */
    void stop() {
        sink.stop();
    }

    @Override
    public void close() {
        stop();
        thread.shutdownNow();
    }
}
