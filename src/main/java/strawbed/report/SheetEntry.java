package strawbed.report;

import java.util.List;
import java.util.Objects;

/**
 * One entry of a sheet's section. What is blank or empty is not there, and what follows takes its place.
 *
 * @param lead what it is found by, such as a calf or a time
 * @param toDos what is to do, each with an empty box to tick
 * @param strong what stands out before the text
 * @param text what is told
 * @param warns whether it bears a warning sign in place of a lead
 */
public record SheetEntry(String lead, List<ToDo> toDos, String strong, String text, boolean warns) {
    public SheetEntry {
        Objects.requireNonNull(lead);
        toDos = List.copyOf(toDos);
        Objects.requireNonNull(strong);
        Objects.requireNonNull(text);
        if (toDos.isEmpty() && strong.isBlank() && text.isBlank()) {
            throw new IllegalArgumentException("an entry needs words; it is about \"" + lead + "\"");
        }
    }

    public static SheetEntry toDo(String lead, List<ToDo> toDos, String text) {
        return new SheetEntry(lead, toDos, "", text, false);
    }

    public static SheetEntry told(String lead, String strong, String text) {
        return new SheetEntry(lead, List.of(), strong, text, false);
    }

    public static SheetEntry plain(String text) {
        return told("", "", text);
    }

    public static SheetEntry warning(String strong, String text) {
        return new SheetEntry("", List.of(), strong, text, true);
    }
}
