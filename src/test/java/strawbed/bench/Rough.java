package strawbed.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import strawbed.audio.Sound;
import strawbed.audio.SoundCondition;
import strawbed.testkit.SpokenSentence;

/** The part of the report about bad sound: sentences as a microphone should not give them. */
final class Rough {
    private static final int SENTENCES = 60;
    private static final long SEED = 4_711;

    private final NoiseGrid grid;
    private final Crew crew;
    private final Sayings sayings;
    private final Report report;
    private final int every;
    private final Sound readBack;

    /** @param readBack what the program's own voice says meanwhile */
    Rough(NoiseGrid grid, Crew crew, Sayings sayings, Report report, int every, Sound readBack) {
        this.grid = grid;
        this.crew = crew;
        this.sayings = sayings;
        this.report = report;
        this.every = every;
        this.readBack = readBack;
    }

    /**
     * One sentence as it was heard.
     *
     * @param told what a person would be told of its sound
     */
    private record Trial(Outcome outcome, SoundCondition told) {}

    void measured() throws InterruptedException {
        List<SpokenSentence> sentences = sayings.made(Math.max(1, SENTENCES / every), SEED);
        report.line("## Bad sound");
        report.line("");
        report.line(
                "Sentences made from the grammar, by the voices kept for testing. The last column is what the program"
                        + " would say of the sound.");
        report.line("");
        report.line("| what is wrong | n | " + Report.heads() + " | its sound is called |");
        report.line("|---|---:|" + "---:|".repeat(Outcome.values().length) + "---|");
        row("nothing", sentences, -1);
        List<Roughness> kinds = Roughness.all(readBack, talk(0));
        for (int kind = 0; kind < kinds.size(); kind++) {
            row(kinds.get(kind).words(), sentences, kind);
        }
        report.line("");
    }

    /** Talk of the barn, which is not for the recorder. */
    private Sound talk(int turn) {
        List<String> lines = Babble.lines("/chatter-sentences.txt");
        return grid.speech(lines.get(turn % lines.size()), turn);
    }

    private void row(String words, List<SpokenSentence> sentences, int kind) throws InterruptedException {
        List<Integer> turns = IntStream.range(0, sentences.size()).boxed().toList();
        List<Trial> trials = crew.map(turns, (ear, i) -> {
            String said = sentences.get(i).words();
            Sound plain = grid.in(NoiseGrid.Cell.QUIET, grid.speech(said, i), said);
            Sound rough = kind < 0
                    ? plain
                    // Another voice than the one that says the sentence.
                    : Roughness.all(readBack, talk(i + 1)).get(kind).on().apply(plain);
            return new Trial(
                    Spoken.outcome(sentences.get(i), ear.hear(rough).lines()), SoundCondition.of(Cut.longest(rough)));
        });
        Tally tally = Tally.of(trials.stream().map(Trial::outcome).toList());
        List<String> cells = new ArrayList<>(List.of(words, String.valueOf(tally.total())));
        Arrays.stream(Outcome.values()).map(tally::written).forEach(cells::add);
        cells.add(told(trials));
        report.line("| " + String.join(" | ", cells) + " |");
    }

    private static String told(List<Trial> trials) {
        Map<SoundCondition, Long> counts =
                new TreeMap<>(trials.stream().collect(Collectors.groupingBy(Trial::told, Collectors.counting())));
        return counts.entrySet().stream()
                .map(entry -> entry.getKey().word() + " " + entry.getValue())
                .collect(Collectors.joining(", "));
    }
}
