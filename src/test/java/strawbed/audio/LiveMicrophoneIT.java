package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import strawbed.testkit.PrivatePulse;

/** Real lines of Java Sound on a sound server that goes away in each way that we know. */
@Timeout(120)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LiveMicrophoneIT {
    /** The promise is about 1.5 s; the rest is for a machine with other work. */
    private static final Duration SOON = Duration.ofSeconds(5);

    /** Opening is tried each two seconds, and a server that was frozen has to wake up. */
    private static final Duration LATER = Duration.ofSeconds(20);

    private static final long AWAY_MILLIS = 4_000;

    @TempDir
    static Path folder;

    private static PrivatePulse pulse;

    private Teller teller;

    @BeforeAll
    static void start() throws IOException, InterruptedException {
        PrivatePulse.missing().ifPresent(sentence -> Assumptions.abort(sentence));
        pulse = PrivatePulse.start(folder);
    }

    @AfterAll
    static void stop() {
        if (pulse != null) {
            pulse.close();
        }
    }

    @BeforeEach
    void listen() throws IOException, InterruptedException {
        teller = new Teller();
        teller.await("state LISTENING"::equals, LATER);
    }

    @AfterEach
    void end() {
        if (teller != null) {
            teller.process.destroyForcibly();
        }
    }

    @Test
    void every_sample_comes_once_and_in_order() throws IOException, InterruptedException {
        int length = 10 * Sound.RATE;
        // The player's first or last samples may be cut off, so there is silence at both ends.
        short[] counting = new short[length + Sound.RATE];
        for (int i = 0; i < length; i++) {
            counting[Sound.RATE / 2 + i] = (short) (i % MicrophoneTeller.HIGHEST + 1);
        }
        Path wav = folder.resolve("counting.wav");
        WavFile.write(wav, Sound.of(counting, 0));
        assertThat(pulse.play(wav).waitFor()).isZero();
        teller.await(line -> Teller.value(line, "counted") >= length, SOON);
        String told = teller.await(line -> line.startsWith("told"), SOON);
        assertThat(Teller.value(told, "counted")).isEqualTo(length);
        assertThat(Teller.value(told, "jumps")).isZero();
        assertThat(Teller.value(told, "losses")).isZero();
        assertThat(Teller.value(told, "dropped")).isZero();
        assertThat(teller.lines(line -> line.startsWith("hole")))
                .as("but for the one before the microphone was open")
                .hasSizeLessThanOrEqualTo(1);
        teller.assertNoException();
    }

    @Test
    void exact_silence_is_told_until_sound_comes() throws IOException, InterruptedException {
        teller.await("state SILENT"::equals, SOON);
        Path wav = folder.resolve("noise.wav");
        short[] noise = new short[Sound.RATE];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (short) (i % 2 == 0 ? 50 : -50);
        }
        WavFile.write(wav, Sound.of(noise, 0));
        pulse.play(wav);
        teller.await("state LISTENING"::equals, SOON);
        teller.assertNoException();
    }

    @Test
    void a_microphone_that_is_pulled_out_is_used_again_when_it_is_back() throws IOException, InterruptedException {
        assertGoesAndComesBack(pulse::removeMicrophone, pulse::putBackMicrophone);
    }

    @Test
    void a_sound_server_that_ends_is_used_again_when_it_is_back() throws IOException, InterruptedException {
        assertGoesAndComesBack(pulse::stop, pulse::restart);
    }

    @Test
    void a_microphone_that_sleeps_is_used_again_when_it_wakes_up() throws IOException, InterruptedException {
        assertGoesAndComesBack(pulse::suspend, pulse::resume);
    }

    @Test
    void a_sound_server_that_is_frozen_is_used_again_when_it_lives() throws IOException, InterruptedException {
        assertGoesAndComesBack(pulse::freeze, pulse::thaw);
    }

    @Test
    void what_the_speaker_plays_is_heard() throws IOException, InterruptedException {
        teller.order(Cue.PROBLEM);
        assertThat(teller.await(line -> line.startsWith("played"), LATER)).isEqualTo("played true");
        long soundless = 0;
        for (short sample : Cue.PROBLEM.sound().copySamples()) {
            soundless += sample == 0 ? 1 : 0;
        }
        long sounding = (Cue.PROBLEM.sound().length() - soundless) * MicrophoneTeller.TIMES;
        // The first samples of a stream may be cut off, so one in a hundred may be missing, but not the end.
        teller.await(line -> Teller.value(line, "counted") > sounding * 0.99, SOON);
        teller.assertNoException();
    }

    @Test
    void a_speaker_that_is_pulled_out_is_told_once_and_plays_when_it_is_back()
            throws IOException, InterruptedException {
        teller.order(Cue.PROBLEM);
        TimeUnit.SECONDS.sleep(1);
        pulse.removeMicrophone();
        teller.await(line -> line.startsWith("speaker:") && line.endsWith("plug it in again."), LATER);
        teller.order(Cue.PROBLEM);
        assertThat(teller.await(line -> line.startsWith("played") || line.startsWith("speaker:"), LATER))
                .isEqualTo("played false");
        pulse.putBackMicrophone();
        teller.order(Cue.PROBLEM);
        assertThat(teller.await(line -> line.startsWith("played") || line.startsWith("speaker:"), LATER))
                .isEqualTo("played true");
        teller.assertNoException();
    }

    private interface Act {
        void run() throws IOException, InterruptedException;
    }

    private void assertGoesAndComesBack(Act goes, Act comesBack) throws IOException, InterruptedException {
        long before = System.nanoTime();
        teller.forget();
        goes.run();
        teller.await("state GONE"::equals, SOON);
        String first = teller.await(line -> line.startsWith("told"), SOON);
        TimeUnit.MILLISECONDS.sleep(AWAY_MILLIS);
        assertIsIdle(first, teller.newest("told"));
        comesBack.run();
        teller.await("state LISTENING"::equals, LATER);
        String hole = teller.await(line -> line.startsWith("hole"), SOON);
        long away = Duration.ofNanos(System.nanoTime() - before).toMillis();
        assertThat(Long.parseLong(hole.substring("hole ".length())) * 1_000 / Sound.RATE)
                .as("the hole in ms, where at most %s passed", away)
                .isBetween(AWAY_MILLIS, away);
        String back = teller.await(line -> line.startsWith("told"), SOON);
        String later = back;
        while (Teller.value(later, "at") < Teller.value(back, "at") + 2_000) {
            later = teller.await(line -> line.startsWith("told"), SOON);
        }
        assertThat(millisHeard(back, later))
                .as("sound goes on: %s, %s", back, later)
                .isCloseTo(Teller.value(later, "at") - Teller.value(back, "at"), within(600L));
        assertThat(Teller.value(later, "losses")).isEqualTo(1);
        teller.assertNoException();
    }

    private static long millisHeard(String from, String to) {
        return (Teller.value(to, "end") - Teller.value(from, "end")) * 1_000 / Sound.RATE;
    }

    /** Ten polls a second, and the processor at rest. */
    private static void assertIsIdle(String from, String to) {
        long millis = Teller.value(to, "at") - Teller.value(from, "at");
        assertThat(millis).isGreaterThan(AWAY_MILLIS / 2);
        assertThat(Teller.value(to, "polls") - Teller.value(from, "polls"))
                .as("polls of 100 ms within %s ms", millis)
                .isLessThan(millis / 100 * 2);
        assertThat(Teller.value(to, "cpu") - Teller.value(from, "cpu"))
                .as("milliseconds of computing within %s ms", millis)
                .isLessThan(millis / 2);
    }

    /** A {@link MicrophoneTeller} in its own process, and what it printed. */
    private static final class Teller {
        private final Process process;
        private final List<String> lines = new ArrayList<>();
        private int looked;

        Teller() throws IOException {
            ProcessBuilder builder = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            MicrophoneTeller.class.getName())
                    .redirectErrorStream(true);
            builder.environment().putAll(pulse.environment());
            process = builder.start();
            Thread reading = new Thread(this::read, "what the teller prints");
            reading.setDaemon(true);
            reading.start();
        }

        void order(Cue cue) throws IOException {
            process.outputWriter(StandardCharsets.UTF_8)
                    .append(cue.name())
                    .append('\n')
                    .flush();
        }

        private void read() {
            try (BufferedReader printed = process.inputReader(StandardCharsets.UTF_8)) {
                for (String line = printed.readLine(); line != null; line = printed.readLine()) {
                    add(line);
                }
            } catch (IOException e) {
                // The process was ended within a line.
                add("end of what was printed");
            }
        }

        private synchronized void add(String line) {
            lines.add(line);
            notifyAll();
        }

        /** The next such line after the one that was last waited for; what lies between is passed over. */
        synchronized String await(Predicate<String> wanted, Duration longest) throws InterruptedException {
            long end = System.nanoTime() + longest.toNanos();
            int at = looked;
            while (true) {
                for (; at < lines.size(); at++) {
                    if (wanted.test(lines.get(at))) {
                        looked = at + 1;
                        return lines.get(at);
                    }
                }
                long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
                assertThat(left)
                        .as(
                                "No such line within %s; process alive: %s; printed:%n%s",
                                longest, process.isAlive(), lines)
                        .isPositive();
                wait(left);
            }
        }

        /** What was printed so far is not waited for. */
        synchronized void forget() {
            looked = lines.size();
        }

        synchronized List<String> lines(Predicate<String> wanted) {
            return lines.stream().filter(wanted).toList();
        }

        String newest(String start) {
            List<String> such = lines(line -> line.startsWith(start));
            return such.get(such.size() - 1);
        }

        void assertNoException() {
            assertThat(process.isAlive()).isTrue();
            assertThat(lines(line -> line.contains("Exception") || line.contains("Error:") || line.startsWith("\tat ")))
                    .isEmpty();
        }

        /** A number of a line of counts; -1 in any other line. */
        static long value(String line, String name) {
            for (String part : line.split(" ", -1)) {
                if (part.startsWith(name + "=")) {
                    return Long.parseLong(part.substring(name.length() + 1));
                }
            }
            return -1;
        }
    }
}
