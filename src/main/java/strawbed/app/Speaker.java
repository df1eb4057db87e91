package strawbed.app;

import java.io.PrintWriter;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.audio.SpeakerException;
import strawbed.audio.SpeakerSink;
import strawbed.voice.FreeTtsVoice;
import strawbed.voice.Voice;
import strawbed.voice.VoiceException;

/** Speaks sentences one after the other on its own thread, so that listening never waits for it. */
final class Speaker implements Mouth, AutoCloseable {
    private final @Nullable Voice voice;
    private final SpeakerSink sink = new SpeakerSink();
    private final PrintWriter err;
    private final AtomicInteger waiting = new AtomicInteger();
    private final AtomicInteger stops = new AtomicInteger();
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

    @Override
    public void say(String text) {
        Voice speaks = voice;
        if (speaks != null && !text.isBlank()) {
            next(() -> speaks.speak(text));
        }
    }

    @Override
    public void play(Sound sound) {
        next(() -> sound);
    }

    private void next(Supplier<Sound> sound) {
        waiting.incrementAndGet();
        int stopsBefore = stops.get();
        thread.execute(() -> {
            try {
                if (stops.get() == stopsBefore) {
                    sink.play(sound.get());
                }
            } catch (SpeakerException | VoiceException failure) {
                err.println(failure.getMessage());
            } finally {
                waiting.decrementAndGet();
            }
        });
    }

    @Override
    public boolean isSpeaking() {
        return waiting.get() > 0;
    }

    @Override
    public void stop() {
        stops.incrementAndGet();
        sink.stop();
    }

    @Override
    public void close() {
        stop();
        thread.shutdownNow();
    }
}
