package strawbed.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import strawbed.testkit.SpokenSentence;

/** The part of the report about sentences in quiet and in noise. */
final class InNoise {
    private static final int IN_QUIET = 600;
    private static final int IN_A_CELL = 200;
    private static final long SEED = Long.getLong("bench.seed", 999);

    /** The utterance ends after this much quiet; see {@link strawbed.audio.Endpointer}. */
    private static final Duration WAITED = Duration.ofMillis(320);

    private final NoiseGrid grid;
    private final Crew crew;
    private final Sayings sayings;
    private final Report report;
    private final int every;

    InNoise(NoiseGrid grid, Crew crew, Sayings sayings, Report report, int every) {
        this.grid = grid;
        this.crew = crew;
        this.sayings = sayings;
        this.report = report;
        this.every = every;
    }

    void measured() throws InterruptedException {
        List<SpokenSentence> sentences = sayings.made(IN_QUIET / every, SEED);
        report.line("## Sentences made from the grammar, by the voices kept for testing");
        report.line("");
        report.line(
                "Statements of one to three events about a calf on the list; voices and three rates of speaking take");
        report.line(
                "turns. The level is that of the speech while it is active over that of the noise. Seed " + SEED + ".");
        if (NoiseGrid.TRACT != 1) {
            report.line("");
            report.line("The voices are changed: vocal tract, pitch and rate by a factor of " + NoiseGrid.TRACT
                    + " up and down in turn, so that nothing was chosen by them; quiet by each voice holds both.");
        }
        report.line("");
        report.line("| where | n | " + Report.heads() + " | calf and events right |");
        report.line("|---|---:|" + "---:|".repeat(Outcome.values().length + 1));
        List<NoiseGrid.Trial> quiet = grid.heard(sentences, NoiseGrid.Cell.QUIET, crew);
        row("quiet", quiet);
        new TreeMap<>(quiet.stream()
                        .collect(Collectors.groupingBy(trial -> trial.speaker().name())))
                .forEach((voice, trials) -> row("quiet, " + voice, trials));
        List<NoiseGrid.Trial> all = new ArrayList<>(quiet);
        List<SpokenSentence> fewer = sentences.subList(0, IN_A_CELL / every);
        for (NoiseGrid.Cell cell : NoiseGrid.Cell.all()) {
            List<NoiseGrid.Trial> trials = grid.heard(fewer, cell, crew);
            row(cell.words(), trials);
            all.addAll(trials);
        }
        cost(quiet, all);
        confusions(all);
    }

    private void row(String name, List<NoiseGrid.Trial> trials) {
        Tally tally = Tally.of(trials.stream().map(NoiseGrid.Trial::outcome).toList());
        int right = 0;
        int slots = 0;
        for (NoiseGrid.Trial trial : trials) {
            Map<Boolean, Integer> counts =
                    Ear.slots(trial.sentence(), trial.result().lines());
            right += counts.getOrDefault(true, 0);
            slots += counts.values().stream().mapToInt(Integer::intValue).sum();
        }
        report.line("| " + name + " | " + tally.total() + " | "
                + List.of(Outcome.values()).stream().map(tally::written).collect(Collectors.joining(" | ")) + " | "
                + Tally.written(right, slots) + " |");
    }

    private void cost(List<NoiseGrid.Trial> quiet, List<NoiseGrid.Trial> all) {
        double computing = all.stream()
                .mapToDouble(trial -> trial.result().computing().toNanos())
                .sum();
        double sound = all.stream()
                .mapToDouble(trial -> trial.result().sound().toNanos())
                .sum();
        List<Duration> waits = quiet.stream()
                .map(trial -> WAITED.plus(trial.result().last()))
                .sorted()
                .toList();
        Runtime runtime = Runtime.getRuntime();
        report.line("");
        report.line("### What it costs");
        report.line("");
        report.line("| what | figure | goal |");
        report.line("|---|---:|---|");
        report.line(String.format(
                Locale.ROOT,
                "| computing for each second of sound, one thread of %d at work | %.2f s | under 0.25 s |",
                runtime.availableProcessors(),
                computing / sound));
        report.line(String.format(
                Locale.ROOT,
                "| end of speech to verdict in quiet, median and 95th percentile (of it 320 ms to know the end) | %d ms,"
                        + " %d ms | under 450, 700 ms |",
                waits.get(waits.size() / 2).toMillis(),
                waits.get(waits.size() * 95 / 100).toMillis()));
        report.line(String.format(
                Locale.ROOT,
                "| Java's heap at the end, without the speech library's own memory | %d MB | - |",
                (runtime.totalMemory() - runtime.freeMemory()) >> 20));
        report.line("");
    }

    private void confusions(List<NoiseGrid.Trial> all) {
        report.line("### Wrong as understood");
        report.line("");
        report.line("| said | in its place | voice | times |");
        report.line("|---|---|---|---:|");
        all.stream()
                .filter(trial -> trial.outcome() == Outcome.WRONG)
                .map(NoiseGrid.Trial::confusion)
                .collect(Collectors.groupingBy(
                        one -> one.said() + " | " + one.saidPart() + ": "
                                + one.heardPart().replace("|", "\\|") + " | " + one.voice(),
                        TreeMap::new,
                        Collectors.counting()))
                .forEach((what, times) -> report.line("| " + what + " | " + times + " |"));
        report.line("");
    }
}
