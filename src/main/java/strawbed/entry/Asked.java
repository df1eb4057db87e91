package strawbed.entry;

import java.util.function.Predicate;

/**
 * A step of a list of steps.
 *
 * @param when whether it is asked, by what was answered before
 */
record Asked(Step step, Predicate<Given> when) {
    static Asked always(Step step) {
        return new Asked(step, given -> true);
    }
}
