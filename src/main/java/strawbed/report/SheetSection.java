package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * A section of a sheet.
 *
 * @param title what it is called; never blank
 * @param continued what it is called where it goes on on another page
 * @param entries in the order of reading
 * @param none what stands there when it is empty; never blank
 */
public record SheetSection(String title, String continued, List<SheetEntry> entries, String none) {
    public SheetSection {
        if (title.isBlank() || none.isBlank()) {
            throw new IllegalArgumentException("a section needs a title and a word for none: \"" + title + "\"");
        }
        Objects.requireNonNull(continued);
        entries = List.copyOf(entries);
    }
}
