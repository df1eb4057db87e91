package strawbed.statement;

import java.util.List;
import java.util.Optional;
import strawbed.grammar.ParseTree;

/**
 * One meaning that one reading of the sound allows.
 *
 * @param score of the reading; comparable within one sound
 */
record Reading(List<String> words, ParseTree tree, Interpretation meaning, double score) {
    /** Whether nothing has to be asked but for the sound. */
    boolean isClear() {
        return !(meaning instanceof Interpretation.Unsure);
    }

    /** Whether two readings come to the same record. */
    boolean sameMeaning(Reading other) {
        return meaning.sense().equals(other.meaning().sense());
    }

    /** Whether two readings name different calves. Opening a calf and naming one are different things to begin with. */
    boolean namesOtherCalf(Reading other) {
        return calf().isPresent()
                && other.calf().isPresent()
                && isNew(calf().get()) == isNew(other.calf().get())
                && !calf().equals(other.calf());
    }

    private static boolean isNew(CalfReference calf) {
        return calf instanceof CalfReference.New;
    }

    private Optional<CalfReference> calf() {
        if (meaning instanceof Interpretation.Understood understood) {
            return Optional.of(understood.statement().calf());
        }
        return meaning instanceof Interpretation.Unsure unsure
                ? Optional.of(unsure.best().calf())
                : Optional.empty();
    }

    /** How many facts it tells. */
    int facts() {
        if (meaning instanceof Interpretation.Understood understood) {
            return understood.statement().facts().size();
        }
        return meaning instanceof Interpretation.Unsure unsure
                ? unsure.best().facts().size()
                : 0;
    }
}
