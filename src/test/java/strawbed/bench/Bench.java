package strawbed.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The accuracy bench: {@code mvn -B -Pbench process-test-classes} prints the table of how well the program hears and
 * writes it to reports/hearing-table.md; {@code -Dbench.every=5} takes each fifth sentence only.
 */
public final class Bench {
    private static final Path SHARED = Path.of("..", "shared", "speech");

    private Bench() {}

    /** Runs it all and ends the process at once, as the program does: the speech library fails in a slow ending. */
    public static void main(String[] args) throws IOException, InterruptedException {
        run();
        System.exit(0);
    }

    private static void run() throws IOException, InterruptedException {
        PrintStream screen = System.out;
        int every = Integer.parseInt(System.getProperty("bench.every", "1"));
        Material material = new Material(Path.of("target", "bench"));
        List<VoiceRun> voices = new ArrayList<>();
        Map<String, String> leftOut = new LinkedHashMap<>();
        for (Speaker speaker : Speaker.all()) {
            try {
                List<Spoken> spoken = material.table(speaker, every);
                voices.add(VoiceRun.of(speaker, spoken));
                screen.println(speaker.name() + ": heard");
            } catch (IOException e) {
                leftOut.put(speaker.name(), String.valueOf(e.getMessage()));
                screen.println(speaker.name() + ": left out");
            }
        }
        Optional<People> people = Files.isDirectory(SHARED) ? Optional.of(people(material)) : Optional.empty();
        String table = new HearingTable().written(voices, leftOut, every, people, Costs.measured(material));
        Path report = Path.of("reports", "hearing-table.md");
        Files.createDirectories(report.getParent());
        Files.writeString(report, table);
        screen.println(table);
        screen.println("Written to " + report + ".");
    }

    private static People people(Material material) throws IOException {
        return People.heard(
                material,
                wavFiles("human-digits"),
                SHARED.resolve("human-digits-sequence.wav"),
                wavFiles("human-other"));
    }

    private static List<Path> wavFiles(String folder) throws IOException {
        try (Stream<Path> files = Files.list(SHARED.resolve(folder))) {
            return files.filter(file -> file.toString().endsWith(".wav"))
                    .sorted()
                    .toList();
        }
    }
}
