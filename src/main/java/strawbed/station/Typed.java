package strawbed.station;

import java.util.Optional;
import strawbed.entry.EntryUnit;
import strawbed.entry.Refusal;

/**
 * What was typed on a pad of digits.
 *
 * @param digits with a point, perhaps
 * @param unit that was chosen; empty for the one that the pad begins with
 * @param onPad whether the pad is shown where a page of usual values comes first
 * @param isLeft whether the step was left open for the next fact
 * @param refused why it was not taken
 */
public record Typed(String digits, Optional<EntryUnit> unit, boolean onPad, boolean isLeft, Optional<Refusal> refused) {
    /** Nothing yet. */
    public static final Typed NOTHING = new Typed("", Optional.empty(), false, false, Optional.empty());

    /** Nothing is typed here; the next fact comes. */
    static final Typed LEFT = new Typed("", Optional.empty(), false, true, Optional.empty());

    /** Longer than any number that is asked for. */
    private static final int MOST = 18;

    Typed and(String more) {
        return digits.length() + more.length() > MOST
                ? this
                : new Typed(digits + more, unit, true, false, Optional.empty());
    }

    /** Without the last digit. */
    Typed shorter() {
        return new Typed(
                digits.isEmpty() ? "" : digits.substring(0, digits.length() - 1), unit, true, false, Optional.empty());
    }

    Typed in(EntryUnit other) {
        return new Typed(digits, Optional.of(other), true, false, Optional.empty());
    }

    Typed pad() {
        return new Typed(digits, unit, true, false, Optional.empty());
    }

    Typed refused(Refusal why) {
        return new Typed(digits, unit, onPad, false, Optional.of(why));
    }
}
