package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.bench.BarnSound;
import strawbed.calf.Herd;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.TimeOrderedIds;
import strawbed.event.When;
import strawbed.journal.sqlite.SqliteEventJournal;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.testkit.PrivateDisplay;
import strawbed.testkit.PrivatePulse;

/** The whole station in its window: used by a finger, by a pedal, and by a voice whose sound server goes away. */
@Timeout(400)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StationWindowIT {
    private static final ZoneId BARN = ZoneId.of("America/Chicago");
    private static final Path NIGHT = Path.of("demo-data", "night.wav");

    /** A pause between two statements of the night, 31 seconds before its end. */
    private static final Duration SECOND_PART = Duration.ofSeconds(31);

    @TempDir
    Path folder;

    private Path data() {
        return folder.resolve("data");
    }

    private SqliteEventJournal record() {
        Clock clock = Clock.system(BARN);
        return SqliteEventJournal.open(data(), clock, BARN, new TimeOrderedIds(clock, new Random(3)));
    }

    private List<RecordedEvent> facts() {
        try (SqliteEventJournal journal = record()) {
            return journal.all();
        }
    }

    private Process station(String what, Map<String, String> surroundings) throws IOException {
        ProcessBuilder program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-Duser.language=en",
                        "-Duser.country=US",
                        "-Duser.timezone=America/Chicago",
                        "-Dstrawbed.model=" + System.getProperty("strawbed.model", "target/speech-model/model-en-us"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        StationRobot.class.getName(),
                        data().toString(),
                        Path.of("target", "station-window", what).toString(),
                        what)
                .redirectErrorStream(true);
        program.environment().putAll(surroundings);
        return program.start();
    }

    private static PrivateDisplay display() throws IOException {
        PrivateDisplay.missing().ifPresent(sentence -> Assumptions.abort(sentence));
        return PrivateDisplay.open(1280, 800);
    }

    private static void endsWell(Process station) throws IOException, InterruptedException {
        String printed = new String(station.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(station.waitFor(60, TimeUnit.SECONDS)).as(printed).isTrue();
        assertThat(station.exitValue()).as(printed).isZero();
        assertThat(printed).contains("ended 0").doesNotContain("Exception");
    }

    @Test
    void a_whole_birth_is_recorded_by_touch_alone() throws Exception {
        try (PrivateDisplay display = display()) {
            endsWell(station("touch", display.environment()));
        }
        Herd herd = Herd.of(facts());
        List<RecordedEvent> calf = herd.byNumber("512").orElseThrow().history().stream()
                .filter(entry -> !entry.withdrawn())
                .map(entry -> entry.recorded())
                .toList();
        assertThat(calf)
                .extracting(RecordedEvent::event)
                .as("the weight was undone")
                .anySatisfy(event -> assertThat(event).isInstanceOf(Event.CalfBorn.class))
                .contains(
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.CalvingEaseNoted(Term.CalvingEase.UNASSISTED, null),
                        new Event.NavelDipped(Term.NavelAgent.IODINE, null),
                        new Event.ColostrumFed(
                                new Volume(new java.math.BigDecimal(3), VolumeUnit.QUART),
                                Term.FeedingMethod.BOTTLE,
                                null))
                .noneSatisfy(event -> assertThat(event).isInstanceOf(Event.CalfWeighed.class))
                .hasSize(6);
        assertThat(calf).extracting(recorded -> recorded.provenance().source()).containsOnly(Provenance.Source.BUTTON);
        assertThat(Duration.between(
                        calf.stream()
                                .filter(recorded -> recorded.event() instanceof Event.CalfBorn)
                                .findFirst()
                                .orElseThrow()
                                .occurredAt(),
                        Instant.now()))
                .as("ten minutes before it was pressed")
                .isBetween(Duration.ofMinutes(10), Duration.ofMinutes(15));
    }

    @Test
    void a_feed_is_recorded_by_two_keys_of_a_pedal() throws Exception {
        TimeOrderedIds ids = new TimeOrderedIds(Clock.systemUTC(), new Random(5));
        try (SqliteEventJournal journal = record()) {
            CalfId calf = new CalfId(ids.get());
            Instant now = Instant.now();
            journal.append(List.of(
                    new NewEvent(calf, new Event.CalfOpened("12", null), now, Provenance.of(Provenance.Source.COMMAND)),
                    new NewEvent(
                            calf,
                            new Event.CalfBorn(new When.At(now)),
                            now,
                            Provenance.of(Provenance.Source.COMMAND))));
        }
        try (PrivateDisplay display = display()) {
            endsWell(station("pedal", display.environment()));
        }
        assertThat(facts())
                .extracting(RecordedEvent::event)
                .contains(
                        new Event.ColostrumFed(new Volume(new java.math.BigDecimal(2), VolumeUnit.QUART), null, null));
    }

    @Test
    void a_second_station_on_the_same_record_says_so_on_its_screen_until_somebody_ends_it() throws Exception {
        Process second;
        String printed;
        try (PrivateDisplay display = display();
                SqliteEventJournal first = record()) {
            second = station("refused", display.environment());
            printed = new String(second.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(second.waitFor(60, TimeUnit.SECONDS)).as(printed).isTrue();
            assertThat(first.all()).as("nothing was done to it").isEmpty();
        }
        assertThat(second.exitValue()).as(printed).isEqualTo(Failures.BAD_INPUT);
        assertThat(printed).contains("already open for writing").doesNotContain("Exception");
    }

    /** What was said, calf by calf, without its time. */
    private static List<String> said(List<RecordedEvent> facts) {
        Herd herd = Herd.of(facts);
        return facts.stream()
                .filter(fact -> fact.provenance().source() == Provenance.Source.VOICE)
                .map(fact -> Objects.requireNonNullElse(
                                fact.calf() == null
                                        ? null
                                        : herd.calf(fact.calf())
                                                .flatMap(calf -> calf.number())
                                                .orElse("?"),
                                "barn")
                        + " " + withoutTimes(fact.event()))
                .toList();
    }

    private static String withoutTimes(Event event) {
        return event instanceof Event.EventWithdrawn
                ? "withdrawn"
                : event.toString().replaceAll("\\d{4}-\\d\\d-\\d\\dT[0-9:.]+Z", "time");
    }

    /** Seconds since the first of them. */
    private static List<Double> times(List<RecordedEvent> facts) {
        List<Instant> times = facts.stream()
                .filter(fact -> fact.provenance().source() == Provenance.Source.VOICE)
                .filter(fact -> !(fact.event() instanceof Event.EventWithdrawn))
                .map(RecordedEvent::occurredAt)
                .toList();
        return times.stream()
                .map(time -> Duration.between(times.get(0), time).toMillis() / 1000.0)
                .toList();
    }

    @Test
    void the_night_through_a_real_capture_line_gives_the_record_of_the_demo_though_the_sound_server_is_restarted()
            throws Exception {
        PrivatePulse.missing().ifPresent(sentence -> Assumptions.abort(sentence));
        Path demo = folder.resolve("demo");
        StringWriter out = new StringWriter();
        Main.run(
                new PrintWriter(out),
                new PrintWriter(out),
                "demo",
                "--data",
                demo.toString(),
                "--out",
                folder.resolve("cards").toString());
        List<RecordedEvent> expected;
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                demo, Clock.system(BARN), BARN, new TimeOrderedIds(Clock.systemUTC(), new Random(1)))) {
            expected = journal.all();
        }
        Files.createDirectories(data());
        Files.writeString(data().resolve("station.properties"), "headset = yes\nvoice = off\n");
        Sound night = WavFile.read(NIGHT);
        int cut = night.length() - (int) (SECOND_PART.toSeconds() * Sound.RATE);
        Path first = part(night, 0, cut, "first.wav");
        Path second = part(night, cut, night.length(), "second.wav");
        try (PrivateDisplay display = display();
                PrivatePulse pulse = PrivatePulse.start(Files.createDirectory(folder.resolve("pulse")))) {
            Map<String, String> surroundings = new java.util.HashMap<>(display.environment());
            surroundings.putAll(pulse.environment());
            // Its own sounds go elsewhere, as into a headset.
            surroundings.put("PULSE_SINK", "headset");
            headset(pulse);
            // A microphone that nobody speaks into gives some hush; one that gives nothing at all is told of.
            Path hush = folder.resolve("hush.wav");
            WavFile.write(hush, BarnSound.hush());
            Process room = pulse.play(hush);
            Process station = station("voice", surroundings);
            try (Signs signs = new Signs(station)) {
                signs.await("sign LISTENING");
                room.destroy();
                pulse.play(first).waitFor();
                Thread.sleep(4_000);
                pulse.stop();
                signs.await("sign NO SOUND");
                assertThat(said(copied())).as("what was confirmed is safe").hasSizeGreaterThan(20);
                pulse.restart();
                headset(pulse);
                signs.await("sign LISTENING");
                pulse.play(second).waitFor();
                Thread.sleep(4_000);
                OutputStream enough = station.getOutputStream();
                enough.write("enough\n".getBytes(StandardCharsets.UTF_8));
                enough.flush();
                signs.await("ended 0");
            }
        }
        List<RecordedEvent> heard = facts();
        assertThat(said(heard)).containsExactlyElementsOf(said(expected));
        List<Double> expectedTimes = times(expected);
        List<Double> times = times(heard);
        int before = (int) expectedTimes.stream()
                .filter(time -> time < night.length() / (double) Sound.RATE - 35)
                .count();
        for (int i = 0; i < before; i++) {
            assertThat(times.get(i)).as("fact " + i).isBetween(expectedTimes.get(i) - 1, expectedTimes.get(i) + 1);
        }
    }

    /** The record as it is on the disk now, read beside the station. */
    private List<RecordedEvent> copied() throws IOException {
        Path copy = Files.createDirectory(folder.resolve("copy"));
        try (var files = Files.list(data())) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (file.getFileName().toString().startsWith("record.db")) {
                    Files.copy(file, copy.resolve(file.getFileName()));
                }
            }
        }
        try (SqliteEventJournal journal = SqliteEventJournal.open(
                copy, Clock.system(BARN), BARN, new TimeOrderedIds(Clock.systemUTC(), new Random(2)))) {
            return journal.all();
        }
    }

    private static void headset(PrivatePulse pulse) throws IOException, InterruptedException {
        ProcessBuilder load =
                new ProcessBuilder("pactl", "load-module", "module-null-sink", "sink_name=headset").inheritIO();
        load.environment().putAll(pulse.environment());
        assertThat(load.start().waitFor()).isZero();
    }

    private Path part(Sound night, int from, int to, String name) {
        Path file = folder.resolve(name);
        WavFile.write(file, night.slice(from, to));
        return file;
    }

    /** What the station's program prints, line by line. */
    private static final class Signs implements AutoCloseable {
        /** The night takes two; a station that never shows what is awaited must not hold up the tests for ever. */
        private static final int MOST_MINUTES = 6;

        private final Process station;
        private final BufferedReader lines;
        private final List<String> seen = new ArrayList<>();

        Signs(Process station) {
            this.station = station;
            this.lines = new BufferedReader(new InputStreamReader(station.getInputStream(), StandardCharsets.UTF_8));
            CompletableFuture.delayedExecutor(MOST_MINUTES, TimeUnit.MINUTES).execute(station::destroyForcibly);
        }

        void await(String wanted) throws IOException {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                seen.add(line);
                if (line.equals(wanted)) {
                    return;
                }
            }
            throw new AssertionError("the station ended without \"" + wanted + "\": " + seen);
        }

        @Override
        public void close() {
            station.destroyForcibly();
        }
    }
}
