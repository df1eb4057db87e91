package strawbed.journal.sqlite;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a look through a whole record found.
 *
 * @param facts how many it has
 * @param isChained false for a record of schema 1, whose facts have no chain until the recorder next opens it
 * @param last the place of the newest fact that has a link; 0 when there is none
 * @param head that link's hash, which stands for everything before it; null when there is none
 * @param findings what is not as it should be; empty for a sound record
 */
public record RecordHealth(
        long facts, boolean isChained, long last, @Nullable String head, List<Finding> findings) {
    public RecordHealth {
        findings = List.copyOf(findings);
    }

    public boolean isSound() {
        return findings.isEmpty();
    }
}
