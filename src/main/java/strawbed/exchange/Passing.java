package strawbed.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import strawbed.event.RecordedEvent;
import strawbed.journal.EventSource;

/** Goes through a record and writes on the way. */
final class Passing {
    /** What is done with each event. */
    @FunctionalInterface
    interface Writing {
        void write(RecordedEvent event) throws IOException;
    }

    private Passing() {}

    static void each(EventSource events, Writing writing) throws IOException {
        try {
            events.forEach(event -> {
                try {
                    writing.write(event);
                } catch (IOException failure) {
                    throw new UncheckedIOException(failure);
                }
            });
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }
}
