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

    /** Whether two readings name different calves of the record. A calf that is opened cannot take another's facts. */
    boolean namesOtherCalf(Reading other) {
        return calf().isPresent() && other.calf().isPresent() && !calf().equals(other.calf());
    }

    private Optional<CalfReference> calf() {
        CalfReference named = null;
        if (meaning instanceof Interpretation.Understood understood) {
            named = understood.statement().calf();
        } else if (meaning instanceof Interpretation.Unsure unsure) {
            named = unsure.best().calf();
        }
        return Optional.ofNullable(named instanceof CalfReference.New ? null : named);
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
