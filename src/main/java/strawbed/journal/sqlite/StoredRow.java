package strawbed.journal.sqlite;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import strawbed.journal.sqlite.SerialType.Damaged;

/**
 * A row as it was found on a page.
 *
 * @param number its sequence, as far as it can be believed
 * @param values of its columns: text, Long, {@link Damaged} or null; the first is null where it is the number
 * @param page where it was found
 * @param isListed whether the page lists it among its cells. Any other may be an old copy, or part of one.
 * @param numberStands whether its neighbours on the page confirm its number, or it has none
 * @param fault why its values are not whole, as a clause; null if they are
 */
record StoredRow(
        RowKind kind,
        long number,
        List<@Nullable Object> values,
        int page,
        boolean isListed,
        boolean numberStands,
        @Nullable String fault) {
    StoredRow {
        values = Collections.unmodifiableList(new ArrayList<>(values));
    }

    StoredRow withNumber(boolean stands) {
        return new StoredRow(kind, number, values, page, isListed, stands, fault);
    }

    /**
     * A text, or null where there is none.
     *
     * @throws IllegalArgumentException for what is no text as it was written
     */
    @Nullable
    String text(int column) {
        if (column >= values.size()) {
            return null;
        }
        @Nullable Object value = values.get(column);
        if (value == null || value instanceof String) {
            return (String) value;
        }
        throw new IllegalArgumentException("its " + kind.column(column) + " is not as it was written");
    }

    /** A text that every row has. */
    String present(int column) {
        String text = text(column);
        if (text == null) {
            throw new IllegalArgumentException("its " + kind.column(column) + " is empty");
        }
        return text;
    }

    /** All that is left of it, a line for each column. */
    List<String> content() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            @Nullable Object value = values.get(i);
            if (value != null) {
                lines.add(kind.column(i) + ": " + (value instanceof Damaged damaged ? damaged.shown() : value));
            }
        }
        return lines;
    }
}
