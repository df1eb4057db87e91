package strawbed.report;

import java.util.List;

/**
 * A chapter of a report.
 *
 * @param title never blank
 * @param exhibits in the order of reading
 */
public record Chapter(String title, List<Exhibit> exhibits) {
    public Chapter {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a chapter needs a title");
        }
        exhibits = List.copyOf(exhibits);
    }
}
