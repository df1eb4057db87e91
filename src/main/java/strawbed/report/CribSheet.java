package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * The words of the sheet that hangs in the pen: what can be said.
 *
 * @param title its heading; never blank
 * @param howTo lines on how to read it
 * @param groups in the order of the work
 * @param source a line on what it was made from
 * @param page the words for pages, such as "Page {0} of {1}"
 * @param language of all words, such as {@code en-US}
 */
public record CribSheet(
        String title, List<String> howTo, List<Group> groups, String source, String page, String language) {
    public CribSheet {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a sheet needs a title");
        }
        howTo = List.copyOf(howTo);
        groups = List.copyOf(groups);
        Objects.requireNonNull(source);
        Objects.requireNonNull(page);
        Objects.requireNonNull(language);
    }

    /**
     * Lines that belong together.
     *
     * @param title never blank
     * @param lines at least one
     */
    public record Group(String title, List<String> lines) {
        public Group {
            lines = List.copyOf(lines);
            if (title.isBlank() || lines.isEmpty()) {
                throw new IllegalArgumentException("a group needs a title and a line: \"" + title + "\", " + lines);
            }
        }
    }
}
