package strawbed.statement;

import java.util.List;
import java.util.Optional;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.RuleId;
import strawbed.speech.Hypothesis;

/** Interprets by any other grammar: the tree of the reading that is taken is the outcome. */
public final class PhraseInterpreter implements Interpreter {
    private final GrammarMatcher matcher;
    private final RuleId root;
    private final Thresholds thresholds;

    public PhraseInterpreter(Grammar grammar, Thresholds thresholds) {
        this.matcher = new GrammarMatcher(grammar);
        this.root = grammar.root();
        this.thresholds = thresholds;
    }

    @Override
    public Interpretation interpret(Evidence evidence, SpeechTime speech, Listening listening) {
        return Weighing.of(evidence, thresholds, this::read)
                .map(Weighed::meaning)
                .orElseGet(() -> new Interpretation.NoMatch(evidence.plain().stream()
                        .findFirst()
                        .map(Hypothesis::texts)
                        .orElse(List.of())));
    }

    @Override
    public List<Misgiving> misgivings(Evidence evidence, SpeechTime speech, Listening listening) {
        return Weighing.of(evidence, thresholds, this::read)
                .map(Weighed::misgivings)
                .orElse(List.of());
    }

    private Optional<Reading> read(Hypothesis hypothesis) {
        List<String> words = hypothesis.texts();
        return matcher.match(root, words, 1).stream()
                .findFirst()
                .map(tree -> new Reading(words, tree, new Interpretation.Matched(words, tree), hypothesis.score()));
    }

    @Override
    public Optional<Interpretation> continued(
            Interpretation before, List<Hypothesis> hypotheses, SpeechTime speech, Listening listening) {
        return Optional.empty();
    }

    @Override
    public boolean begins(List<String> words) {
        return matcher.isPrefix(root, words);
    }
}
