package strawbed.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Consumer;
import strawbed.bench.BarnSound;
import strawbed.testkit.SpokenSentence;

/** How much of a processor the station takes while nobody speaks: a part of {@link StationRun}. */
final class IdlePart {
    private static final double FAN = -35;

    /** A fan that starts is taken for speech until the endpointer knows it; classes are compiled meanwhile. */
    private static final long SETTLED_MILLIS = 20_000;

    private final int seconds;
    private final Consumer<String> lines;

    IdlePart(int seconds, Consumer<String> lines) {
        this.seconds = seconds;
        this.lines = lines;
    }

    void measure(StationRoom room, Path place) throws IOException, InterruptedException {
        Path data = place.resolve("idle");
        StationRecord.make(data, Clock.system(SpokenSentence.ZONE), new TreeSet<>(SpokenSentence.OPEN_CALVES));
        lines.accept("## What listening costs while nobody speaks");
        lines.accept("");
        lines.accept("Processor time of the station with its window over " + seconds
                + " s, in percent of one processor; 40 calves are known.");
        lines.accept("");
        lines.accept("| on the line | of one processor |");
        lines.accept("|---|---|");
        try (StationChild station = room.start(data, System.getProperty("java.class.path"), List.of())) {
            station.answers();
            station.tell(StationWatcher.REST);
            row("a hush of -65 dB", station);
            try (StationLine line = new StationLine(room.pulse())) {
                line.plays(BarnSound.fan(FAN));
                row("a fan of " + (int) FAN + " dB", station);
            }
            station.end();
        }
        lines.accept("");
    }

    private void row(String what, StationChild station) throws InterruptedException {
        Thread.sleep(SETTLED_MILLIS);
        Optional<Duration> before = station.processorTime();
        long began = System.nanoTime();
        Thread.sleep(seconds * 1000L);
        long took = System.nanoTime() - began;
        Optional<Duration> after = station.processorTime();
        String share = before.isPresent() && after.isPresent()
                ? String.format(
                        Locale.ROOT,
                        "%.1f%%",
                        100.0 * after.get().minus(before.get()).toNanos() / took)
                : "this system does not tell";
        lines.accept("| " + what + " | " + share + " |");
    }
}
