package strawbed.audio;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import javax.sound.sampled.DataLine;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.TargetDataLine;
import org.jspecify.annotations.Nullable;
import strawbed.audio.MicrophoneException.Reason;

/**
 * A microphone as a source of sound. Its own thread "capture" only reads the device and puts blocks into a queue of 10 s;
 * when the queue is full the blocks are counted and lost, and the positions of the later ones show the hole. {@code read}
 * belongs to one thread; all other methods are safe for any.
 */
public final class MicrophoneSource implements AudioSource {
    private static final DataLine.Info WANTED = new DataLine.Info(TargetDataLine.class, SoundDevices.FORMAT);
    private static final int QUEUE_BLOCKS = 500;
    private static final int BLOCK_BYTES = BLOCK * Short.BYTES;

    /** 0.16 s: Java waits for a quarter of it whenever a sample is wanting. A capture thread held up longer loses sound. */
    private static final int BUFFER_BYTES = Sound.RATE * 16 / 100 * Short.BYTES;

    /** A line that gives nothing for this long is gone, though it says that it is open. */
    private static final Duration PATIENCE = Duration.ofSeconds(1);

    private static final double FLOOR_DECIBEL = -100;

    /** Comes after the last block; no other one is empty. */
    private static final Sound END = Sound.of(new short[0], 0);

    private final TargetDataLine line;
    private final String name;
    private final Duration patience;
    private final BlockingQueue<Sound> queue = new ArrayBlockingQueue<>(QUEUE_BLOCKS);
    private final AtomicLong dropped = new AtomicLong();
    private final AtomicLong overruns = new AtomicLong();
    private volatile boolean ended;
    private volatile boolean closed;
    private volatile double level = FLOOR_DECIBEL;
    private volatile long position;

    /** Takes a line that is open and starts it. */
    MicrophoneSource(TargetDataLine line, String name, Duration patience) {
        this.line = line;
        this.name = name;
        this.patience = patience;
        line.start();
        SoundDevices.start("capture", this::capture);
    }

    /**
     * Opens a microphone and starts to listen.
     *
     * @param mixerName one of {@link #names}, or null for the one that the system prefers
     * @throws MicrophoneException when there is none or it is taken; to be tried again, as a device may come back
     */
    public static MicrophoneSource open(@Nullable String mixerName) {
        String name = described(mixerName);
        try {
            return SoundDevices.ask(() -> new MicrophoneSource(openLine(mixerName), name, PATIENCE));
        } catch (TimeoutException e) {
            throw new MicrophoneException(
                    Reason.BUSY, "The sound system does not answer; restart it or the computer.", e);
        } catch (ExecutionException e) {
            throw failure(name, e.getCause() == null ? e : e.getCause());
        }
    }

    /** A microphone as it is called in sentences. */
    static String described(@Nullable String mixerName) {
        return mixerName == null ? "the system's microphone" : "the microphone \"" + mixerName + "\"";
    }

    private static TargetDataLine openLine(@Nullable String mixerName) throws LineUnavailableException {
        TargetDataLine line = (TargetDataLine) SoundDevices.line(WANTED, mixerName);
        line.open(SoundDevices.FORMAT, BUFFER_BYTES);
        return line;
    }

    private static MicrophoneException failure(String name, Throwable cause) {
        if (cause instanceof IllegalArgumentException) {
            return new MicrophoneException(
                    Reason.NONE, "There is no microphone (" + name + "); plug one in or choose another name.", cause);
        }
        return new MicrophoneException(
                Reason.BUSY,
                "The microphone (" + name
                        + ") cannot be opened; close other programs that record, or plug it in again.",
                cause);
    }

    /**
     * The names of the microphones that give the format needed.
     *
     * @throws MicrophoneException when the sound system does not answer
     */
    public static List<String> names() {
        try {
            return SoundDevices.ask(() -> SoundDevices.names(WANTED));
        } catch (TimeoutException | ExecutionException e) {
            throw new MicrophoneException(
                    Reason.BUSY, "The sound system does not answer; restart it or the computer.", e);
        }
    }

    private void capture() {
        byte[] bytes = new byte[BLOCK_BYTES];
        long read = 0;
        while (!closed) {
            if (line.available() >= line.getBufferSize() - BLOCK_BYTES) {
                overruns.incrementAndGet();
            }
            int count = line.read(bytes, 0, bytes.length);
            if (count <= 0) {
                // An open line that gives nothing has lost its device, and would give nothing for ever.
                break;
            }
            Sound block = Sound.of(samples(bytes, count), read);
            read += block.length();
            level = decibel(block);
            if (!queue.offer(block)) {
                dropped.incrementAndGet();
            }
        }
        ended = true;
        // Wakes the reader; when there is no room for it, the reader does not wait.
        queue.offer(END);
    }

    private static short[] samples(byte[] bytes, int count) {
        short[] samples = new short[count / Short.BYTES];
        ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN).asShortBuffer().get(samples);
        return samples;
    }

    private static double decibel(Sound block) {
        return Math.max(FLOOR_DECIBEL, 20 * Math.log10(block.rms() / 32_768));
    }

    /** Waits for the next 20 ms; empty after close. */
    @Override
    public Optional<Sound> read() {
        Optional<Sound> block = poll(patience);
        if (block.isPresent() || closed || Thread.currentThread().isInterrupted()) {
            return block;
        }
        close();
        throw gone();
    }

    /** The next block if it comes within a time; empty also at the end, which {@link #isEnded} tells. */
    Optional<Sound> poll(Duration wait) {
        try {
            // After the end the capture thread adds nothing, so what is left may be taken without waiting.
            Sound block = ended ? queue.poll() : queue.poll(wait.toNanos(), TimeUnit.NANOSECONDS);
            if (block != null && block.length() > 0) {
                position = block.startSample() + block.length();
                return Optional.of(block);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Optional.empty();
    }

    /** Whether all was given and no more will come. */
    boolean isEnded() {
        return ended && waiting() == 0;
    }

    /** How many samples were captured and not read yet. */
    long waiting() {
        return queue.stream().mapToLong(Sound::length).sum();
    }

    /** That it gives no sound any more. */
    MicrophoneException gone() {
        return new MicrophoneException(
                Reason.GONE, "The microphone (" + name + ") gives no sound any more; plug it in again.", null);
    }

    /** The level of the newest block in dB of full scale, from -100 to 0. */
    public double level() {
        return level;
    }

    /** How many blocks were lost because nobody read them in time. */
    public long dropped() {
        return dropped.get();
    }

    /** How often the device's own buffer was full, so that sound may have been lost in it. */
    public long overruns() {
        return overruns.get();
    }

    /** The name, for the log and the screen. */
    public String name() {
        return name;
    }

    /** One sentence when the device gives another format than it was asked for. */
    public Optional<String> warning() {
        return line.getFormat().matches(SoundDevices.FORMAT)
                ? Optional.empty()
                : Optional.of("The microphone (" + name + ") gives " + line.getFormat()
                        + " instead of 16 kHz, 16 bit, mono; choose another one.");
    }

    @Override
    public long position() {
        return position;
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            SoundDevices.abandon(line);
        }
    }
}
