package strawbed.testkit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A PulseAudio server of the tests' own, with one microphone that gives what is played to it: the monitor of a sink that
 * throws its sound away. Sound libraries read where the server is from the environment of their process, so the code under
 * test runs in a process with {@link #environment}. Debian: pulseaudio, pulseaudio-utils, libasound2-plugins, alsa-utils.
 */
public final class PrivatePulse implements AutoCloseable {
    private static final String SINK = "fakemic";
    private static final String[] LOAD_SINK = {
        "load-module", "module-null-sink", "sink_name=" + SINK, "rate=16000", "channels=1", "format=s16le"
    };
    private static final long START_MILLIS = 20_000;
    private static final long LOOK_MILLIS = 50;

    private final Path folder;
    private @Nullable Process server;
    private @Nullable Process reader;

    private PrivatePulse(Path folder) {
        this.folder = folder;
    }

    /** What is missing here, in words; empty if the tests can run. */
    public static Optional<String> missing() {
        List<String> lacking = Stream.of(
                        "/usr/bin/pulseaudio",
                        "/usr/bin/pactl",
                        "/usr/bin/parec",
                        "/usr/bin/paplay",
                        "/usr/share/alsa/alsa.conf.d/50-pulseaudio.conf")
                .filter(file -> !Files.exists(Path.of(file)))
                .toList();
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of("skipped: there is no " + String.join(", no ", lacking)
                        + " here (Debian: pulseaudio, pulseaudio-utils, libasound2-plugins, alsa-utils)");
    }

    /**
     * Starts a server with its microphone.
     *
     * @param folder is empty, and has a short path, as a socket lies in it
     */
    public static PrivatePulse start(Path folder) throws IOException, InterruptedException {
        PrivatePulse pulse = new PrivatePulse(folder);
        pulse.restart();
        return pulse;
    }

    /** For a process that is to use this server. */
    public Map<String, String> environment() {
        return Map.of(
                "PULSE_SERVER", "unix:" + socket(), "XDG_RUNTIME_DIR", folder.toString(), "HOME", folder.toString());
    }

    private Path socket() {
        return folder.resolve("native.sock");
    }

    /** Ends the server at once, as a crash does. */
    public void stop() throws InterruptedException {
        end(reader);
        end(server);
    }

    /** Starts a server again after {@link #stop}. */
    public void restart() throws IOException, InterruptedException {
        Files.deleteIfExists(socket());
        Path script = Files.writeString(
                folder.resolve("mic.pa"), """
                load-module module-native-protocol-unix auth-anonymous=1 socket=%s
                %s
                set-default-sink %s
                set-default-source %s.monitor
                """.formatted(socket(), String.join(" ", LOAD_SINK), SINK, SINK));
        Process started = process(
                "pulseaudio",
                "-n",
                "-F",
                script.toString(),
                "--daemonize=no",
                "--exit-idle-time=-1",
                "--use-pid-file=no");
        server = started;
        await(() -> started.isAlive() && does("pactl", "info"), "pulseaudio does not answer");
        keepAwake();
    }

    /** Takes the microphone away, as a pulled plug does. */
    public void removeMicrophone() throws IOException, InterruptedException {
        order("pactl", "unload-module", "module-null-sink");
        end(reader);
    }

    /** Puts the microphone back. */
    public void putBackMicrophone() throws IOException, InterruptedException {
        List<String> load = new ArrayList<>(List.of("pactl"));
        load.addAll(Arrays.asList(LOAD_SINK));
        order(load.toArray(String[]::new));
        order("pactl", "set-default-sink", SINK);
        order("pactl", "set-default-source", SINK + ".monitor");
        keepAwake();
    }

    /** Lets the microphone sleep: it is there, and gives nothing. */
    public void suspend() throws IOException, InterruptedException {
        order("pactl", "suspend-sink", SINK, "1");
    }

    public void resume() throws IOException, InterruptedException {
        order("pactl", "suspend-sink", SINK, "0");
    }

    /** The server stands still: whoever asks it waits. */
    public void freeze() throws IOException, InterruptedException {
        order("kill", "-STOP", String.valueOf(running().pid()));
    }

    public void thaw() throws IOException, InterruptedException {
        order("kill", "-CONT", String.valueOf(running().pid()));
    }

    /** Begins to play a WAV file into the microphone; the process ends with the sound. */
    public Process play(Path wav) throws IOException {
        return process("paplay", "--device=" + SINK, wav.toString());
    }

    /** Without a reader the microphone sleeps in spells of two seconds, and its first sound is lost. */
    private void keepAwake() throws IOException, InterruptedException {
        ProcessBuilder builder =
                builder("parec", "--device=" + SINK + ".monitor", "--latency-msec=20", "--raw", "--rate=16000");
        reader = builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        await(() -> printed("pactl", "list", "short", "sources").contains("RUNNING"), "the microphone sleeps");
    }

    private Process running() {
        if (server == null) {
            throw new IllegalStateException("The server does not run");
        }
        return server;
    }

    private void await(BooleanSupplier done, String otherwise) throws IOException, InterruptedException {
        for (long waited = 0; !done.getAsBoolean(); waited += LOOK_MILLIS) {
            if (waited > START_MILLIS) {
                close();
                throw new IOException("After " + START_MILLIS + " ms: " + otherwise + ". "
                        + Files.readString(folder.resolve("out"), StandardCharsets.UTF_8));
            }
            TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
        }
    }

    private ProcessBuilder builder(String... command) {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().putAll(environment());
        builder.environment().put("LC_ALL", "C.UTF-8");
        return builder;
    }

    private Process process(String... command) throws IOException {
        return builder(command)
                .redirectOutput(
                        ProcessBuilder.Redirect.appendTo(folder.resolve("out").toFile()))
                .start();
    }

    private void order(String... command) throws IOException, InterruptedException {
        int code = process(command).waitFor();
        if (code != 0) {
            throw new IOException(Arrays.toString(command) + " ended with " + code + ": "
                    + Files.readString(folder.resolve("out"), StandardCharsets.UTF_8));
        }
    }

    private boolean does(String... command) {
        try {
            return process(command).waitFor() == 0;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private String printed(String... command) {
        try {
            Process process = builder(command).start();
            return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Also one that stands still ends by that. */
    private static void end(@Nullable Process process) throws InterruptedException {
        if (process != null) {
            process.destroyForcibly().waitFor();
        }
    }

    @Override
    public void close() {
        try {
            stop();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
