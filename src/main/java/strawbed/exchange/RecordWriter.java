package strawbed.exchange;

import java.io.IOException;
import java.util.List;
import strawbed.event.RecordedEvent;
import strawbed.journal.RecordLines;

/** Writes a record as JSON Lines, from which {@link RecordReader} has the same record again. */
public final class RecordWriter {
    private RecordWriter() {}

    /**
     * Writes a first line that tells what this is, then each event on its line. Lines end with a line feed.
     *
     * @param events the whole record in its order
     * @param program which program writes, with its version
     */
    public static void write(List<RecordedEvent> events, String program, Appendable out) throws IOException {
        RecordLines lines = new RecordLines();
        out.append(lines.heading(events.size(), program)).append('\n');
        for (RecordedEvent event : events) {
            out.append(lines.line(event)).append('\n');
        }
    }
}
