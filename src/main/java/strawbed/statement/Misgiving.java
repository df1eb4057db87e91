package strawbed.statement;

import java.time.Duration;
import java.util.List;

/** What of the sound speaks against a meaning, with the limit that it broke; for whoever writes a grammar. */
public sealed interface Misgiving {
    /**
     * Other words fit the sound better, whether they mean anything or not.
     *
     * @param behind by how much, as log likelihood, on the average of all hearings
     */
    record LagsBehind(double behind, double most) implements Misgiving {}

    /** Few of the hearings had it before all other meanings. */
    record FewHearings(int first, int hearings) implements Misgiving {}

    /**
     * Any words of the language fit the sound better.
     *
     * @param better by how much for each word, as log likelihood
     */
    record FreeSpeechFits(double better, double most) implements Misgiving {}

    /** Sound as loud as the words lies in none of them. */
    record LeavesOut(Duration sound, Duration most) implements Misgiving {}

    /**
     * Words of another meaning fit nearly as well.
     *
     * @param behind by how much they are behind
     * @param least how far they would have to be behind
     */
    record Rival(List<String> words, double behind, double least) implements Misgiving {
        public Rival {
            words = List.copyOf(words);
        }
    }
}
