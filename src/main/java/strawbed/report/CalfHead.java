package strawbed.report;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * Who a calf is, as a card's head says it.
 *
 * @param number what the calf is called by, such as "417", or "cow 417" for a calf without a number; never blank
 * @param id the calf's own identity
 * @param newestFact the place in the record of the newest fact that the card knows of
 * @param title the one word that stands out under the number, such as "HEIFER"; never blank
 * @param beside what stands beside it, such as "Twin of 418"
 * @param lines birth and family, in the order of reading
 */
public record CalfHead(
        String number, UUID id, long newestFact, String title, Optional<String> beside, List<Fact> lines) {
    public CalfHead {
        if (number.isBlank()) {
            throw new IllegalArgumentException("a card needs a number or a name in its place");
        }
        Objects.requireNonNull(id);
        if (newestFact < 0) {
            throw new IllegalArgumentException("a record's places begin with 1; this would be " + newestFact);
        }
        title = Words.orNotRecorded(title);
        Objects.requireNonNull(beside);
        lines = List.copyOf(lines);
    }

    /** What the square code says, in the same form whatever the language; capitals make a code of fewer squares. */
    public String code() {
        return "CALF " + id.toString().toUpperCase(Locale.ROOT) + " RECORD " + newestFact;
    }
}
