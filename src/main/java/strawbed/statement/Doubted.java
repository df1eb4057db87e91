package strawbed.statement;

import java.util.ArrayList;
import java.util.List;

/** Makes a question of a meaning. */
final class Doubted {
    private Doubted() {}

    /** A control is not obeyed and a sentence of another grammar not taken; what a statement says is asked about. */
    static Interpretation because(Interpretation meaning, Doubt doubt) {
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
}
