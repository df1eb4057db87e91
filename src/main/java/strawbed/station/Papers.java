package strawbed.station;

import java.util.List;
import java.util.Optional;

/**
 * The pages on their way to the printer.
 *
 * @param all those that wait first, the newest of each first
 * @param trouble why some or all of them cannot be told, in a sentence; may be empty
 */
public record Papers(List<Paper> all, String trouble) {
    /** None, as far as is known. */
    public static final Papers NONE = new Papers(List.of(), "");

    public Papers {
        all = List.copyOf(all);
    }

    long waiting() {
        return all.stream().filter(paper -> paper.state() == PaperState.WAITING).count();
    }

    Optional<Paper> numbered(int number) {
        return all.stream().filter(paper -> paper.number() == number).findFirst();
    }
}
