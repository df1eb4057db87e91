package strawbed.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import strawbed.audio.Sound;

/** What is no statement, and must not become one. */
final class ForeignSpeech {
    private static final double KITCHEN = 12;

    private final NoiseGrid grid;
    private final Crew crew;
    private final List<String> understood = new ArrayList<>();
    private final List<String> askedAbout = new ArrayList<>();

    ForeignSpeech(NoiseGrid grid, Crew crew) {
        this.grid = grid;
        this.crew = crew;
    }

    /** How many of some sounds were taken as understood, and how many asked about. */
    record Count(int of, int understood, int asked) {
        /** A row of the report's tables. */
        String row(String what, String goal) {
            return "| " + what + " | " + of + " | " + understood + ", " + Tally.written(understood, of) + " | " + goal
                    + " | " + asked + " |";
        }
    }

    /** What was said or recorded, and what was understood. */
    List<String> understood() {
        return List.copyOf(understood);
    }

    /** What was said or recorded, and what was asked about. */
    List<String> askedAbout() {
        return List.copyOf(askedAbout);
    }

    Map<String, Count> people(List<Path> files) throws InterruptedException {
        Map<String, Count> counts = new LinkedHashMap<>();
        List<String> names =
                files.stream().map(file -> file.getFileName().toString()).toList();
        List<Sound> sounds = files.stream().map(Material::sound).toList();
        counts.put("people who order coffee (Speech-to-Intent Benchmark)", heard(names, sounds));
        for (NoiseGrid.Cell cell : List.of(
                new NoiseGrid.Cell(Noise.PINK, false, KITCHEN), new NoiseGrid.Cell(Noise.BANGS, false, KITCHEN))) {
            List<Sound> noisy = IntStream.range(0, names.size())
                    .mapToObj(i -> grid.in(cell, sounds.get(i), names.get(i)))
                    .toList();
            counts.put("the same people, " + cell.words(), heard(names, noisy));
        }
        return counts;
    }

    /** Each line by so many voices that take turns. */
    Count talk(List<String> lines, int voices) throws InterruptedException {
        List<String> names = new ArrayList<>();
        List<Sound> sounds = new ArrayList<>();
        for (int voice = 0; voice < voices; voice++) {
            for (int i = 0; i < lines.size(); i++) {
                names.add(lines.get(i));
                sounds.add(grid.in(NoiseGrid.Cell.QUIET, grid.speech(lines.get(i), i + voice), lines.get(i)));
            }
        }
        return heard(names, sounds);
    }

    /** Some minutes of noise, without any speech for the recorder; one at a time for each ear. */
    Count noise(NoiseAlone noise, List<Integer> minutes) throws InterruptedException {
        return count(
                minutes.stream()
                        .map(minute -> NoiseAlone.name(minute) + ", minute " + minute)
                        .toList(),
                crew.map(minutes, (ear, minute) -> ear.hear(noise.minute(minute))));
    }

    private Count heard(List<String> names, List<Sound> sounds) throws InterruptedException {
        return count(names, crew.map(sounds, Ear::hear));
    }

    private Count count(List<String> names, List<Ear.Result> results) {
        int taken = 0;
        int asked = 0;
        for (int i = 0; i < results.size(); i++) {
            List<HeardLine> lines = results.get(i).lines();
            for (HeardLine line : lines) {
                String told = names.get(i) + " -> " + line.words();
                if (line.isUnderstood()) {
                    understood.add(told);
                } else if (line.isUnsure()) {
                    askedAbout.add(told);
                }
            }
            taken += lines.stream().anyMatch(HeardLine::isUnderstood) ? 1 : 0;
            asked += lines.stream().noneMatch(HeardLine::isUnderstood)
                            && lines.stream().anyMatch(HeardLine::isUnsure)
                    ? 1
                    : 0;
        }
        return new Count(results.size(), taken, asked);
    }
}
