package strawbed.journal.sqlite;

import java.util.List;

/**
 * A row that did not come into the new record.
 *
 * @param what which row, as the beginning of a sentence
 * @param why as a clause
 * @param content what is left of it, a line for each column
 */
record LeftOut(String what, String why, List<String> content) {
    LeftOut {
        content = List.copyOf(content);
    }
}
