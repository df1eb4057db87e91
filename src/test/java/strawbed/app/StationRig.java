package strawbed.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import strawbed.audio.Sound;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.print.FakePrinters;
import strawbed.station.Act;
import strawbed.station.Choices;
import strawbed.station.Known;
import strawbed.station.Place;
import strawbed.text.Messages;
import strawbed.voice.FreeTtsVoice;

/**
 * A station without window, microphone and speaker, for tests: sound, keys and time go in, screens, words and facts come
 * out. Its clock goes on with the sound.
 */
final class StationRig implements AutoCloseable {
    static final Instant BEGIN = Instant.parse("2026-03-02T09:00:00Z");
    private static final ZoneId BARN = ZoneId.of("America/Chicago");
    private static final FreeTtsVoice PERSON = new FreeTtsVoice();

    final SteppedClock clock = new SteppedClock(BEGIN, BARN);
    final ReplayedSound microphone = new ReplayedSound(clock);
    final Ears ears = new Ears();
    final Eyes eyes = new Eyes();
    private final TimeOrderedIds ids = new TimeOrderedIds(clock, new Random(7));
    private final Path data;
    private Optional<Path> model = Optional.empty();
    final FakePrinters printers = new FakePrinters();
    private @Nullable PrintWork printing;
    private @Nullable Stage stage;
    private @Nullable StationLoop loop;

    StationRig(Path data) {
        this.data = data;
    }

    /** Hears what the station says; it speaks until somebody says that it is over. */
    static final class Ears implements Mouth {
        final List<String> said = new ArrayList<>();
        final List<Sound> played = new ArrayList<>();
        Optional<String> trouble = Optional.empty();
        boolean speaking;
        int stops;

        @Override
        public void say(String text) {
            said.add(text);
        }

        @Override
        public void play(Sound sound) {
            played.add(sound);
        }

        @Override
        public Optional<String> trouble() {
            return trouble;
        }

        @Override
        public boolean isSpeaking() {
            return speaking;
        }

        @Override
        public void stop() {
            stops++;
            speaking = false;
        }
    }

    static final class Eyes implements StationLoop.Panel {
        @Nullable
        Place place;

        private @Nullable Known known;

        @Override
        public void show(Place shown, Known now) {
            place = shown;
            known = now;
        }

        @Override
        public void level(double decibel) {}

        Known known() {
            return Objects.requireNonNull(known);
        }
    }

    /** The record has a calf of which it knows this, before the station is opened. */
    CalfId knows(Event... facts) {
        try (SqliteEventJournal journal = SqliteEventJournal.open(data, clock, BARN, ids)) {
            CalfId calf = new CalfId(ids.get());
            journal.append(Stream.of(facts)
                    .map(fact -> new NewEvent(calf, fact, BEGIN, Provenance.of(Provenance.Source.COMMAND)))
                    .toList());
            return calf;
        }
    }

    Settings settings() {
        return new Settings(data, model, clock, BARN);
    }

    /** The speech model is looked for there. */
    void hasItsModelIn(Path folder) {
        model = Optional.of(folder);
    }

    /** Opens it anew, with these lines of settings. */
    void opens(String... lines) throws IOException {
        if (stage != null) {
            close();
        }
        Files.writeString(data.resolve(StationFile.NAME), String.join("\n", lines));
        Settings settings = settings();
        StringWriter err = new StringWriter();
        try (LoadingEars loading = strawbed.app.Ears.beginLoading(settings)) {
            stage = Stage.openWithKeys(
                    settings, clock.instant(), new PrintWriter(err, true), new Messages(Locale.US), loading);
            // The rig's sound comes faster than a person's.
            while (stage.isComing()) {
                Thread.onSpinWait();
            }
        }
        microphone.isOpenedAnew();
        Choices choices = StationFile.in(data).choices();
        Messages english = new Messages(Locale.US);
        PrintWork prints = new PrintWork(settings, english, printers, Duration.ofSeconds(30), Duration.ofSeconds(2));
        printing = prints;
        StationDesk desk = new StationDesk(settings, prints, english, choices, code -> "key " + code, 149, c -> {});
        loop = new StationLoop(
                stage, microphone, ears, desk, eyes, on -> Objects.requireNonNullElse(prints.news(), ""));
        waits(Duration.ofSeconds(1));
    }

    void says(String words) {
        microphone.add(PERSON.speak(words));
        while (!microphone.isEmpty()) {
            turn();
        }
    }

    void waits(Duration time) {
        Instant until = clock.instant().plus(time);
        while (clock.instant().isBefore(until)) {
            turn();
        }
    }

    void turn() {
        Objects.requireNonNull(loop).turn();
    }

    void presses(Act act) {
        Objects.requireNonNull(loop).press(act);
        turn();
    }

    Stage stage() {
        return Objects.requireNonNull(stage);
    }

    Known known() {
        return eyes.known();
    }

    @Override
    public void close() {
        printers.wakeUp();
        if (printing != null) {
            printing.close();
        }
        if (stage != null) {
            stage.close();
        }
    }
}
