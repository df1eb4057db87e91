package strawbed.audio;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeoutException;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.jspecify.annotations.Nullable;

/**
 * The speaker. {@code play} waits until the sound is over, so it belongs to a thread of its own; {@code stop} may come
 * from any thread.
 */
public final class SpeakerSink {
    private static final int CHUNK_BYTES = Sound.RATE / 10 * Short.BYTES;

    private final Object lock = new Object();
    private @Nullable SourceDataLine playing;

    /**
     * Plays a sound to its end or to {@link #stop}.
     *
     * @return whether it was played to its end
     * @throws SpeakerException when there is no speaker or it is taken; nothing else depends on it, so go on without
     */
    public boolean play(Sound sound) {
        SourceDataLine line = open();
        synchronized (lock) {
            playing = line;
        }
        byte[] bytes = sound.littleEndianBytes();
        int at = 0;
        while (at < bytes.length && isPlaying(line)) {
            int written = line.write(bytes, at, Math.min(CHUNK_BYTES, bytes.length - at));
            if (written == 0 && isPlaying(line)) {
                stop();
                SoundDevices.abandon(line);
                throw new SpeakerException("The speaker went away; plug it in again.", null);
            }
            at += written;
        }
        if (isPlaying(line)) {
            line.drain();
        }
        synchronized (lock) {
            boolean whole = playing == line;
            playing = null;
            SoundDevices.abandon(line);
            return whole;
        }
    }

    /** Stops what is playing, at once; does nothing when nothing plays. */
    public void stop() {
        synchronized (lock) {
            if (playing != null) {
                playing.stop();
                playing.flush();
                playing = null;
            }
        }
    }

    private boolean isPlaying(SourceDataLine line) {
        synchronized (lock) {
            return playing == line;
        }
    }

    private static SourceDataLine open() {
        try {
            return SoundDevices.ask(SpeakerSink::openLine);
        } catch (TimeoutException e) {
            throw new SpeakerException("The sound system does not answer; restart it or the computer.", e);
        } catch (ExecutionException e) {
            throw new SpeakerException(
                    "There is no speaker that can be used; plug one in, or close the program that holds it.", e);
        }
    }

    private static SourceDataLine openLine() throws LineUnavailableException {
        SourceDataLine line = AudioSystem.getSourceDataLine(SoundDevices.FORMAT);
        line.open(SoundDevices.FORMAT, CHUNK_BYTES * 2);
        line.start();
        return line;
    }
}
