package strawbed.bench;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import strawbed.app.CommandRun;

/**
 * The engine on any other grammar: recordings with labels through {@code strawbed hear --grammar}.
 *
 * @param grammar an ABNF file
 * @param labels what is said in which recording
 */
record Labels(Path grammar, List<Label> labels) {
    /**
     * What {@code -Dbench.grammar} and {@code -Dbench.labels} name; empty where neither is given.
     *
     * @throws IllegalArgumentException if one is missing or the labels cannot be read
     */
    static Optional<Labels> given(String grammar, String labels) {
        if (grammar.isEmpty() && labels.isEmpty()) {
            return Optional.empty();
        }
        if (grammar.isEmpty() || labels.isEmpty()) {
            throw new IllegalArgumentException("Only one of -Dbench.grammar and -Dbench.labels is given. Give both.");
        }
        return Optional.of(new Labels(Path.of(grammar), Label.read(Path.of(labels))));
    }

    /** How each recording came out, in the order of the labels. */
    List<Labelled> heard() {
        List<String> arguments = new ArrayList<>(List.of("hear", "--json", "--grammar", grammar.toString()));
        labels.stream().map(label -> label.file().toString()).distinct().forEach(arguments::add);
        CommandRun run = CommandRun.of(arguments.toArray(String[]::new));
        if (run.code() != 0) {
            throw new IllegalStateException("hear ended with code " + run.code() + ": " + run.err());
        }
        Map<String, List<Labelled.Utterance>> byFile = new LinkedHashMap<>();
        run.out()
                .lines()
                .map(Labels::read)
                .forEach(line -> byFile.computeIfAbsent(text(line, "file"), file -> new ArrayList<>())
                        .add(utterance(line)));
        return labels.stream()
                .map(label ->
                        Labelled.of(label, byFile.getOrDefault(label.file().toString(), List.of())))
                .toList();
    }

    /** The part of the report. */
    void report(Report report) {
        List<Labelled> heard = heard();
        Tally tally = Tally.of(heard.stream().map(Labelled::outcome).toList());
        int slots = heard.stream().mapToInt(Labelled::slots).sum();
        int right = heard.stream().mapToInt(Labelled::right).sum();
        boolean tagged = labels.get(0).tags().isPresent();
        report.line("## Another grammar: " + grammar.getFileName());
        report.line("");
        report.line(
                "| recordings | wholly right | not understood | wrong | " + (tagged ? "tags" : "words") + " right |");
        report.line("|---:|---:|---:|---:|---:|");
        report.line("| " + tally.total() + " | " + tally.written(Outcome.RIGHT) + " | "
                + tally.written(Outcome.NOT_UNDERSTOOD) + " | " + tally.written(Outcome.WRONG) + " | "
                + Tally.written(right, slots) + " |");
        report.line("");
    }

    private static Map<String, Object> read(String json) {
        try {
            return JSON.std.mapFrom(json);
        } catch (IOException e) {
            throw new UncheckedIOException("not a line of JSON: " + json, e);
        }
    }

    private static String text(Map<String, Object> line, String field) {
        return Objects.requireNonNull(line.get(field), field).toString();
    }

    private static Labelled.Utterance utterance(Map<String, Object> line) {
        List<String> tags = ((List<?>) Objects.requireNonNull(line.get("tags"), "tags"))
                .stream()
                        .map(tag -> ((Map<?, ?>) tag).get("tag"))
                        .filter(Objects::nonNull)
                        .map(Object::toString)
                        .toList();
        String words = text(line, "words");
        return new Labelled.Utterance(
                text(line, "verdict"), words.isEmpty() ? List.of() : List.of(words.split(" ")), tags);
    }
}
