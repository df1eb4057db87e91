package strawbed.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarException;
import strawbed.grammar.GrammarReader;
import strawbed.grammar.GrammarSource;
import strawbed.grammar.Rule;
import strawbed.grammar.SourcePosition;
import strawbed.hearing.Phrasebook;
import strawbed.speech.Lexicon;
import strawbed.speech.LexiconException;
import strawbed.statement.GrammarTrial;
import strawbed.statement.SpeechTime;
import strawbed.statement.StatementReader;

/** What makes a grammar of no use to the recorder, whatever the speech model knows: each fault as lines with its place. */
final class GrammarFaults {
    private static final Pattern RULE = Pattern.compile("the rule \\$([A-Za-z_]+)");

    private GrammarFaults() {}

    /**
     * All faults that can be told at once: the first of each file, of the stand-ins, and of what can be said.
     *
     * @param own the folder of the farm's files; one that is not there has none
     */
    static List<String> of(GrammarSource source, Path own, Settings settings) {
        Map<String, String> faults = new LinkedHashMap<>();
        Optional<Grammar> whole = Optional.empty();
        try {
            whole = Optional.of(Phrasebook.grammar(source));
        } catch (GrammarException fault) {
            add(faults, fault);
        }
        for (String file : grammarFiles(own)) {
            try {
                GrammarReader.read(source, file);
            } catch (GrammarException fault) {
                add(faults, fault);
            }
        }
        try {
            Lexicon.parse("lexicon.txt", source.text("lexicon.txt"));
        } catch (LexiconException | GrammarException fault) {
            faults.put("lexicon", String.valueOf(fault.getMessage()));
        }
        return Stream.concat(
                        faults.values().stream(),
                        whole.map(grammar -> ofMeaning(grammar, settings)).orElse(List.of()).stream())
                .toList();
    }

    /**
     * Lets a grammar pass only if all that can be said with it means something.
     *
     * @throws GrammarException with the first fault
     */
    static void requireMeaning(GrammarSource source, Settings settings) {
        Grammar grammar = Phrasebook.grammar(source);
        GrammarTrial.run(grammar, speech(settings)).stream().findFirst().ifPresent(fault -> {
            throw new GrammarException(file(grammar, fault), sentence(grammar, fault));
        });
    }

    private static List<String> ofMeaning(Grammar grammar, Settings settings) {
        List<String> missing = StatementReader.factRules().stream()
                .filter(name -> grammar.rules().stream()
                        .noneMatch(rule -> rule.id().name().equals(name)))
                .sorted()
                .map(name -> "No file has the rule $" + name + ", so that its fact cannot be said. Put it back.")
                .toList();
        try {
            return Stream.concat(
                            missing.stream(),
                            GrammarTrial.run(grammar, speech(settings)).stream()
                                    .map(fault -> file(grammar, fault) + ": " + sentence(grammar, fault)))
                    .toList();
        } catch (GrammarException fault) {
            return Stream.concat(missing.stream(), Stream.of(text(fault))).toList();
        }
    }

    private static SpeechTime speech(Settings settings) {
        return new SpeechTime(settings.clock().instant(), settings.zone());
    }

    private static String sentence(Grammar grammar, GrammarTrial.Fault fault) {
        String line = rule(grammar, fault)
                .map(Rule::position)
                .map(place -> "line " + place.line() + ": ")
                .orElse("");
        return line + fault.problem() + "; nobody could say \"" + fault.sentence() + "\". Mend it.";
    }

    private static String file(Grammar grammar, GrammarTrial.Fault fault) {
        return rule(grammar, fault).map(rule -> rule.id().file()).orElse("strawbed.abnf");
    }

    private static Optional<Rule> rule(Grammar grammar, GrammarTrial.Fault fault) {
        Matcher named = RULE.matcher(fault.problem());
        return named.find()
                ? grammar.rules().stream()
                        .filter(rule -> rule.id().name().equals(named.group(1)))
                        .findFirst()
                : Optional.empty();
    }

    /** The .abnf files of a folder, by their names; the stand-in for the open calves is the program's to fill. */
    static List<String> grammarFiles(Path own) {
        if (!Files.isDirectory(own)) {
            return List.of();
        }
        try {
            return FarmFiles.filesIn(own).stream()
                    .map(file -> own.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> name.endsWith(".abnf"))
                    .collect(Collectors.toList());
        } catch (IOException failure) {
            throw new BadInputException("The folder " + own + " cannot be read: " + failure + ". Check its rights.");
        }
    }

    private static void add(Map<String, String> faults, GrammarException fault) {
        faults.putIfAbsent(fault.file() + ":" + fault.line() + ":" + fault.column(), text(fault));
    }

    /** "navel.abnf:17:5: what is wrong", then the line and a caret under the place. */
    private static String text(GrammarException fault) {
        Optional<SourcePosition> place = fault.position();
        if (place.isEmpty()) {
            return fault.file() + ": " + fault.problem();
        }
        String shown = String.valueOf(fault.getMessage());
        int lineEnd = shown.indexOf('\n');
        return fault.file() + ":" + fault.line() + ":" + fault.column() + ": " + fault.problem()
                + (lineEnd < 0 ? "" : shown.substring(lineEnd));
    }
}
