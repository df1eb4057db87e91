package strawbed.app;

import java.io.DataInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.testkit.PrivatePulse;

/**
 * The capture line beside the station: plays a place's noise into it without end, and listens to the same line to tell
 * when it was loud last.
 */
final class StationLine implements AutoCloseable {
    private static final String SINK = "fakemic";
    private static final int BLOCK = Sound.RATE / 100;

    private final PrivatePulse pulse;
    private final List<Process> processes = new ArrayList<>();
    private volatile double loud = Double.POSITIVE_INFINITY;
    private volatile @Nullable Instant lastLoud;
    private volatile boolean closed;

    StationLine(PrivatePulse pulse) {
        this.pulse = pulse;
    }

    /** Plays a sound over and over until the line is closed. */
    void plays(Sound sound) throws IOException {
        Process player = process(
                "pacat",
                "--playback",
                "--latency-msec=200",
                "--raw",
                "--format=s16le",
                "--rate=" + Sound.RATE,
                "--channels=1",
                "--device=" + SINK);
        byte[] bytes = sound.littleEndianBytes();
        beside("playing noise", () -> {
            try (OutputStream into = player.getOutputStream()) {
                while (true) {
                    into.write(bytes);
                }
            }
        });
    }

    /** Begins to listen. */
    void listens() throws IOException {
        Process recorder = process(
                "parec",
                "--latency-msec=10",
                "--raw",
                "--format=s16le",
                "--rate=" + Sound.RATE,
                "--channels=1",
                "--device=" + SINK + ".monitor");
        beside("listening beside the station", () -> {
            try (DataInputStream line = new DataInputStream(recorder.getInputStream())) {
                byte[] block = new byte[2 * BLOCK];
                while (true) {
                    line.readFully(block);
                    if (rms(block) > loud) {
                        lastLoud = Instant.now();
                    }
                }
            }
        });
    }

    /** From now on blocks of 10 ms with a root mean square above this are loud; none was until now. */
    void loudAbove(double rms) {
        loud = rms;
        lastLoud = null;
    }

    /** When the last loud block came. */
    Optional<Instant> lastLoud() {
        return Optional.ofNullable(lastLoud);
    }

    private static double rms(byte[] block) {
        double sum = 0;
        for (int i = 0; i < block.length; i += 2) {
            double sample = (short) ((block[i] & 0xff) | (block[i + 1] << 8));
            sum += sample * sample;
        }
        return Math.sqrt(sum / (block.length / 2.0));
    }

    private Process process(String... command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(pulse.environment());
        Process started = builder.start();
        processes.add(started);
        return started;
    }

    /** Work with a pipe that ends when its program does. */
    private interface Piping {
        void run() throws IOException;
    }

    private void beside(String name, Piping work) {
        Thread thread = new Thread(
                () -> {
                    try {
                        work.run();
                    } catch (IOException broken) {
                        tellUnlessClosed(name, broken);
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
    }

    private void tellUnlessClosed(String name, IOException why) {
        if (!closed) {
            throw new UncheckedIOException(name + " ended: " + why.getMessage(), why);
        }
    }

    @Override
    public void close() {
        closed = true;
        processes.forEach(Process::destroyForcibly);
    }
}
