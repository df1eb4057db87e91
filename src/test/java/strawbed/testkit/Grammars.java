package strawbed.testkit;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import strawbed.grammar.GrammarSource;
import strawbed.hearing.FarmGrammar;
import strawbed.hearing.Phrasebook;
import strawbed.speech.Hypothesis;
import strawbed.speech.RecognizedWord;

/** The farm's grammar, as tests use it. */
public final class Grammars {
    private Grammars() {}

    /** The files of the folder grammar. */
    public static GrammarSource source() {
        return GrammarSource.directory(Path.of("grammar"));
    }

    /** With the table's calves on the list. */
    public static FarmGrammar ofTheTable() {
        return Phrasebook.read(source()).with(SpokenSentence.OPEN_CALVES);
    }

    /** A reading of these words, a second each. */
    public static Hypothesis reading(String words, double score) {
        List<String> texts = Arrays.asList(words.split(" "));
        return new Hypothesis(
                IntStream.range(0, texts.size())
                        .mapToObj(
                                i -> new RecognizedWord(texts.get(i), Duration.ofSeconds(i), Duration.ofSeconds(i + 1)))
                        .toList(),
                score);
    }
}
