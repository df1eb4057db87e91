package strawbed.app;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.journal.EventJournal;
import strawbed.journal.JournalException;
import strawbed.protocol.Protocol;
import strawbed.protocol.Protocols;
import strawbed.protocol.file.ProtocolFile;
import strawbed.protocol.file.ProtocolFileException;
import strawbed.protocol.file.ProtocolReading;

/**
 * The farm's protocol between its file and its record. The file is what the farm wants from the next start on, the
 * record is what is in force.
 */
final class FarmProtocol {
    private FarmProtocol() {}

    /** The farm's own file. */
    static Path file(Settings settings) {
        return settings.data().resolve(ProtocolFile.NAME);
    }

    /** Whether something stands in the file's place, even a link to nowhere. */
    static boolean isThere(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * Finds or writes the file, and puts its protocol into the record where the record's latest is another one or there
     * is none. Nothing that is wrong with the file stops the recorder: the record's latest protocol stays in force.
     *
     * @return what a person must be told, in lines; mostly nothing
     */
    static List<String> adopt(EventJournal journal, Settings settings) {
        List<String> told = new ArrayList<>();
        Protocols known = Protocols.of(RecordReading.protocols(journal));
        Protocol wanted = wanted(file(settings), known, told);
        // Also the usual one is adopted: else the first change would count for the calves before it, too.
        if (known.isEmpty() || !wanted.equals(known.latest())) {
            try {
                journal.append(List.of(new NewEvent(
                        null,
                        new Event.ProtocolAdopted(wanted.settings()),
                        settings.clock().instant(),
                        Provenance.of(Provenance.Source.COMMAND))));
            } catch (JournalException failure) {
                told.add("Protocol " + wanted.version() + " could not be put into the record, so that protocol "
                        + known.latest().version() + " stays in force: " + failure.getMessage());
            }
        }
        return told;
    }

    private static Protocol wanted(Path file, Protocols known, List<String> told) {
        if (!isThere(file)) {
            try {
                ProtocolFile.write(file, known.latest());
                if (!known.isEmpty()) {
                    told.add("The protocol's file was gone. It was written again from the record: " + file);
                }
            } catch (ProtocolFileException failure) {
                told.add(failure.getMessage() + " " + inForce(known));
            }
            return known.latest();
        }
        ProtocolReading reading = ProtocolFile.read(file);
        if (reading instanceof ProtocolReading.Good good) {
            return good.protocol();
        }
        if (reading instanceof ProtocolReading.Broken broken) {
            told.add(head(file, broken) + inForce(known));
            told.addAll(lines(broken));
            return known.latest();
        }
        throw new AssertionError(reading);
    }

    private static String inForce(Protocols known) {
        return "Protocol " + known.latest().version() + (known.isEmpty() ? ", the usual one, is" : " stays")
                + " in force.";
    }

    /** "protocol.toml has 2 faults. ". */
    static String head(Path file, ProtocolReading.Broken broken) {
        int count = broken.faults().size();
        return file + " has " + count + (count == 1 ? " fault. " : " faults. ");
    }

    /** Each fault on its line. */
    static List<String> lines(ProtocolReading.Broken broken) {
        return broken.faults().stream().map(fault -> "  " + fault.sentence()).toList();
    }

    /** "version 1a2b3c4d, 2 settings changed from the usual". */
    static String summary(Protocol protocol) {
        int count = protocol.changed().size();
        return "version " + protocol.version() + ", " + count + (count == 1 ? " setting" : " settings")
                + " changed from the usual";
    }
}
