package strawbed.journal.sqlite;

import org.jspecify.annotations.Nullable;

/**
 * A link of the chain as it was found.
 *
 * @param number of the fact that it is of, as far as it can be believed
 * @param numberStands whether its neighbours on the page confirm the number
 * @param previous null for a station's first
 */
record ChainLink(
        long number,
        boolean numberStands,
        String station,
        @Nullable String previous,
        String hash) {
    static ChainLink of(StoredRow row) {
        return new ChainLink(row.number(), row.numberStands(), row.present(1), row.text(2), row.present(3));
    }
}
