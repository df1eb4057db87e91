package strawbed.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.LongSummaryStatistics;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import strawbed.bench.BarnSound;
import strawbed.testkit.ProcessMemory;

/**
 * Hours of an open microphone where nobody answers the recorder, replayed faster than real time: a part of
 * {@link StationRun}.
 */
final class SoakPart {
    static final Instant BEGIN = Instant.parse("2026-03-02T09:00:00Z");

    /** Of the calves that are known. */
    static final List<String> NUMBERS =
            IntStream.rangeClosed(301, 320).mapToObj(Integer::toString).toList();

    private static final int EACH_MINUTES = 30;
    private static final int HOUR = 60;
    private static final double MIB = 1 << 20;

    private final double hours;
    private final Consumer<String> lines;
    private final List<Used> used = new ArrayList<>();
    private LongSummaryStatistics resident = new LongSummaryStatistics();

    /**
     * Memory after so many replayed minutes. What is resident rises and falls, as what the speech library freed is given
     * back now and then.
     *
     * @param resident looked at after each minute since the time before; empty where the system does not tell it
     */
    private record Used(int minutes, long heap, LongSummaryStatistics resident) {
        String told() {
            return String.format(Locale.ROOT, "%.0f MiB", heap / MIB) + " | "
                    + (resident.getCount() == 0
                            ? ""
                            : String.format(
                                    Locale.ROOT, "%.0f to %.0f MiB", resident.getMin() / MIB, resident.getMax() / MIB));
        }
    }

    SoakPart(double hours, Consumer<String> lines) {
        this.hours = hours;
        this.lines = lines;
    }

    void measure(Path data) throws IOException {
        int minutes = Math.max(1, (int) Math.round(hours * HOUR));
        lines.accept("## An open microphone");
        lines.accept("");
        lines.accept(minutes
                + " minutes of noise and chatter, replayed; 20 calves are known; nobody says yes or presses a key."
                + " Heap: after a collection. Resident: the least and the most since the row before. The rows grow while it"
                + " runs.");
        lines.accept("");
        lines.accept("| replayed | heap | resident | open statements | questions | facts saved | paused | took |");
        lines.accept("|---|---|---|---|---|---|---|---|");
        long began = System.nanoTime();
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        BarnSound barn = new BarnSound(8);
        ReplayedStation station = new ReplayedStation(data, BEGIN, NUMBERS, err);
        long questions;
        try (station) {
            for (int minute = 0; minute < minutes; minute++) {
                station.hears(barn.minute(minute));
                ProcessMemory.resident().ifPresent(resident);
                if ((minute + 1) % EACH_MINUTES == 0 || minute + 1 == minutes) {
                    row(station, minute + 1, began);
                }
            }
            questions = station.questions();
        }
        // Out of the record itself, as a station's memory of it is not what the farm reads tomorrow.
        long saved = StationRecord.saidOrPressed(data, station.clock());
        lines.accept("");
        lines.accept(String.format(
                Locale.ROOT,
                "**Facts saved without a yes: %d** in %.2f hours, in which it asked %d questions. %s",
                saved,
                minutes / (double) HOUR,
                questions,
                firstAndLast()));
    }

    private void row(ReplayedStation station, int minutes, long began) throws IOException {
        Used now = new Used(minutes, ProcessMemory.heapAfterCollection(), resident);
        used.add(now);
        resident = new LongSummaryStatistics();
        lines.accept(String.format(
                Locale.ROOT,
                "| %.2f h | %s | %d | %d | %d | %.1f%% | %d s |",
                minutes / (double) HOUR,
                now.told(),
                station.open(),
                station.questions(),
                station.saved(),
                100 * station.paused(),
                Duration.ofNanos(System.nanoTime() - began).toSeconds()));
    }

    private String firstAndLast() {
        Used first =
                used.stream().filter(one -> one.minutes() >= HOUR).findFirst().orElse(used.get(0));
        Used last = used.get(used.size() - 1);
        return first.equals(last)
                ? "It was too short to compare memory."
                : "Memory (heap | resident) after the first hour " + first.told() + ", at the end " + last.told() + ".";
    }
}
