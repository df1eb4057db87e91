package strawbed.exchange;

import java.io.IOException;
import strawbed.journal.EventSource;
import strawbed.journal.RecordLines;

/** Writes a record as JSON Lines, from which {@link RecordReader} has the same record again. */
public final class RecordWriter {
    private RecordWriter() {}

    /**
     * Writes a first line that tells what this is, then each event on its line. Lines end with a line feed.
     *
     * @param events the whole record
     * @param program which program writes, with its version
     */
    public static void write(EventSource events, String program, Appendable out) throws IOException {
        RecordLines lines = new RecordLines();
        out.append(lines.heading(events.count(), program)).append('\n');
        Passing.each(events, event -> out.append(lines.line(event)).append('\n'));
    }
}
