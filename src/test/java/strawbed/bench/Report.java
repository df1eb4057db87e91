package strawbed.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;

/** The report as it grows, in Markdown; each line is also shown at once. */
final class Report {
    private final PrintStream screen;
    private final StringBuilder text = new StringBuilder();

    Report(PrintStream screen) {
        this.screen = screen;
    }

    String text() {
        return text.toString();
    }

    void line(String line) {
        add(line + "\n");
    }

    void add(String lines) {
        screen.print(lines);
        text.append(lines);
    }

    void head(int every) {
        line("# How well Strawbed hears");
        line("");
        line("Made by `mvn -B -Pbench process-test-classes` on " + LocalDate.now(ZoneOffset.UTC) + " from commit "
                + commit()
                + ", on "
                + Runtime.getRuntime().availableProcessors() + " processors, Java "
                + System.getProperty("java.version") + ", beside whatever else ran.");
        line(every == 1 ? "All sounds." : "Only every " + every + ". sound: a shortened run.");
        line(
                "Percent with 95% Wilson intervals. No person spoke our sentences: the voices are synthetic, and of real people");
        line("there are digits and orders of coffee only.");
        line("");
        line(
                "Wholly right: one utterance understood, calf and all events and values right, times to the minute; what else was");
        line("heard beside it and not understood changes no record.");
        line("");
    }

    private static String commit() {
        try {
            Process git = new ProcessBuilder("git", "rev-parse", "--short", "HEAD")
                    .redirectErrorStream(true)
                    .start();
            String name = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
            return git.waitFor() == 0 ? name : "unknown";
        } catch (IOException e) {
            return "unknown, as there is no git here";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "unknown";
        }
    }

    /** The names of the outcomes, as heads of columns. */
    static String heads() {
        return List.of(Outcome.values()).stream().map(Outcome::words).collect(Collectors.joining(" | "));
    }
}
