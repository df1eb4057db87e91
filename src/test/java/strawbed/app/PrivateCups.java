package strawbed.app;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A print server of the tests' own, which knows none of the machine's printers, with queues whose pages end as PDF files
 * in the user's folder (Debian package printer-driver-cups-pdf).
 */
final class PrivateCups implements AutoCloseable {
    private static final Path DRIVER = Path.of("/usr/share/ppd/cups-pdf/CUPS-PDF_opt.ppd");
    private static final long START_MILLIS = 20_000;
    private static final long LOOK_MILLIS = 50;

    private final Process server;
    private final String address;

    private PrivateCups(Process server, String address) {
        this.server = server;
        this.address = address;
    }

    /** What is missing here, in words; empty if the tests can run. */
    static Optional<String> missing() {
        List<String> lacking = new ArrayList<>();
        Stream.of("/usr/sbin/cupsd", "/usr/sbin/lpadmin", "/usr/bin/lpstat", "/usr/bin/lpr", DRIVER.toString())
                .filter(file -> !Files.exists(Path.of(file)))
                .forEach(lacking::add);
        if (!System.getProperty("user.name").equals("root")) {
            lacking.add("the user root, without whom cups-pdf writes nothing");
        }
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of("skipped: there is no " + String.join(", no ", lacking)
                        + " here (Debian: cups, cups-client, cups-bsd, printer-driver-cups-pdf)");
    }

    /** @param folder is empty; the server's filters must be able to enter it */
    static PrivateCups start(Path folder) throws IOException, InterruptedException {
        Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        for (String name : List.of("root", "spool", "cache", "state", "tmp", "log")) {
            Files.createDirectory(folder.resolve(name));
        }
        int port;
        try (ServerSocket probe = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = probe.getLocalPort();
        }
        Path settings = Files.writeString(folder.resolve("cupsd.conf"), """
                Listen 127.0.0.1:%d
                LogLevel warn
                Browsing Off
                WebInterface No
                <Location />
                Order allow,deny
                Allow localhost
                </Location>
                <Policy default>
                <Limit All>
                Order deny,allow
                </Limit>
                </Policy>
                """.formatted(port));
        Path files = Files.writeString(folder.resolve("cups-files.conf"), """
                ServerRoot %1$s/root
                RequestRoot %1$s/spool
                CacheDir %1$s/cache
                StateDir %1$s/state
                TempDir %1$s/tmp
                AccessLog %1$s/log/access
                ErrorLog %1$s/log/error
                PageLog %1$s/log/page
                SystemGroup root
                """.formatted(folder));
        Process server = new ProcessBuilder("/usr/sbin/cupsd", "-f", "-c", settings.toString(), "-s", files.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out").toFile())
                .start();
        PrivateCups cups = new PrivateCups(server, "localhost:" + port);
        for (long waited = 0; !cups.does("lpstat", "-r"); waited += LOOK_MILLIS) {
            if (waited > START_MILLIS || !server.isAlive()) {
                cups.close();
                throw new IOException("cupsd did not start: " + Files.readString(folder.resolve("out")));
            }
            TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
        }
        return cups;
    }

    /** For the variable CUPS_SERVER. */
    String address() {
        return address;
    }

    void add(String queue) throws IOException, InterruptedException {
        order("/usr/sbin/lpadmin", "-p", queue, "-E", "-v", "cups-pdf:/", "-P", DRIVER.toString());
    }

    void remove(String queue) throws IOException, InterruptedException {
        order("/usr/sbin/lpadmin", "-x", queue);
    }

    void order(String... command) throws IOException, InterruptedException {
        SmallDisk.Outcome outcome = run(List.of(command));
        if (outcome.code() != 0) {
            throw new IOException(Arrays.toString(command) + ": " + outcome.printed());
        }
    }

    private boolean does(String... command) throws IOException, InterruptedException {
        SmallDisk.Outcome outcome = run(List.of(command));
        return outcome.code() == 0 && outcome.printed().contains("is running");
    }

    /** Runs another program as a user of this server. */
    SmallDisk.Outcome run(List<String> command) throws IOException, InterruptedException {
        return run(command, address);
    }

    static SmallDisk.Outcome run(List<String> command, String server) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("CUPS_SERVER", server);
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process process = builder.start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new SmallDisk.Outcome(process.waitFor(), printed);
    }

    @Override
    public void close() {
        server.destroy();
        try {
            if (!server.waitFor(10, TimeUnit.SECONDS)) {
                server.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
