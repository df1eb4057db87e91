package strawbed.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import strawbed.audio.Sound;
import strawbed.statement.ThresholdSearch;
import strawbed.statement.ThresholdSearch.Score;
import strawbed.statement.Thresholds;
import strawbed.testkit.SpokenSentence;

/** The part of the report about what each means of hearing is worth, on the tuning voices; also sets the thresholds. */
final class Worth {
    private static final int SENTENCES = 120;
    private static final int FOREIGN = 120;
    private static final long SEED = 777;
    private static final String TALK = "talk";
    private static final Path THRESHOLDS =
            Path.of("src", "main", "resources", "strawbed", "statement", "thresholds.properties");

    private final NoiseGrid grid;
    private final Crew crew;
    private final Sayings sayings;
    private final Report report;
    private final int every;

    Worth(NoiseGrid grid, Crew crew, Sayings sayings, Report report, int every) {
        this.grid = grid;
        this.crew = crew;
        this.sayings = sayings;
        this.report = report;
        this.every = every;
    }

    private record Piece(String cell, String said, boolean statement, Sound sound) {}

    void measured() throws InterruptedException, IOException {
        List<ThresholdSearch.Case> cases = crew.map(
                pieces(),
                (ear, piece) -> Gathered.of(piece.cell(), piece.statement() ? piece.said() : null, piece.sound(), ear));
        ThresholdSearch search = new ThresholdSearch(cases);
        Thresholds set = Thresholds.set();
        if (Boolean.getBoolean("bench.set")) {
            set = search.best(set, Gathered.CHOSEN);
            write(set);
        }
        Map<String, Score> plain = search.scores(set, List.of(0), false, false);
        report.line("## What each means of hearing is worth");
        report.line("");
        report.line("On the tuning voices, the ends of speech given, "
                + plain.values().iterator().next().of() + " sentences in each cell: wholly right / right when asked");
        report.line(
                "about / wrong as understood, percent. The last columns: what is no statement, taken as understood.");
        report.line("");
        report.line("| means | " + String.join(" | ", plain.keySet()) + " |");
        report.line("|---|" + "---:|".repeat(plain.size()));
        row("one hearing, first reading", search.scores(set.with("readings", 1), List.of(0), false, false));
        row("one hearing", plain);
        row("one hearing with 6 dB less noise", search.scores(set, List.of(6), false, false));
        row("one hearing with 12 dB less noise", search.scores(set, List.of(3), false, false));
        row("one hearing with 20 dB less noise", search.scores(set, List.of(7), false, false));
        row("as it is, faster, slower", search.scores(set, Gathered.BEFORE, false, false));
        row("less noise, this faster and slower", search.scores(set, List.of(3, 4, 5), false, false));
        row("as it is, less noise, this faster and slower", search.scores(set, Gathered.CHOSEN, false, false));
        row("all six", search.scores(set, List.of(0, 1, 2, 3, 4, 5), false, false));
        row("the four, and free speech", search.scores(set, Gathered.CHOSEN, true, false));
        row("the four, and sound beside the words", search.scores(set, Gathered.CHOSEN, false, true));
        row("**all that is used**", search.scores(set, Gathered.CHOSEN, true, true));
        row(
                "that without margins",
                search.scores(set.with("margin", 0).with("other-calf", 0), Gathered.CHOSEN, true, true));
        row(
                "that with margins doubled",
                search.scores(
                        set.with("margin", 2 * set.margin()).with("other-calf", 2 * set.otherCalf()),
                        Gathered.CHOSEN,
                        true,
                        true));
        report.line("");
        report.line("Thresholds: `" + set + "`");
        report.line("");
    }

    private static List<NoiseGrid.Cell> cells() {
        return List.of(
                NoiseGrid.Cell.QUIET,
                new NoiseGrid.Cell(Noise.PINK, false, 10),
                new NoiseGrid.Cell(Noise.FAN, false, 10),
                new NoiseGrid.Cell(Noise.BANGS, false, 10),
                new NoiseGrid.Cell(null, true, 10));
    }

    private List<Piece> pieces() {
        List<SpokenSentence> sentences = sayings.made(SENTENCES / every, SEED);
        List<Piece> pieces = new ArrayList<>();
        for (NoiseGrid.Cell cell : cells()) {
            for (int i = 0; i < sentences.size(); i++) {
                String words = sentences.get(i).words();
                pieces.add(new Piece(cell.words(), words, true, grid.in(cell, grid.speech(words, i), words)));
            }
        }
        for (String cell : List.of(ThresholdSearch.ON_PURPOSE, TALK)) {
            List<String> lines = Babble.lines(cell.equals(TALK) ? "/chatter-sentences.txt" : "/sound-alikes.txt");
            IntStream.range(0, FOREIGN / every)
                    .mapToObj(i -> lines.get(i * lines.size() * every / FOREIGN))
                    .forEach(line -> pieces.add(new Piece(
                            cell, line, false, grid.in(NoiseGrid.Cell.QUIET, grid.speech(line, pieces.size()), line))));
        }
        return pieces;
    }

    private void row(String name, Map<String, Score> scores) {
        List<String> cells = new ArrayList<>();
        scores.forEach((cell, score) -> cells.add(
                cell.equals(TALK) || cell.equals(ThresholdSearch.ON_PURPOSE)
                        ? score.wrong() + " of " + score.of()
                        : String.format(
                                Locale.ROOT,
                                "%.1f / %.1f / %.1f",
                                100.0 * score.right() / score.of(),
                                100.0 * score.askedRight() / score.of(),
                                100.0 * score.wrong() / score.of())));
        report.line("| " + name + " | " + String.join(" | ", cells) + " |");
    }

    /** Puts the numbers into the program's own file and leaves its comments as they are. */
    private static void write(Thresholds t) throws IOException {
        Map<String, Double> numbers = t.numbers();
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(THRESHOLDS)) {
            String name = line.replaceFirst(" = .*", "");
            lines.add(numbers.containsKey(name) ? name + " = " + numbers.get(name) : line);
        }
        Files.write(THRESHOLDS, lines);
    }
}
