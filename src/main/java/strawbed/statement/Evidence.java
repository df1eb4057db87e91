package strawbed.statement;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import strawbed.speech.Envelope;
import strawbed.speech.Hypothesis;

/**
 * How one sound was heard.
 *
 * @param passes the readings of each hearing, best first; the plain hearing comes first, then those of the sound played
 *     at another speed or with less noise
 * @param freeScore the score of the best reading of the plain sound when any words of the language may be heard; empty
 *     when nobody listened that way
 * @param envelope how loud the sound is, with less noise; empty when that is not known
 */
public record Evidence(List<List<Hypothesis>> passes, OptionalDouble freeScore, Optional<Envelope> envelope) {
    public Evidence {
        passes = passes.stream().map(List::copyOf).toList();
        if (passes.isEmpty()) {
            throw new IllegalArgumentException("A sound is heard at least once");
        }
    }

    /** Evidence of one hearing alone. */
    public static Evidence of(List<Hypothesis> readings) {
        return new Evidence(List.of(readings), OptionalDouble.empty(), Optional.empty());
    }

    /**
     * By how much, for each word, free speech fits the plain sound better than a reading of it; minus infinity where nobody
     * listened that way.
     *
     * @param score of the reading, in the plain hearing
     */
    double freeLead(double score, int words) {
        return freeScore.isEmpty() ? Double.NEGATIVE_INFINITY : (freeScore.getAsDouble() - score) / words;
    }

    /** The readings of the plain sound. */
    public List<Hypothesis> plain() {
        return passes.get(0);
    }
}
