package strawbed.exchange;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong in a file: the first hundred in full, so that a wrong file does not fill the memory. */
final class Faults {
    private static final int KEPT = 100;
    private static final int LONGEST = 400;

    private final List<Fault> first = new ArrayList<>();
    private long count;

    void add(long line, String problem) {
        count++;
        if (first.size() < KEPT) {
            first.add(new Fault(line, shown(problem)));
        }
    }

    /** It may quote the file, which may hold anything: nothing of it may move a terminal's cursor, or fill the page. */
    private static String shown(String problem) {
        String plain = CellText.withoutControls(problem);
        return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + " ...";
    }

    <T> Reading<T> or(T content) {
        return count == 0 ? new Reading.Good<>(content) : new Reading.Broken<>(first, count);
    }
}
