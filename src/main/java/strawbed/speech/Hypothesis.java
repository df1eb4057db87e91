package strawbed.speech;

import java.util.List;

/**
 * One reading of what was said.
 *
 * @param words in order, at least one
 * @param score the higher the better; comparable among the readings of one sound only
 */
public record Hypothesis(List<RecognizedWord> words, double score) {
    public Hypothesis {
        words = List.copyOf(words);
        if (words.isEmpty() || Double.isNaN(score)) {
            throw new IllegalArgumentException("A reading has words and a score: " + words + ", " + score);
        }
    }

    /** The words without their times. */
    public List<String> texts() {
        return words.stream().map(RecognizedWord::text).toList();
    }
}
