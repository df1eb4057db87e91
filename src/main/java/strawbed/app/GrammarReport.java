package strawbed.app;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strawbed.alike.AlikeChoices;
import strawbed.alike.AlikePair;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarSource;
import strawbed.grammar.Rule;
import strawbed.grammar.RuleId;
import strawbed.grammar.SourcePosition;
import strawbed.grammar.WaysToSay;
import strawbed.speech.Lexicon;
import strawbed.speech.SpeechModel;

/** What {@code strawbed grammar check} says of a grammar without mistakes, as lines for a person. */
final class GrammarReport {
    /** Pairs less close than this were not seen to be mistaken for each other; our own choice. */
    private static final double ALIKE = 0.55;

    private static final int SHOWN_PAIRS = 12;

    /** Numbers up to this many digits are shown in full. */
    private static final int LONGEST_NUMBER = 12;

    private static final String NUMBERS = "numbers.abnf";

    private final Grammar grammar;
    private final GrammarSource source;
    private final Lexicon lexicon;
    private final WordAdvice advice;

    GrammarReport(Grammar grammar, GrammarSource source, WordAdvice advice) {
        this.grammar = grammar;
        this.source = source;
        this.lexicon = Lexicon.parse("lexicon.txt", source.text("lexicon.txt"));
        this.advice = advice;
    }

    /** The words that the model would never hear: those of rules and decoys for which nothing it knows stands in. */
    List<String> lackingWords(SpeechModel model) {
        Set<String> words = new TreeSet<>(grammar.tokens());
        source.text("decoys.txt")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .flatMap(line -> List.of(line.strip().split("\\s+")).stream())
                .filter(word -> !word.isEmpty())
                .forEach(words::add);
        return words.stream()
                .filter(word -> !lexicon.toSpoken(List.of(word)).stream().allMatch(model::knows))
                .toList();
    }

    /** What can be written into {@code lexicon.txt} for a word. */
    List<String> standIns(String word) {
        List<String> lines = new ArrayList<>();
        lines.add("  " + word
                + lexicon.standIn(word)
                        .map(parts -> ": its stand-in \"" + parts + "\" has a word that the model lacks, too. Closest:")
                        .orElse(": no stand-in in lexicon.txt. Closest:"));
        advice.standIns(word, Set.copyOf(grammar.tokens()))
                .forEach(standIn -> lines.add(String.format(
                        Locale.ROOT,
                        "      %-40s %3.0f%% alike",
                        word + " = " + standIn.text(),
                        100 * standIn.closeness())));
        if (lines.size() == 1) {
            lines.add("      nothing that the model knows is near. Use another word in the grammar.");
        }
        return lines;
    }

    /** Rules, words and ways to say. */
    List<String> size() {
        WaysToSay ways = WaysToSay.of(grammar, grammar.root());
        return List.of(
                grammar.rules().size() + " rules, " + grammar.tokens().size() + " words",
                "ways to say something: " + (ways.endless() ? "without end; " : "") + number(ways.count())
                        + (ways.endless()
                                ? " if what can be repeated without end is said at most " + WaysToSay.FURTHER
                                        + " times more than it must"
                                : "")
                        + ". The calves of the record are not counted.");
    }

    private static String number(BigInteger count) {
        String digits = count.toString();
        return digits.length() <= LONGEST_NUMBER
                ? digits
                : "about " + digits.charAt(0) + "." + digits.charAt(1) + " times 10 to the power of "
                        + (digits.length() - 1);
    }

    /** Rules that nothing leads to. */
    List<String> unreached() {
        Set<RuleId> reached = grammar.reached(List.of(grammar.root()));
        return grammar.rules().stream()
                .filter(rule -> !reached.contains(rule.id()))
                .map(rule -> place(rule.position()) + ": nothing leads to the rule $"
                        + rule.id().name() + ". Refer to it, or take it out.")
                .toList();
    }

    private static String place(SourcePosition position) {
        return position.file() + ":" + position.line() + ":" + position.column();
    }

    /** Alternatives that may be mistaken for each other. */
    List<String> alike() {
        Set<String> numbers = Set.copyOf(grammar.tokens(grammar.rules().stream()
                .map(Rule::id)
                .filter(id -> id.file().equals(NUMBERS))
                .toList()));
        List<AlikePair> all = new AlikeChoices(grammar, grammar.root(), numbers, advice::phones).pairs(ALIKE);
        List<AlikePair> ofNumbers = all.stream()
                .filter(pair -> numbers.containsAll(pair.one()) && numbers.containsAll(pair.other()))
                .toList();
        List<AlikePair> others =
                all.stream().filter(pair -> !ofNumbers.contains(pair)).toList();
        List<String> lines = new ArrayList<>();
        others.stream().limit(SHOWN_PAIRS).forEach(pair -> {
            lines.add(String.format(Locale.ROOT, "  %3.0f%%  %s", 100 * pair.closeness(), both(pair)));
            lines.add(
                    "        \"" + text(pair.sentence()) + "\" may be taken for \"" + text(pair.mistakenFor()) + "\"");
        });
        if (others.size() > SHOWN_PAIRS) {
            lines.add("  and " + (others.size() - SHOWN_PAIRS) + " less close");
        }
        if (!ofNumbers.isEmpty()) {
            lines.add("  numbers, known and asked about: "
                    + ofNumbers.stream()
                            .limit(SHOWN_PAIRS)
                            .map(GrammarReport::both)
                            .collect(Collectors.joining(", ")));
        }
        return lines;
    }

    private static String both(AlikePair pair) {
        return text(pair.one()) + " / " + text(pair.other());
    }

    private static String text(List<String> words) {
        return String.join(" ", words);
    }
}
