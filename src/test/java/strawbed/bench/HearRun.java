package strawbed.bench;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import strawbed.app.CommandRun;
import strawbed.testkit.SpokenSentence;

/**
 * What {@code strawbed hear --json} printed for some files.
 *
 * @param time of the whole run, with loading the model
 */
public record HearRun(List<HeardLine> lines, Duration time) {
    /** Listens for the table's calves at the table's time. */
    public static HearRun forCalves(List<Path> files) {
        return of(
                files,
                "--calves",
                String.join(",", SpokenSentence.OPEN_CALVES),
                "--at",
                SpokenSentence.SPOKEN_AT.toString());
    }

    /** Listens for the sentences of another grammar. */
    public static HearRun forGrammar(Path grammar, List<Path> files) {
        return of(files, "--grammar", grammar.toString());
    }

    private static HearRun of(List<Path> files, String... options) {
        List<String> arguments = new ArrayList<>(List.of("hear", "--json"));
        arguments.addAll(List.of(options));
        files.forEach(file -> arguments.add(file.toString()));
        long started = System.nanoTime();
        CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
        Duration time = Duration.ofNanos(System.nanoTime() - started);
        if (run.code() != 0) {
            throw new IllegalStateException("hear ended with code " + run.code() + ": " + run.err());
        }
        return new HearRun(run.out().lines().map(HeardLine::of).toList(), time);
    }

    /** The lines of one file. */
    public List<HeardLine> of(Path file) {
        return lines.stream()
                .filter(line -> line.file().equals(file.toString()))
                .toList();
    }

    /** How many of the files have a line like this. */
    public int filesWith(Predicate<HeardLine> kind) {
        return (int) lines.stream().filter(kind).map(HeardLine::file).distinct().count();
    }

    /** Both runs' lines and time. */
    public HearRun and(HearRun other) {
        return new HearRun(Stream.concat(lines.stream(), other.lines.stream()).toList(), time.plus(other.time));
    }
}
