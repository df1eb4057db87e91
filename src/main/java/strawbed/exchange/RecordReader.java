package strawbed.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.event.SoundName;
import strawbed.event.When;
import strawbed.journal.JournalException;
import strawbed.journal.RecordLines;

/** Reads a record from the JSON Lines that {@link RecordWriter} wrote, and finds everything that is wrong in them. */
public final class RecordReader {
    private static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LATEST = Instant.parse("9999-01-01T00:00:00Z");

    private final RecordLines lines = new RecordLines();
    private final Faults faults = new Faults();
    private final List<RecordedEvent> events = new ArrayList<>();
    private final Map<EventId, Long> lineOf = new HashMap<>();

    /** That of the next line. */
    private long sequence = 1;

    private RecordReader() {}

    /**
     * The events of the file in their order, or all that is wrong with it. Beyond the events themselves never more than
     * a line is in memory.
     *
     * @throws ExchangeException if the file cannot be read
     */
    public static Reading<List<RecordedEvent>> read(Path file) {
        try (LineReader in = new LineReader(open(file))) {
            return new RecordReader().read(in);
        } catch (IOException failure) {
            throw ExchangeException.unreadable(file, failure);
        }
    }

    /** The line of an event of a file that was good: its sequence counts from the line behind the heading. */
    public static long lineOf(RecordedEvent event) {
        return event.sequence() + 1;
    }

    static InputStream open(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new ExchangeException("There is no file " + file + ". Give the name of a file to import.", null);
        }
        return Files.newInputStream(file);
    }

    private Reading<List<RecordedEvent>> read(LineReader in) throws IOException {
        Optional<Long> announced = heading(in.next());
        if (announced.isEmpty()) {
            return faults.or(List.of());
        }
        long read = 0;
        for (LineReader.Line line = in.next(); line != null; line = in.next()) {
            read++;
            take(line);
        }
        if (read != announced.get()) {
            faults.add(
                    read + 1,
                    "the file ends after " + read + " of " + announced.get()
                            + " events. It is not whole; export or copy it again.");
        }
        return faults.or(List.copyOf(events));
    }

    private Optional<Long> heading(LineReader.@Nullable Line line) {
        if (line == null) {
            faults.add(1, "the file is empty.");
            return Optional.empty();
        }
        if (line.text() == null) {
            faults.add(1, line.problem() + ".");
            return Optional.empty();
        }
        try {
            return Optional.of(lines.announced(line.text()));
        } catch (JournalException e) {
            faults.add(
                    1,
                    switch (e.reason()) {
                        case NEWER -> e.what() + ". Use the Strawbed that wrote it.";
                        case NOT_A_RECORD ->
                            e.what() + ". Give a file of \"strawbed export --format json\", or for a CSV of calves"
                                    + " say with --map which column is which.";
                        default -> e.what();
                    });
            return Optional.empty();
        }
    }

    private void take(LineReader.Line line) {
        long expected = sequence;
        sequence++;
        if (line.text() == null) {
            faults.add(line.number(), line.problem() + ".");
            return;
        }
        try {
            take(lines.event(line.text()), line.number(), expected);
        } catch (JournalException e) {
            faults.add(line.number(), e.what());
        }
    }

    private void take(RecordedEvent event, long line, long expected) {
        if (event.sequence() != expected) {
            faults.add(
                    line,
                    "its sequence is " + event.sequence() + " and not " + expected
                            + ". Lines are missing or out of order; export it again.");
            // One gap is one fault, not one for each line behind it.
            sequence = event.sequence() + 1;
        }
        Long earlier = lineOf.putIfAbsent(event.id(), line);
        if (earlier != null) {
            faults.add(line, "its id " + event.id() + " stands in line " + earlier + " already.");
        }
        instants(event)
                .filter(instant -> instant.isBefore(EARLIEST) || instant.isAfter(LATEST))
                .forEach(instant -> faults.add(line, instant + " is not in the years 1900 to 9998."));
        sounds(event)
                .filter(name -> !SoundName.isPlain(name))
                .forEach(name -> faults.add(
                        line,
                        "its sound \"" + name
                                + "\" is not the plain name of a file, such as 0001.wav. Sounds lie in one"
                                + " folder and have no way in their names; export it again."));
        events.add(event);
    }

    /** Every name of a sound in it: what opens such a file looks for it in the sound folder. */
    private static Stream<String> sounds(RecordedEvent recorded) {
        return Stream.concat(
                        Stream.ofNullable(recorded.provenance().sound()),
                        Stream.ofNullable(toldSound(recorded.event())))
                .distinct();
    }

    private static @Nullable String toldSound(Event event) {
        if (event instanceof Event.VetCalled called) {
            return called.sound();
        }
        if (event instanceof Event.TreatmentNoted noted) {
            return noted.sound();
        }
        return event instanceof Event.VoiceNoteTaken taken ? taken.sound() : null;
    }

    /** Every instant in it: no rule of the program counts with years that no calendar has. */
    private static Stream<Instant> instants(RecordedEvent recorded) {
        return Stream.concat(Stream.of(recorded.recordedAt(), recorded.occurredAt()), told(recorded.event()));
    }

    private static Stream<Instant> told(Event event) {
        if (event instanceof Event.CalfBorn born) {
            return ends(born.when());
        }
        if (event instanceof Event.CalfFound found) {
            return ends(found.when());
        }
        if (event instanceof Event.CalfDied died) {
            return Stream.of(died.at());
        }
        return event instanceof Event.SerumTested tested ? Stream.ofNullable(tested.drawnAt()) : Stream.empty();
    }

    private static Stream<Instant> ends(When when) {
        return when instanceof When.Between window
                ? Stream.of(window.earliest(), window.latest())
                : Stream.of(when.midpoint());
    }
}
