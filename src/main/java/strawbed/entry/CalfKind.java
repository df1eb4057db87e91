package strawbed.entry;

import static java.util.Objects.requireNonNull;
import static strawbed.entry.Asked.always;

import java.util.List;
import java.util.function.Function;
import strawbed.statement.CalfReference;

/** Whose facts can be entered, beside the calves on the list. */
// What a function captures, the checker cannot see: these capture nothing, and the lists are never changed.
@SuppressWarnings("ImmutableEnumChecker")
public enum CalfKind {
    /** A new calf; its number and its dam may be told. */
    NEW(
            List.of(always(Steps.perhapsCalled(Question.NEW_NUMBER)), always(Steps.perhapsCalled(Question.DAM))),
            given -> new CalfReference.New(given.animal(Question.NEW_NUMBER), given.animal(Question.DAM))),
    /** A calf without a number. */
    OF_COW(ofCow(), CalfKind::ofCow),
    /** A calf without a number gets one. */
    RENUMBERED(
            List.of(ofCow().get(0), always(Steps.called(Question.NEW_NUMBER)), ofCow().get(1)),
            given -> new CalfReference.Renumbered(ofCow(given), requireNonNull(given.animal(Question.NEW_NUMBER)))),
    BARN(List.of(), given -> new CalfReference.Barn());

    private final List<Asked> steps;
    private final Function<Given, CalfReference> reference;

    CalfKind(List<Asked> steps, Function<Given, CalfReference> reference) {
        this.steps = steps;
        this.reference = reference;
    }

    List<Asked> steps() {
        return steps;
    }

    CalfReference reference(Given given) {
        return reference.apply(given);
    }

    private static List<Asked> ofCow() {
        return List.of(
                always(Steps.called(Question.DAM)), always(new Step.Choose(Question.ORDER, Option.counts(1, 3), true)));
    }

    private static CalfReference.OfCow ofCow(Given given) {
        return new CalfReference.OfCow(requireNonNull(given.animal(Question.DAM)), given.count(Question.ORDER));
    }
}
