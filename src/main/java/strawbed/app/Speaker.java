package strawbed.app;

import java.io.PrintWriter;
import java.util.Optional;
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
    private final SpeakerSink sink;
    private final PrintWriter err;
    private final AtomicInteger waiting = new AtomicInteger();
    private final AtomicInteger stops = new AtomicInteger();
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread made = new Thread(task, "speaker");
        made.setDaemon(true);
        return made;
    });

    /** Nothing is ever said. */
    private volatile boolean mute;

    /** Only its own thread has it. */
    private @Nullable Voice voice;

    private Speaker(boolean quiet, SpeakerSink sink, PrintWriter err) {
        this.mute = quiet;
        this.sink = sink;
        this.err = err;
        if (!quiet) {
            // On its own thread, as listening shall not wait for a voice that says nothing yet.
            thread.execute(this::loadVoice);
        }
    }

    /** A speaker; one that is quiet, or has no voice, speaks nothing and says why once. */
    static Speaker open(boolean quiet, PrintWriter err) {
        return new Speaker(quiet, new SpeakerSink(), err);
    }

    /** A speaker of this name; empty for the one that the system prefers. */
    static Speaker open(Optional<String> name, PrintWriter err) {
        return new Speaker(false, new SpeakerSink(name.orElse(null)), err);
    }

    private void loadVoice() {
        try {
            voice = new FreeTtsVoice();
        } catch (VoiceException failure) {
            mute = true;
            err.println(failure.getMessage());
        }
    }

    @Override
    public void say(String text) {
        if (!mute && !text.isBlank()) {
            next(() -> Optional.ofNullable(voice).map(speaks -> speaks.speak(text)));
        }
    }

    @Override
    public void play(Sound sound) {
        next(() -> Optional.of(sound));
    }

    private void next(Supplier<Optional<Sound>> sound) {
        waiting.incrementAndGet();
        int stopsBefore = stops.get();
        thread.execute(() -> {
            try {
                if (stops.get() == stopsBefore) {
                    sound.get().ifPresent(sink::play);
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
    public Optional<String> trouble() {
        return sink.trouble();
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
