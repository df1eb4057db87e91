package strawbed.hearing;

import java.time.Duration;
import java.util.List;
import java.util.function.Predicate;
import strawbed.audio.Sound;
import strawbed.speech.RecognizedWord;

/** How an utterance that goes on comes along, from the words that are heard so far. Owned by one thread. */
final class Course {
    private final Predicate<List<String>> promises;
    private long given;
    private List<String> words = List.of();
    private long wordsSince;
    private boolean isPromising = true;
    private long lastPromising;

    /**
     * For an utterance of which nothing was given yet.
     *
     * @param promises whether these words may become a sentence; so may none
     * @param start its first sample, in its source
     */
    Course(Predicate<List<String>> promises, long start) {
        this.promises = promises;
        this.given = start;
        this.wordsSince = start;
        this.lastPromising = start;
    }

    /** Takes the words that were heard up to a sample. */
    void take(List<String> heard, long sample) {
        given = sample;
        List<String> spoken = withoutNoiseBehind(heard);
        if (!spoken.equals(words)) {
            words = spoken;
            wordsSince = sample;
            isPromising = promises.test(spoken);
        }
        if (isPromising) {
            lastPromising = sample;
        }
    }

    /** Up to this sample of the source the recognisers have it. */
    long given() {
        return given;
    }

    /** The words so far, without noise behind them. */
    List<String> words() {
        return words;
    }

    /** Whether these words are all for a while. Asked once; whatever the answer, only other words change it. */
    boolean isAtRest(Duration aWhile) {
        if (words.isEmpty() || time(given - wordsSince).compareTo(aWhile) < 0) {
            return false;
        }
        wordsSince = Long.MAX_VALUE;
        return true;
    }

    /** For how long the words have not been such that may become a sentence. */
    Duration sincePromising() {
        return time(given - lastPromising);
    }

    private static List<String> withoutNoiseBehind(List<String> words) {
        int end = words.size();
        while (end > 0 && words.get(end - 1).equals(RecognizedWord.UNKNOWN)) {
            end--;
        }
        return words.subList(0, end);
    }

    private static Duration time(long samples) {
        return Duration.ofMillis(samples * 1000 / Sound.RATE);
    }
}
