package strawbed.crib;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.ParseTree;
import strawbed.grammar.Rule;
import strawbed.grammar.RuleExpansion;
import strawbed.report.CribSheet;
import strawbed.statement.StatementReader;
import strawbed.text.MessageKey;
import strawbed.text.Messages;

/**
 * Makes the sheet of what can be said from a grammar.
 *
 * <p>A rule is on the sheet when its documentation comment has {@code @group}. The groups come in the order that the main
 * file's {@code meta "groups"} gives, others behind them as they are met.
 */
public final class CribContents {
    private static final String GROUP = "group";
    private static final String GROUPS = "groups";
    private static final String CALF = "calf";

    private final Grammar grammar;
    private final GrammarMatcher matcher;
    private final Map<Rule, List<Example>> shown = new LinkedHashMap<>();
    private final Understanding understanding;
    private final List<String> faults = new ArrayList<>();

    private CribContents(Grammar grammar) {
        this.grammar = grammar;
        this.matcher = new GrammarMatcher(grammar);
        grammar.rules().stream()
                .filter(rule -> !rule.documentation().tags(GROUP).isEmpty())
                .forEach(rule -> shown.put(rule, Example.of(rule)));
        Set<String> facts = StatementReader.factRules();
        this.understanding = new Understanding(
                grammar,
                words(shown, rule -> rule.id().name().equals(CALF)),
                words(shown, rule -> facts.contains(rule.id().name())));
    }

    private static List<List<String>> words(Map<Rule, List<Example>> shown, Predicate<Rule> wanted) {
        return shown.entrySet().stream()
                .filter(entry -> wanted.test(entry.getKey()))
                .flatMap(entry -> entry.getValue().stream())
                .map(Example::words)
                .toList();
    }

    /**
     * The sheet of a grammar.
     *
     * @param version tells one state of the grammar's files from another
     * @throws CribException if an example is not understood as its rule, or a fact has none
     */
    public static CribSheet of(Grammar grammar, String version, Messages messages) {
        List<CribSheet.Group> groups = new CribContents(grammar).groups();
        return new CribSheet(
                messages.text(MessageKey.CRIB_TITLE),
                List.of(
                        messages.text(MessageKey.CRIB_ORDER),
                        messages.text(MessageKey.CRIB_LEFT_OUT),
                        messages.text(MessageKey.CRIB_CHOOSE)),
                groups,
                messages.text(MessageKey.CRIB_SOURCE, version),
                messages.text(MessageKey.CRIB_PAGE, "{0}", "{1}"),
                grammar.language());
    }

    private List<CribSheet.Group> groups() {
        Map<String, List<String>> lines = new LinkedHashMap<>();
        grammar.meta(GROUPS).stream()
                .flatMap(titles -> Arrays.stream(titles.split(";")))
                .forEach(title -> lines.put(title.strip(), new ArrayList<>()));
        Set<String> untold = new TreeSet<>(StatementReader.factRules());
        shown.forEach((rule, examples) -> {
            String title = rule.documentation().tags(GROUP).get(0).text();
            List<String> own = lines(rule, examples);
            lines.computeIfAbsent(title, fresh -> new ArrayList<>()).addAll(own);
            if (!own.isEmpty()) {
                untold.remove(rule.id().name());
            }
        });
        if (faults.isEmpty()) {
            untold.forEach(rule -> faults.add("no example tells how to say what the rule $" + rule
                    + " stands for. Put \"/** @group Navel @example the words */\" before it, the tags in lines of"
                    + " their own."));
        }
        if (!faults.isEmpty()) {
            throw new CribException(faults);
        }
        return lines.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> new CribSheet.Group(group.getKey(), group.getValue()))
                .toList();
    }

    private List<String> lines(Rule rule, List<Example> examples) {
        List<Line> lines = new ArrayList<>();
        List<String> phrases = new ArrayList<>();
        for (Example example : examples) {
            Optional<ParseTree> tree = tried(example);
            if (example.isChoice()) {
                phrases.add(example.text());
            } else if (tree.isPresent()) {
                Line line = Line.of(example.words(), choices(example, tree.get()), endsOpen(rule));
                Optional<Line> both = lines.isEmpty() ? Optional.empty() : line.leavingOut(lines.get(lines.size() - 1));
                both.ifPresent(folded -> lines.remove(lines.size() - 1));
                lines.add(both.orElse(line));
            }
        }
        if (!phrases.isEmpty()) {
            lines.add(0, Line.ofChoices(phrases));
        }
        return lines.stream().map(Line::text).toList();
    }

    private Optional<ParseTree> tried(Example example) {
        Optional<ParseTree> tree = understanding.of(example);
        if (tree.isEmpty()) {
            faults.add(example.position().file() + ", line "
                    + example.position().line() + ": \"" + example.text() + "\" " + whyNot(example));
        }
        return tree;
    }

    private String whyNot(Example example) {
        String rule = "$" + example.rule().id().name();
        int fit = matcher.longestPrefix(example.rule().id(), example.words());
        if (fit < example.words().size()) {
            return "cannot be said by the rule " + rule + ": \""
                    + example.words().get(fit) + "\" does not fit there.";
        }
        return matcher.match(example.rule().id(), example.words(), 1).isEmpty()
                ? "is not at its end by the rule " + rule + "."
                : "is not understood without a question as what the rule " + rule + " stands for.";
    }

    /** The words to choose from inside an example, each of them tried in its place. */
    private Map<Integer, Line.Choice> choices(Example example, ParseTree tree) {
        Map<Integer, Line.Choice> choices = new HashMap<>();
        tree.descendants().skip(1).forEach(part -> {
            List<List<String>> phrases = grammar.rules().stream()
                    .filter(rule -> rule.id().name().equals(part.rule()))
                    .filter(rule -> matcher.match(rule.id(), part.words(), 1).size() == 1)
                    .map(rule -> Choices.of(rule, grammar::rule))
                    .filter(found -> !found.isEmpty())
                    .findFirst()
                    .orElse(List.of());
            if (phrases.size() > 1) {
                int at = part.from() - tree.from();
                phrases.forEach(
                        phrase -> tried(replaced(example, at, part.words().size(), phrase)));
                choices.put(
                        at,
                        new Line.Choice(
                                part.words().size(),
                                phrases.stream()
                                        .map(phrase -> String.join(" ", phrase))
                                        .toList()));
            }
        });
        return choices;
    }

    private static Example replaced(Example example, int at, int length, List<String> phrase) {
        List<String> words = new ArrayList<>(example.words().subList(0, at));
        words.addAll(phrase);
        words.addAll(example.words().subList(at + length, example.words().size()));
        return new Example(example.rule(), words, example.position(), false);
    }

    private static boolean endsOpen(Rule rule) {
        return parts(rule.expansion()).contains(RuleExpansion.Special.GARBAGE);
    }

    private static Set<RuleExpansion> parts(RuleExpansion expansion) {
        Set<RuleExpansion> all =
                expansion.parts().stream().flatMap(part -> parts(part).stream()).collect(Collectors.toSet());
        all.add(expansion);
        return all;
    }
}
