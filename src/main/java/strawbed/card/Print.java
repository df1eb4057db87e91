package strawbed.card;

import org.jspecify.annotations.Nullable;
import strawbed.calf.CalfRecord;

/**
 * Which print of a calf's card or record sheet one is.
 *
 * @param number 1 for the first that the record knows of; null for a copy that is not noted in it
 */
public record Print(@Nullable Integer number) {
    public static final Print COPY = new Print(null);

    /** The next of this calf. */
    public static Print next(CalfRecord calf) {
        return new Print(calf.prints().size() + 1);
    }
}
