package strawbed.dialog;

import org.jspecify.annotations.Nullable;
import strawbed.event.CalfId;

/** Whose facts a pending statement holds, as the record knows calves now. */
public sealed interface Target {
    /** A calf of the record. */
    record Known(CalfId id, @Nullable String number) implements Target {}

    /** A calf whose record the confirmation opens. A yes to a number that is not on the list opens one too. */
    record Opened(
            CalfId id, @Nullable String number, @Nullable String dam) implements Target {}

    /** The barn. */
    record Barn() implements Target {}

    /** It cannot be told which calf is meant. */
    record Unknown(Reason reason) implements Target {}

    /** Why it cannot be told. */
    enum Reason {
        NO_CALF_NAMED_BEFORE,
        FIRST_OR_SECOND,
        NO_SUCH_CALF
    }
}
