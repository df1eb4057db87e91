package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarSource;
import strawbed.grammar.Rule;
import strawbed.grammar.RuleId;
import strawbed.grammar.SentenceMaker;
import strawbed.hearing.Phrasebook;
import strawbed.protocol.NearNames;
import strawbed.speech.SpeechModel;

/** The command {@code strawbed grammar}: whether the farm's own words can be used, and what they come to. */
@Command(
        name = "grammar",
        description = "Looks over what can be said: the farm's own words and the program's. They are changed in the"
                + " folder grammar of the data folder, the farm's names in its farm.abnf.",
        mixinStandardHelpOptions = true)
final class GrammarCommand implements Callable<Integer> {
    private static final int MOST = 1_000_000;

    @ParentCommand
    @Nullable
    Main main;

    @Override
    public Integer call() {
        return check(null);
    }

    @Command(
            description = "Checks a grammar and changes nothing: mistakes with their line, words that the speech model"
                    + " lacks and what sounds like them, words that sound alike.")
    int check(
            @Parameters(
                            arity = "0..1",
                            paramLabel = "DIR",
                            description = "Another folder than the farm's own; what it lacks is the program's.")
                    @Nullable
                    Path given) {
        Path own = given == null ? settings().grammarFolder() : given;
        if (given != null && !Files.isDirectory(given)) {
            throw new BadInputException(
                    "There is no folder " + given + ". Give one with files such as those of the folder grammar.");
        }
        GrammarSource source = Settings.grammar(own);
        out().println(Files.isDirectory(own) ? "Grammar of " + own : "The program's own grammar; the farm has none.");
        List<String> faults = GrammarFaults.of(source, own, settings());
        if (!faults.isEmpty()) {
            PrintWriter err = Main.of(main).err();
            faults.forEach(err::println);
            err.println(
                    faults.size() == 1
                            ? "The recorder cannot use it: 1 fault. Mend it, then check again."
                            : "The recorder cannot use it: " + faults.size() + " faults. Mend them, then check again.");
            return Failures.BAD_INPUT;
        }
        return report(Phrasebook.grammar(source), source, own);
    }

    private int report(Grammar grammar, GrammarSource source, Path own) {
        GrammarReport report = new GrammarReport(grammar, source, new WordAdvice(Ears.modelFolder(settings())));
        out().println("version " + Phrasebook.versionOf(source));
        report.size().forEach(out()::println);
        print("rules that nothing leads to:", report.unreached());
        print("files that nothing refers to, so that nothing in them can be said:", unread(grammar, own));
        print("what can be said at the same place and sounds alike:", report.alike());
        List<String> lacking;
        try (SpeechModel model = Ears.load(settings())) {
            lacking = report.lackingWords(model);
        }
        if (lacking.isEmpty()) {
            out().println("OK, the speech model knows all words or has a stand-in for them.");
            return 0;
        }
        List<String> lines = new ArrayList<>();
        lacking.forEach(word -> lines.addAll(report.standIns(word)));
        print("words that the speech model lacks and would never hear:", lines);
        Main.of(main)
                .err()
                .println("The recorder cannot use it: " + lacking.size()
                        + (lacking.size() == 1 ? " word is" : " words are") + " unknown to the speech model. Write one"
                        + " line for each into lexicon.txt, then check again; or use another word in the grammar.");
        return Failures.BAD_INPUT;
    }

    private static List<String> unread(Grammar grammar, Path own) {
        return GrammarFaults.grammarFiles(own).stream()
                .filter(name -> !name.equals("calves.abnf"))
                .filter(name -> grammar.rules().stream()
                        .noneMatch(rule -> rule.id().file().equals(name)))
                .map(name -> "  " + name)
                .toList();
    }

    private void print(String head, List<String> lines) {
        if (!lines.isEmpty()) {
            out().println(head);
            lines.forEach(out()::println);
        }
    }

    @Command(description = "Says sentences by chance that the grammar allows, one a line.")
    int say(
            @Parameters(arity = "0..1", paramLabel = "N", defaultValue = "10", description = "How many; else 10.")
                    int count,
            @Option(names = "--rule", paramLabel = "NAME", description = "Of this rule only, such as navel_fact.")
                    @Nullable
                    String rule,
            @Option(
                            names = "--seed",
                            paramLabel = "S",
                            defaultValue = "1",
                            description = "The same number gives the same sentences; else 1.")
                    long seed) {
        if (count < 1 || count > MOST) {
            throw new BadInputException("Say 1 to " + MOST + " sentences, not " + count + ".");
        }
        Grammar grammar = Phrasebook.grammar(settings().grammar());
        RuleId start = rule == null ? grammar.root() : named(grammar, rule);
        List<List<String>> sentences = new SentenceMaker(grammar).sample(start, count, seed);
        if (sentences.isEmpty()) {
            throw new BadInputException("The rule $" + start.name() + " has nothing that can be said yet.");
        }
        sentences.forEach(words -> out().println(String.join(" ", words).replace(SentenceMaker.ANYTHING, "...")));
        return 0;
    }

    private static RuleId named(Grammar grammar, String text) {
        String name = text.startsWith("$") ? text.substring(1) : text;
        List<RuleId> all = grammar.rules().stream().map(Rule::id).toList();
        return all.stream().filter(id -> id.name().equals(name)).findFirst().orElseThrow(() -> {
            List<String> near =
                    NearNames.of(name, all.stream().map(RuleId::name).distinct().toList());
            return new BadInputException("There is no rule $" + name + "."
                    + (near.isEmpty() ? "" : " Did you mean " + String.join(", ", near) + "?"));
        });
    }

    @Command(
            name = "try",
            description =
                    "Hears WAV files and shows how: word by word, every reading with its score and where it leaves"
                            + " the grammar, and the verdict with its reason. Nothing is stored.")
    int tryOut(
            @Parameters(arity = "1..*", paramLabel = "FILE.wav", description = "8, 16, 44.1 or 48 kHz.")
                    List<Path> files,
            @Option(
                            names = "--calves",
                            paramLabel = "12,207",
                            split = ",",
                            description = "The numbers of the open calves; else those of the farm's record.")
                    @Nullable
                    List<String> calves) {
        Settings settings = settings();
        boolean allGood = true;
        try (Ears ears = Ears.forCalves(
                settings, calves == null ? RecordReading.openCalves(settings) : HearCommand.numbers(calves))) {
            if (!ears.told().isEmpty()) {
                throw new BadInputException(String.join(System.lineSeparator(), ears.told()));
            }
            HeardReadings readings = new HeardReadings(ears, settings);
            for (Path file : files) {
                out().println(file);
                allGood &= HeardFile.hear(
                        file,
                        ears,
                        ears.hearing(settings, settings.clock().instant()),
                        Main.of(main).err(),
                        (heard, sameCalf) -> readings.of(heard).forEach(out()::println));
            }
        }
        return allGood ? 0 : Failures.BAD_INPUT;
    }

    private Settings settings() {
        return Main.of(main).settings();
    }

    private PrintWriter out() {
        return Main.of(main).out();
    }
}
