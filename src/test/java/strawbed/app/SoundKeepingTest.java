package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.event.Event;
import strawbed.event.RecordedEvent;
import strawbed.event.TimeOrderedIds;
import strawbed.journal.NewOpenStatement;
import strawbed.station.Choices;
import strawbed.testkit.MemoryJournal;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundKeepingTest {
    private static final Instant NOW = Instant.parse("2026-03-30T06:00:00Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
    private static final int BYTES = 400_000;

    @TempDir
    Path data;

    private final MemoryJournal journal = new MemoryJournal(NOW);
    private SoundFolder sounds;

    SoundKeepingTest() {
        sounds = new SoundFolder(Path.of("none"), () -> {
            throw new AssertionError("no folder yet");
        });
    }

    @BeforeEach
    void folder() throws IOException {
        sounds = new SoundFolder(data, new TimeOrderedIds(CLOCK, new Random(1)));
        Files.createDirectories(data.resolve("sounds"));
    }

    private String soundOf(int daysAgo) throws IOException {
        Clock then = Clock.fixed(NOW.minus(Duration.ofDays(daysAgo)).plusSeconds(1), ZoneOffset.UTC);
        String name = new TimeOrderedIds(then, new Random(daysAgo)).get() + ".wav";
        Files.write(sounds.file(name), new byte[BYTES]);
        return name;
    }

    private void isOpen(String name) {
        journal.keep(new NewOpenStatement(NOW, Duration.ofSeconds(1), "nomatch", List.of("moo"), null, name));
    }

    private List<String> clear(Optional<Integer> days, Optional<Integer> megabytes) {
        return SoundKeeping.clear(
                journal,
                sounds,
                new StationFile("", Optional.empty(), 1, days, megabytes, Map.of(), Choices.USUAL),
                CLOCK);
    }

    private List<Event> noted() {
        return journal.all().stream().map(RecordedEvent::event).toList();
    }

    @Test
    void nothing_goes_unless_the_farm_said_so() throws IOException {
        String old = soundOf(4000);
        assertThat(clear(Optional.empty(), Optional.empty())).isEmpty();
        assertThat(sounds.names()).containsExactly(old);
        assertThat(journal.all()).isEmpty();
    }

    @Test
    void what_is_older_than_the_kept_days_goes_and_is_noted() throws IOException {
        soundOf(40);
        soundOf(32);
        String last = soundOf(30);
        String young = soundOf(3);
        assertThat(clear(Optional.of(30), Optional.empty()))
                .containsExactly("2 old sounds (0 MB) removed, as station.properties says.");
        assertThat(sounds.names()).containsExactly(last, young);
        assertThat(noted()).containsExactly(new Event.SoundsRemoved(2, 2 * BYTES));
        assertThat(clear(Optional.of(30), Optional.empty())).isEmpty();
        assertThat(noted()).hasSize(1);
    }

    @Test
    void a_sound_of_an_open_statement_never_goes() throws IOException {
        String open = soundOf(400);
        isOpen(open);
        soundOf(399);
        clear(Optional.of(1), Optional.of(1));
        assertThat(sounds.names()).containsExactly(open);
    }

    @Test
    void the_oldest_go_until_the_rest_has_room_but_none_of_the_last_day() throws IOException {
        soundOf(5);
        soundOf(4);
        String third = soundOf(3);
        String fourth = soundOf(2);
        clear(Optional.empty(), Optional.of(1));
        assertThat(sounds.names()).containsExactly(third, fourth);

        String fifth = soundOf(0);
        for (int i = 0; i < 4; i++) {
            Files.write(sounds.file(sounds.newName()), new byte[BYTES]);
        }
        clear(Optional.empty(), Optional.of(1));
        assertThat(sounds.names()).hasSize(5).contains(fifth).doesNotContain(third, fourth);
    }

    @Test
    void only_files_with_our_names_go() throws IOException {
        Files.writeString(sounds.file("radio.wav"), "la la");
        Files.writeString(sounds.file("017f22e2-79b0-4cc3-98c4-dc0c0c07398f.wav"), "of version 4");
        Files.writeString(data.resolve("017f22e2-79b0-7cc3-98c4-dc0c0c07398f.wav"), "not in the folder");
        clear(Optional.of(1), Optional.of(1));
        assertThat(sounds.names()).hasSize(2);
        assertThat(data.resolve("017f22e2-79b0-7cc3-98c4-dc0c0c07398f.wav")).exists();
        assertThat(journal.all()).isEmpty();
    }

    @Test
    void a_file_whose_name_only_this_system_allows_is_left_and_stops_nothing() throws IOException {
        Path strange = Files.writeString(data.resolve("sounds").resolve("..what now"), "hay");
        soundOf(40);
        assertThat(clear(Optional.of(30), Optional.empty()))
                .containsExactly("1 old sound (0 MB) removed, as station.properties says.");
        assertThat(strange).exists();
    }

    @Test
    void nothing_goes_that_the_record_cannot_note() throws IOException {
        String old = soundOf(40);
        journal.failNext("the disk is full.");
        assertThat(clear(Optional.of(30), Optional.empty()))
                .singleElement()
                .asString()
                .contains("the disk is full");
        assertThat(sounds.names()).containsExactly(old);
    }
}
