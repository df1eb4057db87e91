package strawbed.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.dialog.Pending;
import strawbed.station.Known;
import strawbed.station.Place;
import strawbed.station.Sign;
import strawbed.text.Messages;

/**
 * The station with its real ears, record and loop, without a window, on sound that is given to it as fast as it can be
 * heard; its clock goes with the sound. Its voice is silent and never keeps it from listening. Nothing is ever pressed.
 * Owned by one thread.
 */
final class ReplayedStation implements AutoCloseable {
    private static final ZoneId BARN = ZoneId.of("America/Chicago");

    private final SteppedClock clock;
    private final ReplayedSound microphone;
    private final Screen screen = new Screen();
    private final PrintWork printing;
    private final Stage stage;
    private final StationLoop loop;
    private final long before;
    private @Nullable Pending asked;
    private long questions;
    private long blocks;
    private long paused;

    /** @param numbers of the calves that are known */
    ReplayedStation(Path data, Instant begin, List<String> numbers, PrintWriter err) {
        clock = new SteppedClock(begin, BARN);
        microphone = new ReplayedSound(clock);
        StationRecord.make(data, clock, numbers);
        Settings settings = Settings.of(Optional.of(data), Optional.empty()).withClock(clock);
        printing = PrintWork.begin(settings, new Messages(Locale.US));
        stage = Stage.open(settings, begin, err);
        StationDesk desk = new StationDesk(
                settings,
                printing,
                new Messages(Locale.US),
                StationFile.in(data).choices(),
                code -> "key " + code,
                96,
                changed -> {});
        loop = new StationLoop(stage, microphone, new SilentMouth(), desk, screen, on -> "");
        before = facts();
    }

    /** Hears a sound, whole blocks of it, to its end. */
    void hears(Sound sound) {
        microphone.add(sound);
        while (!microphone.isEmpty()) {
            loop.turn();
            blocks++;
            paused += stage.isPaused() ? 1 : 0;
            Pending pending = stage.pending().orElse(null);
            questions += pending != null && !pending.equals(asked) ? 1 : 0;
            asked = pending;
        }
    }

    /** Facts that were saved since the start, whoever gave them. */
    long saved() {
        return facts() - before;
    }

    private long facts() {
        return stage.herd().history().stream()
                .filter(entry -> StationRecord.isSaidOrPressed(entry.recorded()))
                .count();
    }

    /** How often something waited for an answer. */
    long questions() {
        return questions;
    }

    /** What was said and not confirmed, or not understood, and waits for somebody. */
    int open() {
        return stage.open().size();
    }

    /** For how much of the time it was paused, 0 to 1: a noise or a word can be taken for that order. */
    double paused() {
        return blocks == 0 ? 0 : (double) paused / blocks;
    }

    /** What is shown at last. */
    Sign sign() {
        return Objects.requireNonNull(screen.known, "nothing was shown").sign();
    }

    Clock clock() {
        return clock;
    }

    @Override
    public void close() {
        loop.end();
        stage.close();
        printing.close();
    }

    private static final class Screen implements StationLoop.Panel {
        private @Nullable Known known;

        @Override
        public void show(Place place, Known shown) {
            known = shown;
        }

        @Override
        public void level(double decibel) {}
    }
}
