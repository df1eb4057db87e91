package strawbed.testkit;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** A screen of the tests' own that nobody sees (Debian package xvfb). */
public final class PrivateDisplay implements AutoCloseable {
    private static final Path SERVER = Path.of("/usr/bin/Xvfb");

    private final Process server;
    private final String name;

    private PrivateDisplay(Process server, String name) {
        this.server = server;
        this.name = name;
    }

    /** What is missing here, in words; empty if the tests can run. */
    public static Optional<String> missing() {
        return Files.isExecutable(SERVER)
                ? Optional.empty()
                : Optional.of("skipped: there is no " + SERVER + " here (Debian: xvfb)");
    }

    /** Opens a screen of this many dots. It takes a number that is free, and tells it. */
    public static PrivateDisplay open(int width, int height) throws IOException {
        Process server = new ProcessBuilder(
                        SERVER.toString(),
                        "-displayfd",
                        "1",
                        "-screen",
                        "0",
                        width + "x" + height + "x24",
                        "-nolisten",
                        "tcp")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader told =
                new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
        String number = told.readLine();
        if (number == null) {
            throw new IOException("the screen's server ended at once");
        }
        return new PrivateDisplay(server, ":" + number.strip());
    }

    /** What a program must find in its environment to open windows here. */
    public Map<String, String> environment() {
        return Map.of("DISPLAY", name);
    }

    @Override
    public void close() {
        server.destroy();
    }
}
