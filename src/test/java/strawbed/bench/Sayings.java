package strawbed.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import strawbed.grammar.Grammar;
import strawbed.grammar.SentenceMaker;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;
import strawbed.statement.CalfReference;
import strawbed.statement.Interpretation;
import strawbed.statement.Interpreter;
import strawbed.statement.Listening;
import strawbed.statement.SpeechTime;
import strawbed.testkit.SpokenSentence;

/**
 * Sentences made from the grammar: statements of one to three events about a calf on the list that are understood when
 * read, that say no kind of event twice and are not of two minds ("died, heifer"; "found, born").
 */
final class Sayings {
    private static final int MOST_FACTS = 3;
    private static final int TRIED = 60_000;

    private final Grammar grammar;
    private final Interpreter interpreter;

    Sayings(Grammar grammar, Interpreter interpreter) {
        this.grammar = grammar;
        this.interpreter = interpreter;
    }

    /** So many sentences, a third each of one, two and three events. */
    List<SpokenSentence> made(int count, long seed) {
        List<Set<SpokenSentence>> byFacts =
                List.of(new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>());
        for (List<String> words : new SentenceMaker(grammar).sample(grammar.ruleNamed("utterance"), TRIED, seed)) {
            if (words.isEmpty() || words.contains(SentenceMaker.ANYTHING)) {
                continue;
            }
            if (read(words) instanceof Interpretation.Understood understood
                    && understood.statement().calf() instanceof CalfReference.Numbered
                    && isNatural(understood, words)) {
                Set<SpokenSentence> same =
                        byFacts.get(understood.statement().facts().size() - 1);
                if (same.size() < (count + MOST_FACTS - 1) / MOST_FACTS) {
                    same.add(new SpokenSentence(
                            String.join(" ", words),
                            SpokenSentence.calfOf(understood.statement()),
                            SpokenSentence.eventsOf(understood.statement())));
                }
            }
        }
        List<List<SpokenSentence>> lists = byFacts.stream().map(List::copyOf).toList();
        List<SpokenSentence> mixed = new ArrayList<>();
        for (int i = 0; mixed.size() < count; i++) {
            mixed.add(lists.get(i % MOST_FACTS).get(i / MOST_FACTS));
        }
        return mixed;
    }

    private Interpretation read(List<String> words) {
        List<RecognizedWord> said = words.stream()
                .map(word -> new RecognizedWord(word, Duration.ZERO, Duration.ZERO))
                .toList();
        return interpreter.interpret(
                List.of(new Hypothesis(said, 0)),
                new SpeechTime(SpokenSentence.SPOKEN_AT, SpokenSentence.ZONE),
                new Listening(SpokenSentence.OPEN_CALVES, false));
    }

    private static boolean isNatural(Interpretation.Understood understood, List<String> words) {
        List<String> types = understood.statement().facts().stream()
                .map(fact -> fact.event().type())
                .toList();
        if (types.isEmpty() || types.size() > MOST_FACTS || new HashSet<>(types).size() < types.size()) {
            return false;
        }
        boolean dead = words.contains("died") || words.contains("stillborn") || words.contains("dead");
        boolean found = words.contains("found") && words.contains("born");
        return types.size() == 1 || !(dead || found);
    }
}
