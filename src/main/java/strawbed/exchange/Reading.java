package strawbed.exchange;

import java.util.List;

/** What came of reading a file. */
public sealed interface Reading<T> {
    /** All of it can be. */
    record Good<T>(T content) implements Reading<T> {}

    /**
     * Some of it cannot be, so that nothing of it counts.
     *
     * @param faults the first of them, in the order of their lines
     * @param count how many there are in all
     */
    record Broken<T>(List<Fault> faults, long count) implements Reading<T> {
        public Broken {
            faults = List.copyOf(faults);
        }
    }
}
