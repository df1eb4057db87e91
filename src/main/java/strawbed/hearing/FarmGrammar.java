package strawbed.hearing;

import java.util.ArrayList;
import java.util.List;
import strawbed.grammar.Grammar;
import strawbed.grammar.SentenceMaker;
import strawbed.speech.Lexicon;
import strawbed.speech.Vocabulary;

/**
 * What can be said now, with the open calves put in.
 *
 * @param grammar for the parser
 * @param vocabulary for the recogniser, made from the same rules
 */
public record FarmGrammar(Grammar grammar, Vocabulary vocabulary) {
    private static final long SEED = 20260101;

    private static final int SAMPLED = 10_000;

    /** The sentences of any other grammar, for the recogniser. */
    public static Vocabulary phrases(Grammar grammar) {
        SentenceMaker maker = new SentenceMaker(grammar);
        List<List<String>> sentences = new ArrayList<>(maker.sample(grammar.root(), SAMPLED, SEED));
        sentences.addAll(maker.cover(grammar.root()));
        sentences.removeIf(List::isEmpty);
        return new Vocabulary(sentences, Lexicon.empty());
    }
}
