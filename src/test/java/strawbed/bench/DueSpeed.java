package strawbed.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import strawbed.testkit.Commit;

/**
 * The speed bench: {@code mvn -B -Pbench-due process-test-classes} measures {@link DueBenchmark}, prints the table and
 * writes it to reports/due-speed.md. On a busy machine the figures are too high.
 */
public final class DueSpeed {
    private static final double NANOS_PER_MICRO = 1_000;
    private static final double MICROS_PER_MILLI = 1_000;

    private DueSpeed() {}

    public static void main(String[] args) throws IOException, InterruptedException, RunnerException {
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(DueBenchmark.class.getName())
                        .build())
                .run();
        String table = head() + table(results);
        Path report = Path.of("reports", "due-speed.md");
        Files.createDirectories(report.getParent());
        Files.writeString(report, table);
        PrintStream screen = System.out;
        screen.println(table);
        screen.println("Written to " + report + ".");
    }

    private static String head() throws IOException, InterruptedException {
        return "# How fast the due list is\n\n"
                + "Made by `mvn -B -Pbench-due process-test-classes` on " + LocalDate.now(Clock.systemUTC())
                + " from commit " + Commit.described() + ", on a machine of "
                + Runtime.getRuntime().availableProcessors()
                + " cores of which the measured program had one, with Java "
                + System.getProperty("java.version") + " (" + System.getProperty("java.vm.name") + "). "
                + String.format(
                        Locale.ROOT,
                        "When it ended, %.1f programs were running or waiting for a core: with more than there are"
                                + " cores the figures are too high.%n%n",
                        ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage())
                + "The record is invented: all calves are open, born within 24 hours, with 10 to 25 events each. Warm;"
                + " the mean of two processes with five seconds each, and the error as half of the interval in which"
                + " the mean lies with 99.9 % confidence. Growth is linear where the time for each calf stays level.\n\n";
    }

    private static String table(Collection<RunResult> results) {
        StringBuilder table =
                new StringBuilder("| what | calves | ms | error, ms | ns for each calf |\n|---|---:|---:|---:|---:|\n");
        for (RunResult run : results) {
            Result<?> result = run.getPrimaryResult();
            int calves = Integer.parseInt(run.getParams().getParam("calves"));
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %,d | %,.3f | %,.3f | %,.1f |%n",
                    result.getLabel(),
                    calves,
                    result.getScore() / MICROS_PER_MILLI,
                    result.getScoreError() / MICROS_PER_MILLI,
                    result.getScore() * NANOS_PER_MICRO / calves));
        }
        return table.toString();
    }
}
