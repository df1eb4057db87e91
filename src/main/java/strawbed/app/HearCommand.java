package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.grammar.GrammarReader;
import strawbed.grammar.GrammarSource;

/** The command {@code strawbed hear}: recognises files, stores nothing. */
@Command(
        name = "hear",
        description = "Recognises WAV files and shows what was understood. Nothing is stored.",
        mixinStandardHelpOptions = true)
final class HearCommand implements Callable<Integer> {
    @ParentCommand
    @Nullable
    Main main;

    @Parameters(arity = "1..*", paramLabel = "FILE.wav", description = "8, 16, 44.1 or 48 kHz, mono or stereo.")
    List<Path> files = List.of();

    @Option(
            names = "--grammar",
            paramLabel = "FILE",
            description = "Any other grammar: W3C SRGS 1.0 in ABNF form. Then the matched rules are shown.")
    @Nullable
    Path grammar;

    @Option(
            names = "--calves",
            paramLabel = "12,207,417",
            split = ",",
            description = "The numbers of the open calves; else those of the farm's record.")
    List<String> calves = new ArrayList<>();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "When each file begins, such as 2026-03-03T05:30; else now. Spoken times count from it.")
    @Nullable
    String at;

    @Option(names = "--json", description = "Print one JSON object a line for each utterance.")
    boolean json;

    @Override
    public Integer call() {
        Main program = Main.of(main);
        Settings settings = program.settings();
        boolean allGood = true;
        try (Ears ears = ears(settings)) {
            ears.told().forEach(program.err()::println);
            for (Path file : files) {
                allGood &= hear(file, ears, settings, program.out(), program.err());
            }
        }
        return allGood ? 0 : Failures.BAD_INPUT;
    }

    private Ears ears(Settings settings) {
        if (grammar == null) {
            return Ears.forCalves(settings, calves.isEmpty() ? RecordReading.openCalves(settings) : numbers(calves));
        }
        Path file = grammar.toAbsolutePath();
        if (!Files.isRegularFile(file)) {
            throw new BadInputException("There is no grammar file " + grammar + ". Give the path of an .abnf file.");
        }
        GrammarSource source =
                GrammarSource.directory(Optional.ofNullable(file.getParent()).orElseThrow());
        return Ears.forPhrases(
                settings, GrammarReader.read(source, file.getFileName().toString()));
    }

    static List<String> numbers(List<String> given) {
        List<String> bad = given.stream()
                .filter(number -> !number.strip().matches("[0-9]{1,4}"))
                .toList();
        if (!bad.isEmpty()) {
            throw new BadInputException("A calf's number is 0 to 9999, not \"" + bad.get(0)
                    + "\". Give the numbers with commas between them, such as --calves 12,207,417.");
        }
        return given.stream()
                .map(number -> String.valueOf(Integer.parseInt(number.strip())))
                .toList();
    }

    private boolean hear(Path file, Ears ears, Settings settings, PrintWriter out, PrintWriter err) {
        Instant from = at == null ? settings.clock().instant() : DemoCommand.time(at, settings.zone());
        return HeardFile.hear(file, ears, ears.hearing(settings, from), err, (heard, sameCalf) -> {
            if (json) {
                out.println(JsonLine.of(new HeardJson().of(file.toString(), heard, sameCalf)));
            } else {
                out.println(HeardText.of(heard));
            }
        });
    }
}
