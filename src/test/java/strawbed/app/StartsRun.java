package strawbed.app;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;

/**
 * How long the recorder takes from the start of Java until it could listen, with plain Java and with the options that
 * README advises for the barn's computer: a part of {@link ScaleRun}.
 */
final class StartsRun {
    private static final int TIMES = 3;
    private static final String ARCHIVE = "-XX:SharedArchiveFile=";
    private static final String QUICK_COMPILER = "-XX:TieredStopAtLevel=1";

    private final Path place;
    private final String classes;
    private final String now;

    /** @param place a folder for what it makes */
    StartsRun(Path place, Instant now) throws IOException {
        this.place = place;
        this.classes = packed(place);
        this.now = now.toString();
    }

    /** Rows of what, how long and the goal. */
    List<List<String>> rows(Path data, Path empty) throws IOException, InterruptedException {
        Path archive = place.resolve("strawbed.jsa");
        start(data, List.of(makes(archive)));
        List<String> advised = advised(archive);
        return List.of(
                row("start of the recorder, all but the microphone, with README's options", "under 3 s", data, advised),
                row("  the same with plain Java", "", data, List.of()),
                row("  on an empty record, with README's options", "", empty, advised),
                row("  on an empty record, with plain Java", "", empty, List.of()));
    }

    /** The option that makes an archive of the classes. */
    static String makes(Path archive) {
        return "-XX:ArchiveClassesAtExit=" + archive;
    }

    /** README's options. */
    static List<String> advised(Path archive) {
        return List.of(ARCHIVE + archive, QUICK_COMPILER);
    }

    private List<String> row(String what, String goal, Path data, List<String> options)
            throws IOException, InterruptedException {
        List<String> times = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            times.add(start(data, options));
        }
        return List.of(what, String.join(", ", times), goal);
    }

    private String start(Path data, List<String> options) throws IOException, InterruptedException {
        Path printed = place.resolve("start.txt");
        List<String> line = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m"));
        line.addAll(options);
        line.addAll(List.of(
                "-Duser.timezone=America/Chicago", "-cp", classes, ScaleStart.class.getName(), data.toString(), now));
        int code = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start()
                .waitFor();
        return Files.readAllLines(printed).stream()
                .filter(told -> code == 0 && told.startsWith(ScaleStart.LISTENS))
                .map(told -> String.format(
                        Locale.ROOT, "%.2f s", Long.parseLong(told.substring(ScaleStart.LISTENS.length())) / 1000.0))
                .findFirst()
                .orElse("ended with " + code);
    }

    /** Java keeps an archive of the classes of jars only: folders of the class path are packed. */
    static String packed(Path place) throws IOException {
        List<String> jars = new ArrayList<>();
        for (String part : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            if (!Files.isDirectory(Path.of(part))) {
                jars.add(part);
                continue;
            }
            Path jar = place.resolve("classes-" + jars.size() + ".jar");
            ToolProvider.findFirst("jar")
                    .orElseThrow(() -> new IllegalStateException("this Java has no jar tool"))
                    .run(
                            System.out,
                            System.err,
                            "--create",
                            "--no-compress",
                            "--file",
                            jar.toString(),
                            "-C",
                            part,
                            ".");
            jars.add(jar.toString());
        }
        return String.join(File.pathSeparator, jars);
    }

    /** By itself: the folder of a record, and the time that it starts at. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path place = Files.createTempDirectory("strawbed-starts");
        Path empty = Files.createDirectories(place.resolve("empty"));
        new StartsRun(place, Instant.parse(arguments[1]))
                .rows(Path.of(arguments[0]), empty)
                .forEach(row -> System.out.println(String.join(" | ", row)));
        try (Stream<Path> all = Files.walk(place)) {
            all.sorted((one, other) -> other.compareTo(one)).forEach(StartsRun::delete);
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
