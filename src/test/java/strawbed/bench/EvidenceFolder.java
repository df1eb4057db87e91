package strawbed.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;

/**
 * What recognisers gave for sounds, kept between runs of the bench, as hearing a sound nine times takes long and trying
 * thresholds on it does not. One file for each sound.
 *
 * @param home where the files lie
 */
record EvidenceFolder(Path home) {
    /** What was heard in each pass, if it is kept under this name. */
    Optional<List<List<Hypothesis>>> find(String name) {
        Path file = home.resolve(name);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            List<List<Hypothesis>> passes = new ArrayList<>();
            for (String line : Files.readAllLines(file)) {
                if (line.equals("pass")) {
                    passes.add(new ArrayList<>());
                } else {
                    passes.get(passes.size() - 1).add(hypothesis(line));
                }
            }
            return Optional.of(passes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void keep(String name, List<List<Hypothesis>> passes) {
        String text = passes.stream()
                .map(pass -> "pass\n" + pass.stream().map(EvidenceFolder::line).collect(Collectors.joining()))
                .collect(Collectors.joining());
        try {
            Files.createDirectories(home);
            Path part = Files.createTempFile(home, "part", "");
            Files.writeString(part, text);
            Files.move(part, home.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String line(Hypothesis hypothesis) {
        return hypothesis.score()
                + hypothesis.words().stream()
                        .map(word -> " " + word.text() + " " + word.from().toMillis() + " "
                                + word.to().toMillis())
                        .collect(Collectors.joining())
                + "\n";
    }

    private static Hypothesis hypothesis(String line) {
        List<String> parts = Arrays.asList(line.split(" "));
        List<RecognizedWord> words = new ArrayList<>();
        for (int i = 1; i < parts.size(); i += 3) {
            words.add(new RecognizedWord(
                    parts.get(i),
                    Duration.ofMillis(Long.parseLong(parts.get(i + 1))),
                    Duration.ofMillis(Long.parseLong(parts.get(i + 2)))));
        }
        return new Hypothesis(words, Double.parseDouble(parts.get(0)));
    }
}
