package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import strawbed.testkit.SpokenSentence;

/**
 * From the start of Java until the station's window says that it listens, and until it answers at once: a part of {@link
 * StationRun}.
 */
final class StartPart {
    private static final int TIMES = 5;

    private final Consumer<String> lines;

    StartPart(Consumer<String> lines) {
        this.lines = lines;
    }

    void measure(StationRoom room, Path place) throws IOException, InterruptedException {
        Path data = place.resolve("start");
        StationRecord.make(data, Clock.system(SpokenSentence.ZONE), new TreeSet<>(SpokenSentence.OPEN_CALVES));
        String classes = StartsRun.packed(place);
        Path archive = place.resolve("strawbed.jsa");
        // What Java says of its archive is no line of the station's.
        start(room, data, classes, List.of(StartsRun.makes(archive), "-Xlog:disable"));
        if (!Files.exists(archive)) {
            // Java would go on without it, and nobody would see that.
            throw new IOException(
                    "Java made no archive of the classes; see whether this one can: " + StartsRun.makes(archive));
        }
        lines.accept("## From the start of Java to the sign that it listens");
        lines.accept("");
        lines.accept("In the window, with 40 calves known; each start of " + TIMES
                + ". What is said from the sign on is kept, and answered as soon as the speech model is there.");
        lines.accept("");
        lines.accept("| Java | until it listens | until it answers at once |");
        lines.accept("|---|---|---|");
        row("plain", room, data, classes, List.of());
        row("with README's two options", room, data, classes, StartsRun.advised(archive));
        lines.accept("");
    }

    private void row(String what, StationRoom room, Path data, String classes, List<String> options)
            throws IOException, InterruptedException {
        List<Times> all = new ArrayList<>();
        for (int i = 0; i < TIMES; i++) {
            all.add(start(room, data, classes, options));
        }
        lines.accept("| " + what + " | " + cell(all, Times::listens) + " | " + cell(all, Times::answers) + " |");
    }

    private static String cell(List<Times> all, Function<Times, Duration> which) {
        return all.stream()
                .map(which)
                .map(time -> String.format(Locale.ROOT, "%.2f s", time.toMillis() / 1000.0))
                .collect(Collectors.joining(", "));
    }

    /** Since the start of Java. */
    private record Times(Duration listens, Duration answers) {}

    private static Times start(StationRoom room, Path data, String classes, List<String> options)
            throws IOException, InterruptedException {
        try (StationChild station = room.start(data, classes, options)) {
            Times times = new Times(station.listens(), station.answers());
            station.end();
            return times;
        }
    }
}
