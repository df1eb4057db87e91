package strawbed.entry;

import java.util.Arrays;
import java.util.List;

/** The first page: what a fact is about, in the order of the work. */
public enum EntryGroup {
    BIRTH,
    FIRST_MINUTES,
    NAVEL,
    COLOSTRUM,
    MEASURES,
    CALF,
    CARE,
    BARN;

    /** The second page: the kinds of this group in their order. */
    public List<EntryKind> kinds() {
        return Arrays.stream(EntryKind.values())
                .filter(kind -> kind.group() == this)
                .toList();
    }
}
