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

    /** Whether two readings tell the same kinds of facts, and not the same of each. */
    boolean tellsOtherValue(Reading other) {
        return facts() > 0 && kinds().equals(other.kinds()) && !sameMeaning(other);
    }

    private List<String> kinds() {
        return statement().stream()
                .flatMap(statement -> statement.facts().stream())
                .map(fact -> fact.event().type())
                .toList();
    }

    private static boolean isNew(CalfReference calf) {
        return calf instanceof CalfReference.New;
    }

    private Optional<CalfReference> calf() {
        return statement().map(Statement::calf);
    }

    private Optional<Statement> statement() {
        if (meaning instanceof Interpretation.Understood understood) {
            return Optional.of(understood.statement());
        }
        return meaning instanceof Interpretation.Unsure unsure ? Optional.of(unsure.best()) : Optional.empty();
    }

    /** How many facts it tells. */
    int facts() {
        return statement().map(statement -> statement.facts().size()).orElse(0);
    }
}
