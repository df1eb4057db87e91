package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.calf.Herd;
import strawbed.testkit.MemoryJournal;
import strawbed.testkit.SpokenSentence;
import strawbed.testkit.WatchedDisk;

/**
 * What the record names is on the disk, under its name, before the record names it: power may go at any moment. That a
 * forced file survives is the system's promise, see fsync in POSIX.1-2017.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundBeforeFactTest {
    private static final Instant NOW = SpokenSentence.SPOKEN_AT;
    private static final String FIRST = new UUID(0x7000, 1) + ".wav";
    private static final String SECOND = new UUID(0x7000, 2) + ".wav";

    @TempDir
    Path data;

    private final List<String> steps = new ArrayList<>();
    private final MemoryJournal journal = new MemoryJournal(NOW);
    private long ids;

    private Path watched() {
        return WatchedDisk.at(data, steps::add);
    }

    private ScriptedNight night() {
        journal.onSound(name -> steps.add("record names " + name));
        Clock clock = Clock.fixed(NOW, SpokenSentence.ZONE);
        return new ScriptedNight(
                new Recorder(
                        journal,
                        Herd.of(List.of()),
                        new SoundFolder(watched(), () -> new UUID(0x7000, ++ids)),
                        clock,
                        UUID::randomUUID,
                        () -> "g1",
                        () -> "m1"),
                clock);
    }

    private static List<String> writing(String name) {
        return List.of(
                "write " + name + ".part",
                "force " + name + ".part",
                "move " + name + ".part to " + name,
                // Also the name, which stands in the folder.
                "force sounds");
    }

    private static String[] inOrder(List<String> first, String... then) {
        List<String> all = new ArrayList<>(first);
        all.addAll(Arrays.asList(then));
        return all.toArray(String[]::new);
    }

    @Test
    void a_fact_names_its_sound_when_that_is_on_the_disk() {
        ScriptedNight night = night();
        night.hears("new calf twelve heifer");
        assertThat(steps).containsExactlyElementsOf(writing(FIRST));
        night.hears("confirm entry");
        assertThat(steps).containsExactly(inOrder(writing(FIRST), "record names " + FIRST));
    }

    @Test
    void an_open_statement_names_its_sound_when_that_is_on_the_disk() {
        night().hears("did you see the game");
        assertThat(steps).containsExactly(inOrder(writing(FIRST), "record names " + FIRST));
    }

    @Test
    void what_the_speaker_adds_replaces_the_sound_before_the_fact_names_it() {
        ScriptedNight night = night();
        night.hears("new calf twelve");
        steps.clear();
        night.hears("new calf twelve heifer", true);
        night.hears("confirm entry");
        assertThat(steps).containsExactly(inOrder(writing(FIRST), "record names " + FIRST));
    }

    @Test
    void each_statement_has_a_sound_of_its_own() {
        ScriptedNight night = night();
        night.hears("new calf twelve heifer");
        night.hears("confirm entry");
        steps.clear();
        night.hears("new calf thirteen bull");
        night.hears("confirm entry");
        assertThat(steps).containsExactly(inOrder(writing(SECOND), "record names " + SECOND));
    }

    @Test
    void what_a_power_cut_left_is_whole_and_on_the_disk_before_a_statement_names_it() throws IOException {
        String name = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f.wav";
        Path half = data.resolve("half.wav");
        WavFile.write(half, Sound.of(new short[900], 0));
        Files.createDirectory(data.resolve("sounds"));
        Path part = data.resolve("sounds").resolve(name + WavFile.PART);
        Files.write(part, Arrays.copyOf(Files.readAllBytes(half), 1000));
        journal.onSound(named -> steps.add("record names " + named));
        assertThat(FoundSounds.adopt(journal, new SoundFolder(watched(), UUID::randomUUID)))
                .hasSize(1);
        assertThat(steps.stream().distinct()).containsExactly(inOrder(writing(name), "record names " + name));
    }
}
