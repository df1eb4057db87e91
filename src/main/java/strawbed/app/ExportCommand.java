package strawbed.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import strawbed.calf.Herd;
import strawbed.event.RecordedEvent;
import strawbed.exchange.CalfSheet;
import strawbed.exchange.EventSheet;
import strawbed.exchange.NewFile;
import strawbed.exchange.RecordWriter;
import strawbed.exchange.ade.AdeExport;
import strawbed.exchange.ade.AdeSource;
import strawbed.exchange.ade.NotExported;
import strawbed.journal.EventJournal;
import strawbed.text.EventPhrases;
import strawbed.text.Messages;

/** The command {@code strawbed export}: the record for other programs. */
@Command(
        name = "export",
        description = "Writes the record for other programs: as CSV for spreadsheets, or whole as JSON Lines, which"
                + " \"strawbed import\" reads. Sound files and unconfirmed statements stay where they are.",
        mixinStandardHelpOptions = true)
final class ExportCommand implements Callable<Integer> {
    private static final String CSV = "csv";
    private static final String JSON = "json";
    private static final String ADE = "ade";
    private static final String EVENTS = "events";
    private static final String CALVES = "calves";

    @ParentCommand
    @Nullable
    Main main;

    @Option(
            names = "--format",
            required = true,
            paramLabel = "csv|json|ade",
            description = "CSV, JSON Lines, or the ICAR Animal Data Exchange standard.")
    String format = "";

    @Option(
            names = "--rows",
            paramLabel = "events|calves",
            description =
                    "Of a CSV: a row for each event, as usual, or for each calf. Text that a spreadsheet would run"
                            + " as a formula gets an apostrophe in front.")
    @Nullable
    String rows;

    @Option(
            names = "--farm",
            paramLabel = "NAME",
            description = "For --format ade: the farm in reverse domain notation, such as org.example.willowbank.")
    @Nullable
    String farm;

    @Option(names = "-o", paramLabel = "FILE", description = "A new file; else the terminal.")
    @Nullable
    Path file;

    @Override
    public Integer call() throws IOException {
        Main program = Main.of(main);
        Settings settings = program.settings();
        if (!RecordReading.isThere(settings)) {
            throw new BadInputException(
                    "There is no record in " + settings.data() + ". Choose its folder with --data DIR.");
        }
        check();
        try {
            return RecordReading.read(settings, record -> export(record, settings))
                    .orElseThrow();
        } catch (UncheckedIOException failure) {
            throw failure.getCause();
        }
    }

    private int export(EventJournal record, Settings settings) {
        NewFile.Content content = content(record, settings);
        if (file != null) {
            NewFile.write(file, content);
            Main.of(main).out().println(file);
            return 0;
        }
        PrintWriter out = Main.of(main).documents();
        try {
            content.writeTo(out);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        // A print writer keeps to itself that the other side hung up.
        if (out.checkError()) {
            throw new UncheckedIOException(
                    new IOException("The export could not be written to the end. Write it to a file with -o FILE."));
        }
        return 0;
    }

    private NewFile.Content content(EventJournal record, Settings settings) {
        return switch (format) {
            case JSON -> out -> RecordWriter.write(record.asItIs(), Main.Version.text(), out);
            case ADE -> ade(record.all(), settings, Objects.requireNonNull(farm));
            default ->
                CALVES.equals(rows)
                        ? out -> CalfSheet.write(record, settings.clock().instant(), out)
                        : out -> EventSheet.write(record.asItIs(), out);
        };
    }

    /** Before the record is read, which of a big one takes time. */
    private void check() {
        if (format.equals(JSON) && rows != null) {
            throw new BadInputException("--rows is for --format csv only: JSON Lines always have all events.");
        }
        if (format.equals(ADE) && rows != null) {
            throw new BadInputException("--rows is for --format csv only.");
        }
        if (format.equals(ADE) && farm == null) {
            throw new BadInputException("The standard wants to know whose numbers these are. Give the farm's name in"
                    + " reverse domain notation with --farm, such as --farm org.example.willowbank.");
        }
        if (!List.of(CSV, JSON, ADE).contains(format)) {
            throw new BadInputException(
                    "There is no format \"" + format + "\". Use --format csv, --format json or --format ade.");
        }
        if (rows != null && !rows.equals(EVENTS) && !rows.equals(CALVES)) {
            throw new BadInputException(
                    "There are no rows \"" + rows + "\". Use --rows " + EVENTS + " or --rows " + CALVES + ".");
        }
    }

    /** The document goes where all exports go; what it cannot hold is told beside it, one line an event. */
    private NewFile.Content ade(List<RecordedEvent> events, Settings settings, String farm) {
        AdeExport export = AdeExport.of(Herd.of(events), source(farm));
        Messages messages = new Messages(Locale.US);
        EventPhrases phrases = new EventPhrases(messages, settings.zone());
        PrintWriter err = Main.of(main).err();
        if (!export.notExported().isEmpty()) {
            err.println(export.notExported().size() + " of " + events.size() + " events are not in the document:");
        }
        for (NotExported left : export.notExported()) {
            err.println("  number " + left.recorded().sequence() + ", "
                    + phrases.of(left.recorded().event()) + ": " + messages.word(left.why()));
        }
        return out -> out.append(export.json()).append('\n');
    }

    private static AdeSource source(String farm) {
        try {
            return new AdeSource(farm);
        } catch (IllegalArgumentException noName) {
            throw new BadInputException(String.valueOf(noName.getMessage()));
        }
    }
}
