package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.audio.WavFile;
import strawbed.event.Event;
import strawbed.event.NewEvent;
import strawbed.event.Provenance;
import strawbed.journal.OpenStatement;
import strawbed.testkit.MemoryJournal;

/** Power went between a sound and what names it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FoundSoundsTest {
    /** The example of RFC 9562, appendix A.6: 2022-02-22 14:22:22 at five hours west of Greenwich. */
    private static final String NAME = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f.wav";

    private static final Instant NAMED_AT = Instant.parse("2022-02-22T19:22:22Z");
    private static final Instant NOW = Instant.parse("2026-11-25T02:00:00Z");

    @TempDir
    Path data;

    private final MemoryJournal journal = new MemoryJournal(NOW);
    private SoundFolder sounds;

    FoundSoundsTest() {
        sounds = new SoundFolder(Path.of("none"), UUID::randomUUID);
    }

    @BeforeEach
    void folder() {
        sounds = new SoundFolder(data, () -> UUID.fromString("017f22e2-79b0-7cc3-98c4-000000000001"));
    }

    private static Sound sound(int samples) {
        short[] values = new short[samples];
        for (int i = 0; i < samples; i++) {
            values[i] = (short) (i % 1000);
        }
        return Sound.of(values, 0);
    }

    private List<String> adopt() {
        return FoundSounds.adopt(journal, sounds);
    }

    /** A file as a power cut leaves it. */
    private void half(int samples, int bytesLeft) throws IOException {
        sounds.write("whole.wav", sound(samples));
        byte[] whole = Files.readAllBytes(sounds.file("whole.wav"));
        Files.delete(sounds.file("whole.wav"));
        Files.write(sounds.file(NAME + WavFile.PART), Arrays.copyOf(whole, bytesLeft));
    }

    @Test
    void a_sound_that_nothing_names_becomes_an_open_statement_once() {
        sounds.write(NAME, sound(3 * Sound.RATE));
        assertThat(adopt())
                .containsExactly(
                        "1 sound was being recorded when the program ended and is among the open statements" + " now.");
        OpenStatement open = journal.openStatements().get(0);
        assertThat(open.statement().sound()).isEqualTo(NAME);
        assertThat(open.statement().length()).isEqualTo(Duration.ofSeconds(3));
        assertThat(open.statement().from()).isEqualTo(NAMED_AT.minusSeconds(3));
        assertThat(open.statement().verdict()).isEqualTo("interrupted");
        assertThat(open.statement().reading()).isEqualTo("was being recorded when the program ended");

        assertThat(adopt()).isEmpty();
        journal.settle(open.id(), "dropped");
        assertThat(adopt()).as("settled is settled").isEmpty();
        assertThat(journal.openStatements()).isEmpty();
    }

    @Test
    void a_sound_that_a_fact_names_is_left_alone() {
        sounds.write(NAME, sound(100));
        journal.append(List.of(new NewEvent(
                null,
                new Event.FeedRefused(),
                NOW,
                new Provenance(Provenance.Source.VOICE, List.of("refused"), "understood", "g", "m", NAME, null))));
        assertThat(adopt()).isEmpty();
        assertThat(journal.openStatements()).isEmpty();
    }

    @Test
    void somebody_elses_files_are_left_alone() throws IOException {
        sounds.write("radio.wav", sound(100));
        Files.writeString(sounds.file("notes.txt"), "hay");
        assertThat(adopt()).isEmpty();
        assertThat(sounds.names()).containsExactly("notes.txt", "radio.wav");
    }

    @Test
    void of_a_half_written_file_what_can_be_heard_is_kept() throws IOException {
        half(1000, 44 + 2 * 600 + 1);
        assertThat(adopt()).hasSize(1);
        assertThat(sounds.names()).containsExactly(NAME);
        assertThat(WavFile.read(sounds.file(NAME))).isEqualTo(sound(600));
        assertThat(Files.size(sounds.file(NAME)))
                .as("the head says what is there")
                .isEqualTo(44 + 2 * 600);
        assertThat(journal.openStatements())
                .singleElement()
                .satisfies(open -> assertThat(open.statement().sound()).isEqualTo(NAME));
        assertThat(adopt()).isEmpty();
    }

    @Test
    void a_half_written_file_without_a_sample_is_removed() throws IOException {
        for (int bytes : List.of(0, 20, 44, 45)) {
            half(1000, bytes);
            assertThat(adopt()).as("%s bytes", bytes).isEmpty();
            assertThat(sounds.names()).isEmpty();
        }
    }

    @Test
    void half_of_what_is_there_whole_is_removed_and_anything_more_is_kept_beside_it() throws IOException {
        half(1000, 44 + 2 * 600);
        sounds.write("other.wav", sound(800));
        Files.move(sounds.file("other.wav"), sounds.file(NAME));
        adopt();
        assertThat(sounds.names()).containsExactly(NAME);

        half(1000, 44 + 2 * 900);
        assertThat(adopt()).hasSize(1);
        assertThat(sounds.names()).hasSize(2);
        assertThat(WavFile.read(sounds.file(NAME))).isEqualTo(sound(800));
        assertThat(journal.openStatements())
                .extracting(open -> WavFile.read(sounds.file(open.statement().sound())))
                .containsExactly(sound(800), sound(900));
    }

    @Test
    void a_file_that_is_no_sound_is_told_and_left() throws IOException {
        Files.createDirectories(data.resolve("sounds"));
        Files.write(sounds.file(NAME + WavFile.PART), new byte[500]);
        assertThat(adopt()).singleElement().asString().contains("left as it is", NAME);
        assertThat(sounds.names()).hasSize(1);
    }

    @Test
    void a_record_that_refuses_is_told_and_tried_again() {
        sounds.write(NAME, sound(100));
        journal.refuseAll("The disk is full.");
        assertThat(adopt()).singleElement().asString().contains("The disk is full.", "tried again at the next start");
        journal.refuseAll(null);
        assertThat(adopt()).hasSize(1);
        assertThat(journal.openStatements()).hasSize(1);
    }
}
