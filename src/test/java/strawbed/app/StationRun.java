package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import strawbed.testkit.Commit;

/**
 * The bench of the station: {@code mvn -B -Pbench-station process-test-classes} measures how long people wait for it
 * and whether it stays well, prints the tables and writes them to reports/station.md. {@code -Dbench.parts=words,idle}
 * takes some of the parts words, start, idle, soak. On a busy machine the times are too long.
 */
final class StationRun {
    private static final List<String> PARTS = List.of("words", "start", "idle", "soak");

    private final int words = Integer.getInteger("bench.words", 120);
    private final int idleSeconds = Integer.getInteger("bench.idle-seconds", 60);
    private final double soakHours = Double.parseDouble(System.getProperty("bench.soak-hours", "8"));
    private final List<String> parts;
    private final List<String> report = new ArrayList<>();

    private StationRun(List<String> parts) {
        this.parts = parts;
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        List<String> parts = List.of(
                System.getProperty("bench.parts", String.join(",", PARTS)).split(",", -1));
        if (!PARTS.containsAll(parts)) {
            System.err.println("bench.parts is \"" + String.join(",", parts) + "\"; give some of "
                    + String.join(",", PARTS) + ", with commas between.");
            System.exit(2);
        }
        StationRun run = new StationRun(parts);
        Path place = Files.createTempDirectory("strawbed-st");
        try {
            run.head();
            run.measure(place);
        } finally {
            // Also what was measured before something failed.
            run.write(Path.of("reports", "station.md"));
            delete(place);
        }
        // Readers of pipes may still wait for programs that were ended.
        System.exit(0);
    }

    private void line(String line) {
        System.out.println(line);
        report.add(line);
    }

    private void head() throws IOException, InterruptedException {
        line("# How the station does");
        line("");
        line("Made by `mvn -B -Pbench-station process-test-classes` on " + LocalDate.now(ZoneOffset.UTC)
                + " from commit " + Commit.described() + ", on "
                + Runtime.getRuntime().availableProcessors()
                + " processors, Java " + System.getProperty("java.version") + ", beside whatever else ran. Parts: "
                + String.join(", ", parts)
                + ". Screen, sound server and speech are made by programs: no person and no microphone took part.");
        line("");
    }

    private void measure(Path place) throws IOException, InterruptedException {
        List<String> inWindow =
                parts.stream().filter(part -> !part.equals("soak")).toList();
        Optional<String> missing = StationRoom.missing();
        if (missing.isPresent() && !inWindow.isEmpty()) {
            line("Left out: " + String.join(", ", inWindow) + "; " + missing.get() + ".");
            line("");
        } else if (!inWindow.isEmpty()) {
            try (StationRoom room = StationRoom.open(place.resolve("pulse"))) {
                for (String part : inWindow) {
                    measure(part, room, place);
                }
            }
        }
        if (parts.contains("soak")) {
            new SoakPart(soakHours, this::line).measure(Files.createDirectories(place.resolve("soak")));
        }
    }

    private void measure(String part, StationRoom room, Path place) throws IOException, InterruptedException {
        switch (part) {
            case "words" -> new WordsPart(words, this::line).measure(room, place);
            case "start" -> new StartPart(this::line).measure(room, place);
            case "idle" -> new IdlePart(idleSeconds, this::line).measure(room, place);
            default -> throw new IllegalArgumentException(part);
        }
    }

    private void write(Path file) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, String.join("\n", report) + "\n");
        System.out.println("Written to " + file + ".");
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
