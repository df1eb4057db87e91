package strawbed.hearing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import strawbed.grammar.Grammar;
import strawbed.grammar.GrammarReader;
import strawbed.grammar.GrammarSource;
import strawbed.grammar.RuleId;
import strawbed.grammar.SentenceMaker;
import strawbed.speech.Lexicon;
import strawbed.speech.RecognizedWord;
import strawbed.speech.Vocabulary;

/**
 * What can be said on this farm now: the grammar's files with the list of open calves put in, and the sentences that
 * the recogniser is given. Immutable; made anew when the list changes, which takes a fraction of a second.
 *
 * @param grammar for the parser
 * @param vocabulary for the recogniser, made from the same rules
 */
public record FarmGrammar(Grammar grammar, Vocabulary vocabulary) {
    private static final String MAIN = "strawbed.abnf";
    private static final String CALVES = "calves.abnf";

    /** Every run, on every machine, hears with the same sentences. */
    private static final long SEED = 20260101;

    /** Sentences sampled by weight; more than this gains nothing (measured: 10,000 are as good as 30,000). */
    private static final int SAMPLED = 20_000;

    /** Parts of sentences, for people who pause. */
    private static final int SAMPLED_PARTS = 1_500;

    /** Sentences of other speech: three for ten of ours rejects best for what it costs (measured). */
    private static final int DECOYS = 3_000;

    /**
     * Reads the grammar and puts the calves in.
     *
     * @param source the grammar's files
     * @param openCalves numbers of open calves; those over 9999 or not plain numbers cannot be said and are left out
     * @throws strawbed.grammar.GrammarException if a file has a mistake
     */
    public static FarmGrammar read(GrammarSource source, Collection<String> openCalves) {
        Grammar grammar = GrammarReader.read(source.with(CALVES, calves(openCalves)), MAIN);
        Lexicon lexicon = Lexicon.parse("lexicon.txt", source.text("lexicon.txt"));
        SentenceMaker maker = new SentenceMaker(grammar);
        RuleId utterance = grammar.ruleNamed("utterance");
        RuleId facts = grammar.ruleNamed("facts");
        List<List<String>> sentences = new ArrayList<>(maker.sample(utterance, SAMPLED, SEED));
        sentences.addAll(maker.cover(utterance));
        sentences.addAll(maker.sample(facts, SAMPLED_PARTS, SEED));
        sentences.addAll(decoys(source.text("decoys.txt"), grammar));
        return new FarmGrammar(grammar, new Vocabulary(sentences, lexicon));
    }

    /** The sentences of any other grammar, with decoys among them. */
    public static Vocabulary phrases(Grammar grammar, GrammarSource own) {
        SentenceMaker maker = new SentenceMaker(grammar);
        List<List<String>> sentences = new ArrayList<>(maker.sample(grammar.root(), SAMPLED, SEED));
        sentences.addAll(maker.cover(grammar.root()));
        sentences.removeIf(List::isEmpty);
        return new Vocabulary(sentences, Lexicon.parse("lexicon.txt", own.text("lexicon.txt")));
    }

    /** The list of open calves as a grammar file: each number in the ways in which it can be said. */
    static String calves(Collection<String> numbers) {
        String alternatives = numbers.stream()
                .filter(number -> number.matches("[0-9]{1,4}"))
                .map(Integer::valueOf)
                .collect(Collectors.toCollection(TreeSet::new))
                .stream()
                .flatMap(number -> SpokenForms.of(number).stream().map(form -> form + " {" + number + "}"))
                .collect(Collectors.joining("\n    | "));
        return """
                #ABNF 1.0 UTF-8;
                language en-US;
                mode voice;
                tag-format <semantics/1.0-literals>;
                public $listed = %s;
                """.formatted(alternatives.isEmpty() ? "$VOID" : alternatives);
    }

    /** Random chains of common words, some of our own among them, but never a calf and a number. */
    private static List<List<String>> decoys(String text, Grammar grammar) {
        List<String> common = text.lines()
                .filter(line -> !line.startsWith("#"))
                .flatMap(line -> List.of(line.strip().split("\\s+")).stream())
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
        List<String> ours = grammar.tokens(List.of(grammar.ruleNamed("facts"))).stream()
                .filter(word -> !word.equals(RecognizedWord.UNKNOWN))
                .toList();
        SplittableRandom random = new SplittableRandom(SEED);
        List<List<String>> chains = new ArrayList<>();
        for (int i = 0; i < DECOYS; i++) {
            List<String> chain = new ArrayList<>();
            int length = 2 + random.nextInt(8);
            for (int k = 0; k < length; k++) {
                List<String> from = random.nextInt(8) == 0 ? ours : common;
                chain.add(from.get(random.nextInt(from.size())));
            }
            chains.add(chain);
        }
        return chains;
    }
}
