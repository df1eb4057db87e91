package strawbed.journal;

import java.util.List;
import java.util.function.Consumer;
import strawbed.event.RecordedEvent;

/** The facts of a record up to one of them, to be gone through as often as needed without holding them all. */
public interface EventSource {
    /** How many there are. */
    long count();

    /** Hands over each in the order of the record; the same ones each time. */
    void forEach(Consumer<RecordedEvent> reader);

    /** Facts that are in memory. */
    static EventSource of(List<RecordedEvent> events) {
        List<RecordedEvent> all = List.copyOf(events);
        return new EventSource() {
            @Override
            public long count() {
                return all.size();
            }

            @Override
            public void forEach(Consumer<RecordedEvent> reader) {
                all.forEach(reader);
            }
        };
    }
}
