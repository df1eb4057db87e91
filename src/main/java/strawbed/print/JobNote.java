package strawbed.print;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Properties;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A job as the text of its file: lines of names and values, as java.util.Properties reads them. */
final class JobNote {
    private static final String FORMAT = "1";

    private JobNote() {}

    static String text(PrintJob job) {
        Properties lines = new Properties();
        lines.setProperty("format", FORMAT);
        lines.setProperty("number", String.valueOf(job.number()));
        lines.setProperty("what", job.what());
        lines.setProperty("for", job.use().name());
        lines.setProperty("printer", job.printer());
        lines.setProperty("asked", job.askedAt().toString());
        lines.setProperty("state", job.state().name());
        lines.setProperty("tries", String.valueOf(job.tries()));
        if (job.lastTry() != null) {
            lines.setProperty("last-try", job.lastTry().toString());
        }
        PrintFault fault = job.fault();
        if (fault != null) {
            lines.setProperty("fault", fault.sentence());
            lines.setProperty("fault-kind", fault.kind().name());
            lines.setProperty("fault-detail", fault.detail());
        }
        StringWriter text = new StringWriter();
        try {
            lines.store(text, null);
        } catch (IOException e) {
            throw new AssertionError("memory takes every line", e);
        }
        // Its first line is the time of this machine, which nobody asked for.
        return text.toString()
                .lines()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /**
     * Reads a job.
     *
     * @param number that the file's name tells
     * @throws IllegalArgumentException if something is missing or means nothing; the message says what
     */
    static PrintJob of(int number, String text) {
        Properties lines = new Properties();
        try {
            lines.load(new StringReader(text));
        } catch (IOException e) {
            throw new AssertionError("memory gives every line", e);
        }
        if (!value(lines, "format").equals(FORMAT)) {
            throw new IllegalArgumentException("its format is \"" + value(lines, "format") + "\"");
        }
        if (whole(lines, "number") != number) {
            throw new IllegalArgumentException("it says it is number " + value(lines, "number"));
        }
        return new PrintJob(
                number,
                value(lines, "what"),
                PrintUse.valueOf(value(lines, "for")),
                value(lines, "printer"),
                time(value(lines, "asked")),
                JobState.valueOf(value(lines, "state")),
                whole(lines, "tries"),
                lines.containsKey("last-try") ? time(value(lines, "last-try")) : null,
                fault(lines));
    }

    /** Notes of earlier versions have the sentence alone; a kind of a later version is told by its sentence. */
    private static @Nullable PrintFault fault(Properties lines) {
        @Nullable String sentence = lines.getProperty("fault");
        if (sentence == null) {
            return null;
        }
        String kind = lines.getProperty("fault-kind", "");
        return new PrintFault(
                Arrays.stream(PrintFault.Kind.values())
                        .filter(one -> one.name().equals(kind))
                        .findFirst()
                        .orElse(PrintFault.Kind.OTHER),
                lines.getProperty("fault-detail", ""),
                sentence);
    }

    private static String value(Properties lines, String name) {
        @Nullable String value = lines.getProperty(name);
        if (value == null) {
            throw new IllegalArgumentException("it has no line \"" + name + "\"");
        }
        return value;
    }

    private static int whole(Properties lines, String name) {
        try {
            return Integer.parseInt(value(lines, name));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("its " + name + " is no number", e);
        }
    }

    private static Instant time(String text) {
        try {
            return Instant.parse(text);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("\"" + text + "\" is no time", e);
        }
    }
}
