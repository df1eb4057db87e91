package strawbed.journal.sqlite;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a rescue came to.
 *
 * @param record the new record
 * @param list the plain text that names every lost place and every row left out
 * @param source what was looked at, as sentences
 * @param facts how many facts are in the new record
 * @param unproven the old numbers of those of them that nothing proves, because no link of the chain is left
 * @param changed the old numbers of those of them that do not fit the chain, or come from a damaged page; only where they
 *     were asked for
 * @param missing the numbers of which no row was found
 * @param leftOut how many rows of facts were found and left out, because they are changed or cannot be read
 * @param statements how many statements that waited for an answer are in the new record
 * @param open how many of these still wait
 * @param statementsLost how many statements, or ends of statements, were lost or left out
 */
public record Rescued(
        Path record,
        Path list,
        List<String> source,
        int facts,
        List<Places> unproven,
        List<Places> changed,
        List<Places> missing,
        int leftOut,
        int statements,
        int open,
        long statementsLost) {
    public Rescued {
        source = List.copyOf(source);
        unproven = List.copyOf(unproven);
        changed = List.copyOf(changed);
        missing = List.copyOf(missing);
    }

    /** Whether nothing was lost, left out or taken with a change. */
    public boolean isWhole() {
        return Stream.of(missing, changed).allMatch(List::isEmpty) && leftOut == 0 && statementsLost == 0;
    }
}
