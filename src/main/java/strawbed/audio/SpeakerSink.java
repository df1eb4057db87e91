package strawbed.audio;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.jspecify.annotations.Nullable;

/**
 * The speaker. {@code play} waits until the sound is over, so it belongs to a thread of its own; {@code stop} and the
 * others may come from any thread. Each sound opens the device anew, so a speaker that comes back plays again.
 */
public final class SpeakerSink {
    private static final DataLine.Info WANTED = new DataLine.Info(SourceDataLine.class, SoundDevices.FORMAT);
    private static final int CHUNK_BYTES = Sound.RATE / 10 * Short.BYTES;

    /** By how much a sound may take longer than it is; devices that slept were seen to need two seconds. */
    private static final Duration PATIENCE = Duration.ofSeconds(3);

    private static final String NO_ANSWER = "The sound system does not answer; restart it or the computer.";

    private final Callable<SourceDataLine> opener;
    private final String name;
    private final Duration patience;
    private final Object lock = new Object();
    private @Nullable SourceDataLine playing;
    private volatile @Nullable String trouble;

    /** The speaker that the system prefers. */
    public SpeakerSink() {
        this(null);
    }

    /** @param mixerName one of {@link #names}, or null for the one that the system prefers */
    public SpeakerSink(@Nullable String mixerName) {
        this(() -> openLine(mixerName), mixerName == null ? "" : " \"" + mixerName + "\"", PATIENCE);
    }

    /**
     * For tests.
     *
     * @param opener gives a line that is started
     * @param name follows the word speaker in sentences
     */
    SpeakerSink(Callable<SourceDataLine> opener, String name, Duration patience) {
        this.opener = opener;
        this.name = name;
        this.patience = patience;
    }

    /**
     * The names of the speakers that take the format needed.
     *
     * @throws SpeakerException when the sound system does not answer
     */
    public static List<String> names() {
        try {
            return SoundDevices.ask(() -> SoundDevices.names(WANTED));
        } catch (TimeoutException | ExecutionException e) {
            throw new SpeakerException(NO_ANSWER, e);
        }
    }

    /**
     * Plays a sound to its end or to {@link #stop}.
     *
     * @return whether it was played to its end
     * @throws SpeakerException when there is no speaker or it is taken; nothing else depends on it, so go on without.
     *     It is thrown once: while the trouble lasts the next sounds are tried, and false is given if they fail, too.
     */
    public boolean play(Sound sound) {
        try {
            boolean whole = play(open(), sound);
            trouble = null;
            return whole;
        } catch (SpeakerException failure) {
            boolean told = trouble != null;
            trouble = failure.getMessage();
            if (told) {
                return false;
            }
            throw failure;
        }
    }

    /** What is wrong with the speaker since the last sound and what to do; empty while it plays. */
    public Optional<String> trouble() {
        return Optional.ofNullable(trouble);
    }

    private boolean play(SourceDataLine line, Sound sound) {
        synchronized (lock) {
            playing = line;
        }
        // A device that sleeps holds its writer for ever, so that is another thread.
        FutureTask<Boolean> writing = new FutureTask<>(() -> write(line, sound.littleEndianBytes()));
        SoundDevices.start("speaker line", writing);
        try {
            return writing.get(sound.duration().plus(patience).toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            throw new SpeakerException("The speaker" + name + " takes no sound; switch it on, or plug it in again.", e);
        } catch (ExecutionException e) {
            throw gone(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        } finally {
            synchronized (lock) {
                if (playing == line) {
                    playing = null;
                }
            }
            SoundDevices.abandon(line);
        }
    }

    private boolean write(SourceDataLine line, byte[] bytes) {
        int at = 0;
        while (at < bytes.length && isPlaying(line)) {
            int written = line.write(bytes, at, Math.min(CHUNK_BYTES, bytes.length - at));
            if (written == 0 && isPlaying(line)) {
                throw gone(null);
            }
            at += written;
        }
        if (isPlaying(line)) {
            line.drain();
        }
        return isPlaying(line);
    }

    private SpeakerException gone(@Nullable Throwable cause) {
        return cause instanceof SpeakerException known
                ? known
                : new SpeakerException("The speaker" + name + " went away; plug it in again.", cause);
    }

    /** Stops what is playing, at once, without waiting for the device; does nothing when nothing plays. */
    public void stop() {
        synchronized (lock) {
            SourceDataLine line = playing;
            if (line != null) {
                playing = null;
                SoundDevices.start("speaker stop", () -> {
                    line.stop();
                    line.flush();
                });
            }
        }
    }

    private boolean isPlaying(SourceDataLine line) {
        synchronized (lock) {
            return playing == line;
        }
    }

    private SourceDataLine open() {
        try {
            return SoundDevices.ask(opener);
        } catch (TimeoutException e) {
            throw new SpeakerException(NO_ANSWER, e);
        } catch (ExecutionException e) {
            throw new SpeakerException(
                    "There is no speaker" + name
                            + " that can be used; plug one in, choose another, or close the program that holds it.",
                    e);
        }
    }

    private static SourceDataLine openLine(@Nullable String mixerName) throws LineUnavailableException {
        SourceDataLine line = (SourceDataLine) SoundDevices.line(WANTED, mixerName);
        line.open(SoundDevices.FORMAT, CHUNK_BYTES * 2);
        line.start();
        return line;
    }
}
