package strawbed.print;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The printers that this computer knows. A call may take as long as a dead print server lets it. */
public interface Printers {
    /**
     * A printer.
     *
     * @param trouble why it would take no page now, in a sentence with a remedy; empty if nothing is known against it
     */
    record Known(String name, Optional<String> trouble) {}

    /** All of them, by name. */
    List<Known> all();

    /**
     * Hands a document over at its true size. Returning means that the print system took it, and no more.
     *
     * @param title what the print system may show of it
     * @throws PrintException if it was not taken
     */
    void handOver(Path pdf, String printer, String title);
}
