package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * One entry of a sheet's section. What is blank or empty is not there, and what follows takes its place.
 *
 * @param lead what it is found by, mostly a time
 * @param who whom it is about
 * @param tasks what is to do, each with an empty box to tick
 * @param strong what stands out before the text
 * @param text what is told
 * @param warns whether it bears a warning sign in place of a lead
 */
public record SheetEntry(String lead, String who, List<String> tasks, String strong, String text, boolean warns) {
    public SheetEntry {
        Objects.requireNonNull(lead);
        Objects.requireNonNull(who);
        tasks = List.copyOf(tasks);
        Objects.requireNonNull(strong);
        Objects.requireNonNull(text);
        if (tasks.isEmpty() && strong.isBlank() && text.isBlank()) {
            throw new IllegalArgumentException("an entry needs words; it is about \"" + lead + "\", \"" + who + "\"");
        }
    }

    public static SheetEntry toDo(String lead, String who, List<String> tasks, String text) {
        return new SheetEntry(lead, who, tasks, "", text, false);
    }

    public static SheetEntry told(String lead, String who, String text) {
        return new SheetEntry(lead, who, List.of(), "", text, false);
    }

    public static SheetEntry strong(String lead, String who, String strong, String text) {
        return new SheetEntry(lead, who, List.of(), strong, text, false);
    }

    public static SheetEntry warning(String strong, String text) {
        return new SheetEntry("", "", List.of(), strong, text, true);
    }
}
