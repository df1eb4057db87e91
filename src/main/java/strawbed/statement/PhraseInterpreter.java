package strawbed.statement;

import java.util.List;
import java.util.Optional;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarMatcher;
import strawbed.grammar.ParseTree;
import strawbed.grammar.RuleId;
import strawbed.speech.Hypothesis;

/** Interprets by any other grammar: the first reading that parses whole is taken, and its tree is the outcome. */
public final class PhraseInterpreter implements Interpreter {
    private final GrammarMatcher matcher;
    private final RuleId root;

    public PhraseInterpreter(Grammar grammar) {
        this.matcher = new GrammarMatcher(grammar);
        this.root = grammar.root();
    }

    @Override
    public Interpretation interpret(List<Hypothesis> hypotheses, SpeechTime speech, Listening listening) {
        for (Hypothesis hypothesis : hypotheses) {
            for (ParseTree tree : matcher.match(root, hypothesis.texts(), 1)) {
                return new Interpretation.Matched(hypothesis.texts(), tree);
            }
        }
        return new Interpretation.NoMatch(
                hypotheses.isEmpty() ? List.of() : hypotheses.get(0).texts());
    }

    @Override
    public Optional<Interpretation> continued(
            Interpretation before, List<Hypothesis> hypotheses, SpeechTime speech, Listening listening) {
        return Optional.empty();
    }

    @Override
    public Interpretation agreed(List<Interpretation> meanings) {
        return Agreement.of(meanings);
    }
}
