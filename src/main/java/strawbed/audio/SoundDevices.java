package strawbed.audio;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.Line;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.Mixer;
import org.jspecify.annotations.Nullable;

/** Calls to Java Sound on threads of their own, because a sound server that hangs hangs its callers. Safe for any thread. */
final class SoundDevices {
    /** The only format asked for: 16 kHz, 16 bit, mono, low byte first. */
    static final AudioFormat FORMAT = new AudioFormat(Sound.RATE, Short.SIZE, 1, true, false);

    private static final int PATIENCE_SECONDS = 2;

    /** While a sound server hangs, each call costs two threads that wait for it; no more of them than this. */
    private static final int MOST_UNANSWERED = 4;

    private static final Semaphore UNANSWERED = new Semaphore(MOST_UNANSWERED);

    private SoundDevices() {}

    /**
     * The result of a call.
     *
     * @throws TimeoutException when there is none within 2 s
     * @throws ExecutionException with what the call threw
     */
    static <T> T ask(Callable<T> call) throws TimeoutException, ExecutionException {
        if (!UNANSWERED.tryAcquire()) {
            throw new TimeoutException("Earlier calls wait for the sound system");
        }
        FutureTask<T> task = new FutureTask<>(call);
        start("sound device", () -> {
            try {
                task.run();
            } finally {
                UNANSWERED.release();
            }
        });
        try {
            return task.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (TimeoutException e) {
            closeWhenThere(task);
            throw e;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new ExecutionException(e);
        }
    }

    /** The names of the devices that have such a line. Asks the sound system, so it is a call for {@link #ask}. */
    static List<String> names(DataLine.Info wanted) {
        return mixers(wanted).map(mixer -> mixer.getMixerInfo().getName()).toList();
    }

    /**
     * A line, not yet open, of the device of that name, or of the one that the system prefers. Asks the sound system.
     *
     * @throws IllegalArgumentException when there is none
     */
    static Line line(DataLine.Info wanted, @Nullable String mixerName) throws LineUnavailableException {
        if (mixerName == null) {
            return AudioSystem.getLine(wanted);
        }
        return mixers(wanted)
                .filter(mixer -> mixer.getMixerInfo().getName().equals(mixerName))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No mixer " + mixerName))
                .getLine(wanted);
    }

    private static Stream<Mixer> mixers(DataLine.Info wanted) {
        return Arrays.stream(AudioSystem.getMixerInfo())
                .map(AudioSystem::getMixer)
                .filter(mixer -> mixer.isLineSupported(wanted));
    }

    /** What is opened too late is nobody's, and would hold the device. */
    static void closeWhenThere(FutureTask<?> task) {
        start("sound device late answer", () -> closeLate(task));
    }

    private static void closeLate(FutureTask<?> task) {
        try {
            if (task.get() instanceof AutoCloseable late) {
                late.close();
            }
        } catch (Exception e) {
            Logger.getLogger(SoundDevices.class.getName()).log(Level.FINE, "The sound device answered late.", e);
        }
    }

    /** Stops and closes a line without waiting for it. */
    static void abandon(Line line) {
        start("sound device undertaker", line::close);
    }

    static void start(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }
}
