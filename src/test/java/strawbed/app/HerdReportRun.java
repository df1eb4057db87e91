package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.testkit.Commit;
import strawbed.testkit.SimulatedHerd;

/**
 * The bench of the herd's report: {@code mvn -B -Pbench-herd process-test-classes} makes the record of a year of 5,000 births,
 * asks for its report in each form, each in a program of its own, prints the table and writes it to reports/herd-speed.md.
 * The report of the last run stays in reports/ as a sample of a large herd.
 */
final class HerdReportRun {
    private static final int BIRTHS = 5_000;
    private static final double DAYS = 365;
    private static final long SEED = 5_000;
    private static final int TIMES = 3;
    private static final double NANOS = 1e9;
    private static final Instant FROM = Instant.parse("2025-01-01T06:00:00Z");

    private final Path data;
    private final String classes;
    private final List<String> rows = new ArrayList<>();

    private HerdReportRun(Path data) throws IOException {
        this.data = data;
        this.classes = StartsRun.packed(data);
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Logger.getLogger("").setLevel(Level.SEVERE);
        Path place = Files.createTempDirectory("strawbed-herd");
        HerdReportRun run = new HerdReportRun(place);
        try {
            run.make();
            run.measure();
        } finally {
            try (Stream<Path> all = Files.walk(place)) {
                for (Path file :
                        all.sorted((one, other) -> other.compareTo(one)).toList()) {
                    Files.delete(file);
                }
            }
        }
        String table = head() + String.join("\n", run.rows) + "\n";
        Files.writeString(Path.of("reports", "herd-speed.md"), table);
        System.out.println(table);
    }

    private void make() {
        SimulatedHerd herd = new SimulatedHerd(BIRTHS, BIRTHS / DAYS, FROM, SEED);
        Clock clock = Clock.fixed(FROM, SimulatedHerd.ZONE);
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                data, clock, SimulatedHerd.ZONE, new TimeOrderedIds(clock, new SecureRandom()))) {
            journal.importAll(herd.rest());
        }
    }

    private void measure() throws IOException, InterruptedException {
        Path archive = data.resolve("strawbed.jsa");
        // The form that needs the most classes.
        report("pdf", List.of(StartsRun.makes(archive)));
        measure(", with README's options", "under 5 s", StartsRun.advised(archive));
        measure(", with plain Java", "", List.of());
        Files.copy(
                data.resolve("report.pdf"), Path.of("reports", "herd-large.pdf"), StandardCopyOption.REPLACE_EXISTING);
    }

    private void measure(String how, String goal, List<String> options) throws IOException, InterruptedException {
        for (String format : List.of("text", "csv", "html", "pdf")) {
            List<String> times = new ArrayList<>();
            for (int i = 0; i < TIMES; i++) {
                times.add(report(format, options));
            }
            rows.add("| `strawbed herd --format " + format + "`" + how + " | " + String.join(", ", times) + " | " + goal
                    + " | " + Files.size(data.resolve("report." + format)) / 1000 + " kB |");
        }
    }

    /** Asks for the report in a program of its own; gives the time that this took. */
    private String report(String format, List<String> options) throws IOException, InterruptedException {
        Path written = data.resolve("report." + format);
        Files.deleteIfExists(written);
        LocalDate first = LocalDate.ofInstant(FROM, SimulatedHerd.ZONE);
        List<String> line = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m"));
        line.addAll(options);
        line.addAll(List.of(
                "-Duser.timezone=America/Chicago",
                "-cp",
                classes,
                Main.class.getName(),
                "--data",
                data.toString(),
                "herd",
                "--from",
                first.toString(),
                "--to",
                first.plusDays((long) DAYS - 1).toString(),
                "--format",
                format,
                "-o",
                written.toString()));
        long begin = System.nanoTime();
        int code = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(data.resolve("printed.txt").toFile())
                .start()
                .waitFor();
        if (code != 0) {
            throw new IllegalStateException(Files.readString(data.resolve("printed.txt")));
        }
        return String.format(Locale.ROOT, "%.1f s", (System.nanoTime() - begin) / NANOS);
    }

    private static String head() throws IOException, InterruptedException {
        return "# How fast the herd's report is\n\nMade by `mvn -B -Pbench-herd process-test-classes` on "
                + LocalDate.now(Clock.system(SimulatedHerd.ZONE))
                + " from commit " + Commit.described() + ", on a machine of "
                + Runtime.getRuntime().availableProcessors() + " cores with Java " + System.getProperty("java.version")
                + ". The herd is invented: " + BIRTHS
                + " births in a year. Each time is that of a program of its own, from its start to its end.\n\n"
                + "| what | measured | goal | size |\n|---|---|---|---|\n";
    }
}
