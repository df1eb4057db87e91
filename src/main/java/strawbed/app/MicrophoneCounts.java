package strawbed.app;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * What the station's microphone lost since its last start, in a small file of the data folder, so that {@code check} can
 * tell. It is written when something was lost. Owned by one thread.
 */
final class MicrophoneCounts {
    private static final String NAME = "microphone-counts.properties";

    private final Path file;
    private final Instant since;
    private Optional<SoundIn.Losses> written = Optional.empty();

    /** @param since when the station began to listen */
    MicrophoneCounts(Path data, Instant since) {
        this.file = data.resolve(NAME);
        this.since = since;
    }

    /** Notes what was lost so far. That it cannot be written stops no work. */
    void note(SoundIn.Losses losses) {
        if (written.equals(Optional.of(losses))) {
            return;
        }
        String text = "since = " + since + "\ndropped = " + losses.dropped() + "\noverruns = " + losses.overruns()
                + "\ngone = " + losses.gone() + "\n";
        try {
            OwnersFile.write(file, text.getBytes(StandardCharsets.UTF_8));
            written = Optional.of(losses);
        } catch (IOException full) {
            Logger.getLogger(MicrophoneCounts.class.getName()).log(Level.FINE, "Not noted: " + text, full);
        }
    }

    /** What {@code check} tells: one line, or that no station has listened here yet. */
    static String told(Path data) {
        Path file = data.resolve(NAME);
        if (!Files.exists(file)) {
            return "no station has listened here yet";
        }
        Properties lines = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            lines.load(reader);
            return told(
                    Instant.parse(lines.getProperty("since", "")),
                    Long.parseLong(lines.getProperty("dropped", "")),
                    Long.parseLong(lines.getProperty("overruns", "")),
                    Long.parseLong(lines.getProperty("gone", "")));
        } catch (IOException | DateTimeParseException | IllegalArgumentException broken) {
            return "not known: " + file + " cannot be read (" + broken.getMessage() + "). Remove it.";
        }
    }

    private static String told(Instant since, long dropped, long overruns, long gone) {
        return "since the station's start at " + since + ": blocks of 20 ms lost " + dropped + ", device buffer full "
                + overruns + ", microphone gone " + gone;
    }
}
