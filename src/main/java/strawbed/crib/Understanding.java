package strawbed.crib;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import strawbed.grammar.Grammar;
import strawbed.grammar.ParseTree;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.statement.Doubt;
import strawbed.statement.Interpretation;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.statement.Statement;
import strawbed.statement.StatementReader;
import strawbed.statement.Thresholds;
import strawbed.statement.UtteranceInterpreter;

/** Tries whether the program takes words for what a rule stands for, as it would when they were heard without fault. */
final class Understanding {
    /** Any day will do: times are counted from it and not shown. */
    private static final SpeechTime NOON = new SpeechTime(Instant.parse("2026-01-15T12:00:00Z"), ZoneOffset.UTC);

    private final UtteranceInterpreter interpreter;
    private final List<List<String>> calves;
    private final List<List<String>> facts;

    /**
     * @param calves ways to name a calf, for words that need one before them
     * @param facts words for facts, for words that need one beside them
     */
    Understanding(Grammar grammar, List<List<String>> calves, List<List<String>> facts) {
        this.interpreter = new UtteranceInterpreter(grammar, Thresholds.set());
        this.calves = calves;
        this.facts = facts;
    }

    /** How the rule matched the example, in the shortest sentence in which it is understood without a question. */
    Optional<ParseTree> of(Example example) {
        String rule = example.rule().id().name();
        boolean isFact = StatementReader.factRules().contains(rule);
        return sentences(example.words(), isFact)
                .flatMap(sentence -> understood(sentence, isFact).stream())
                .flatMap(ParseTree::descendants)
                .filter(tree -> tree.rule().equals(rule) && tree.words().equals(example.words()))
                .findFirst();
    }

    private Stream<List<String>> sentences(List<String> words, boolean isFact) {
        Stream<List<String>> shortest =
                Stream.concat(Stream.of(words), calves.stream().map(calf -> joined(calf, words)));
        if (isFact) {
            return shortest;
        }
        Stream<List<String>> asCalf = facts.stream().map(fact -> joined(words, fact));
        Stream<List<String>> asTime =
                calves.stream().limit(1).flatMap(calf -> facts.stream().map(fact -> joined(joined(calf, fact), words)));
        return Stream.of(shortest, asCalf, asTime).flatMap(some -> some);
    }

    private static List<String> joined(List<String> first, List<String> second) {
        return Stream.concat(first.stream(), second.stream()).toList();
    }

    private Optional<ParseTree> understood(List<String> sentence, boolean isFact) {
        Interpretation meaning = heard(sentence, Set.of());
        if (meaning instanceof Interpretation.Unsure unsure) {
            for (Doubt doubt : unsure.doubts()) {
                // Whether the calf is in the farm's record says nothing about the words.
                if (doubt instanceof Doubt.NotListed unlisted) {
                    meaning = heard(sentence, Set.of(unlisted.number()));
                }
            }
        }
        if (meaning instanceof Interpretation.ControlHeard control) {
            return isFact ? Optional.empty() : Optional.of(control.tree());
        }
        if (meaning instanceof Interpretation.Understood understood) {
            return tree(understood.tree(), understood.statement(), isFact);
        }
        // A clock time may be long ago at noon and just past when somebody says it.
        return meaning instanceof Interpretation.Unsure unsure
                        && unsure.doubts().stream().allMatch(Doubt.LongAgo.class::isInstance)
                ? Optional.ofNullable(unsure.tree()).flatMap(tree -> tree(tree, unsure.best(), isFact))
                : Optional.empty();
    }

    /** Words that stand for a fact must tell that one and no other. */
    private static Optional<ParseTree> tree(ParseTree tree, Statement statement, boolean isFact) {
        return !isFact || statement.facts().size() == 1 ? Optional.of(tree) : Optional.empty();
    }

    private Interpretation heard(List<String> sentence, Set<String> openCalves) {
        List<RecognizedWord> words = new ArrayList<>();
        for (String word : sentence) {
            Duration at = Duration.ofSeconds(words.size());
            words.add(new RecognizedWord(word, at, at.plusSeconds(1)));
        }
        return interpreter.interpret(List.of(new Hypothesis(words, 0)), NOON, new Listening(openCalves, true));
    }
}
