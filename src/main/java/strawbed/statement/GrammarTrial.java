package strawbed.statement;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import strawbed.grammar.Grammar;
import strawbed.grammar.Phrases;
import strawbed.grammar.Surroundings;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;

/**
 * Tries whether every part of a grammar can be turned into meaning. A grammar may be well written and still have a tag
 * that the record does not know, which would be found out only when somebody says it.
 */
public final class GrammarTrial {
    private GrammarTrial() {}

    /**
     * What went wrong.
     *
     * @param sentence that cannot be turned into meaning
     * @param problem why, naming the rule
     */
    public record Fault(String sentence, String problem) {}

    /**
     * Reads a short sentence through every word and every tag that can be said.
     *
     * @param speech when they are said to be spoken
     * @return each fault once, with the first sentence that has it
     * @throws strawbed.grammar.GrammarException when a rule is missing that every utterance needs
     */
    public static List<Fault> run(Grammar grammar, SpeechTime speech) {
        Interpreter interpreter = new UtteranceInterpreter(grammar, Thresholds.set());
        Listening listening = new Listening(Set.of(), true);
        List<Fault> faults = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (List<String> words : new Surroundings(grammar, grammar.root(), new Phrases(grammar)).throughEveryPart()) {
            if (words.isEmpty()) {
                continue;
            }
            try {
                interpreter.interpret(List.of(reading(words)), speech, listening);
            } catch (RuntimeException failure) {
                // Whatever a reader stumbles over in a farm's grammar, it would stumble over at night.
                String problem = failure.getMessage() == null ? failure.toString() : failure.getMessage();
                if (seen.add(problem)) {
                    faults.add(new Fault(String.join(" ", words), problem));
                }
            }
        }
        return faults;
    }

    private static Hypothesis reading(List<String> words) {
        return new Hypothesis(
                words.stream()
                        .map(word -> new RecognizedWord(word, Duration.ZERO, Duration.ZERO))
                        .toList(),
                0);
    }
}
