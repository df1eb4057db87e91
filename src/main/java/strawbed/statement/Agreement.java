package strawbed.statement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Makes one outcome of several hearings of the same sound. */
final class Agreement {
    private Agreement() {}

    /** See {@link Interpreter#agreed}. */
    static Interpretation of(List<Interpretation> meanings) {
        Interpretation best = meanings.stream()
                .max(Comparator.comparingInt(Agreement::rank)
                        .thenComparingInt(meaning -> votes(meaning, meanings))
                        .thenComparingInt(meaning -> -meanings.indexOf(meaning)))
                .orElseThrow();
        if (rank(best) < 2) {
            return best;
        }
        List<Interpretation> doubting = meanings.stream()
                .filter(other -> rank(other) == 1 && other.sense().equals(best.sense()))
                .toList();
        if (2 * doubting.size() > votes(best, meanings)) {
            return doubting.get(0);
        }
        if (votes(best, meanings) > 1) {
            return best;
        }
        boolean disputed = meanings.stream()
                .anyMatch(other -> rank(other) > 0 && !other.sense().equals(best.sense()));
        return disputed || opensFreeSpeech(best) ? alone(best, meanings) : best;
    }

    /** Free speech takes any words, so that much other speech fits it: one hearing is not enough. */
    private static boolean opensFreeSpeech(Interpretation meaning) {
        return meaning instanceof Interpretation.Understood understood
                && understood.tree().descendants().anyMatch(tree -> tree.rule().equals("open_speech"));
    }

    /** What hearings disagree on is doubted; a control is not obeyed, a sentence of another grammar is not taken. */
    private static Interpretation alone(Interpretation best, List<Interpretation> meanings) {
        List<String> others = meanings.stream()
                .filter(other -> !other.sense().equals(best.sense()))
                .map(Interpretation::words)
                .filter(words -> !words.equals(best.words()))
                .findFirst()
                .orElse(List.of());
        return doubted(best, others);
    }

    /** A meaning that the sound does not support alone, because it fits other words as well. */
    static Interpretation doubted(Interpretation meaning, List<String> otherWords) {
        Doubt doubt = new Doubt.SoundsLike(otherWords);
        if (meaning instanceof Interpretation.Understood understood) {
            return new Interpretation.Unsure(
                    understood.words(), understood.tree(), understood.statement(), List.of(doubt));
        }
        if (meaning instanceof Interpretation.Unsure unsure) {
            List<Doubt> doubts = new ArrayList<>(unsure.doubts());
            doubts.add(doubt);
            return new Interpretation.Unsure(unsure.words(), unsure.tree(), unsure.best(), doubts);
        }
        return new Interpretation.NoMatch(meaning.words());
    }

    private static int votes(Interpretation meaning, List<Interpretation> meanings) {
        return (int) meanings.stream()
                .filter(other -> other.sense().equals(meaning.sense()) && rank(other) > 0)
                .count();
    }

    /** What is whole comes before what must be asked, and that before what is not understood. */
    private static int rank(Interpretation meaning) {
        if (meaning instanceof Interpretation.NoMatch) {
            return 0;
        }
        return meaning instanceof Interpretation.Unsure ? 1 : 2;
    }
}
