package strawbed.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** A {@link StationWatcher} in a process of its own. Closing it ends it at once. */
final class StationChild implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final String ENDED = "ended without more lines";

    private final Process process;
    private final long began;
    private final BlockingQueue<String> lines = new LinkedBlockingQueue<>();
    private final List<String> seen = new ArrayList<>();

    private StationChild(Process process, long began) {
        this.process = process;
        this.began = began;
    }

    static StationChild start(Path data, String classes, List<String> options, Map<String, String> surroundings)
            throws IOException {
        List<String> line = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m"));
        line.addAll(options);
        line.addAll(List.of(
                "-Duser.language=en",
                "-Duser.country=US",
                "-Duser.timezone=America/Chicago",
                "-Dstrawbed.model=" + System.getProperty("strawbed.model", "target/speech-model/model-en-us"),
                "-cp",
                classes,
                StationWatcher.class.getName(),
                data.toString()));
        ProcessBuilder program = new ProcessBuilder(line).redirectErrorStream(true);
        program.environment().putAll(surroundings);
        long began = System.nanoTime();
        StationChild child = new StationChild(program.start(), began);
        Thread reading = new Thread(child::read, "reading what the station shows");
        reading.setDaemon(true);
        reading.start();
        return child;
    }

    private void read() {
        try (BufferedReader printed =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            printed.lines().forEach(lines::add);
        } catch (IOException | UncheckedIOException closed) {
            lines.add(closed.toString());
        }
        lines.add(ENDED);
    }

    /** Waits until it listens; gives how long after its start that was. */
    Duration listens() throws IOException, InterruptedException {
        return awaited(StationWatcher.listening());
    }

    /** Waits until it listens and answers at once; gives how long after its start that was. */
    Duration answers() throws IOException, InterruptedException {
        return awaited(StationWatcher.ANSWERS);
    }

    private Duration awaited(String wanted) throws IOException, InterruptedException {
        await(wanted);
        return Duration.ofNanos(System.nanoTime() - began);
    }

    /**
     * Waits for this line.
     *
     * @throws IOException with all that was printed, if it does not come
     */
    void await(String wanted) throws IOException, InterruptedException {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (true) {
            Optional<String> line = next(Duration.ofNanos(until - System.nanoTime()));
            if (line.isEmpty() || line.get().equals(ENDED)) {
                throw new IOException("The station does not print \"" + wanted + "\", but " + seen);
            }
            if (line.get().equals(wanted)) {
                return;
            }
        }
    }

    /** The next line that it prints; empty if none comes in time. */
    Optional<String> next(Duration within) throws InterruptedException {
        Optional<String> line = Optional.ofNullable(lines.poll(Math.max(0, within.toNanos()), TimeUnit.NANOSECONDS));
        line.ifPresent(seen::add);
        return line;
    }

    void tell(String order) throws IOException {
        OutputStream told = process.getOutputStream();
        told.write((order + "\n").getBytes(StandardCharsets.UTF_8));
        told.flush();
    }

    /** Ends the station as a person does, and waits for that. */
    void end() throws IOException, InterruptedException {
        tell(StationWatcher.END);
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS) || process.exitValue() != 0) {
            throw new IOException("The station does not end well: " + lines);
        }
    }

    /** Processor time since its start; empty where the system does not tell. */
    Optional<Duration> processorTime() {
        return process.info().totalCpuDuration();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
