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
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.audio.Sound;
import strawbed.event.TimeOrderedIds;
import strawbed.grammar.ParseTree;
import strawbed.hearing.Heard;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.SpeechTime;
import strawbed.testkit.Tones;
import strawbed.text.Messages;

/** What a person is told of the sound itself. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundTellingTest {
    private static final Instant NOW = Instant.parse("2026-03-30T06:00:00Z");
    private static final Random RANDOM = new Random(1);

    @TempDir
    Path data;

    private Settings settings() {
        return new Settings(data, Optional.empty(), Clock.fixed(NOW, ZoneOffset.UTC), ZoneOffset.UTC);
    }

    private static Sound sound(double speech, double noise) {
        double[] samples = Tones.noise(1.5, noise, RANDOM);
        Tones.mix(samples, Tones.syllables(1, speech), 0.4);
        return Tones.sound(samples);
    }

    private static final Sound GOOD = sound(0.3, 0.001);
    private static final Sound NOISY = sound(0.3, 0.1);
    private static final Sound QUIET = sound(0.002, 0.00001);
    private static final Sound LOUD = sound(5, 0.001);

    private Path keep(Sound sound, Duration ago) {
        Clock then = Clock.fixed(NOW.minus(ago), ZoneOffset.UTC);
        SoundFolder folder = new SoundFolder(data, new TimeOrderedIds(then, RANDOM));
        String name = folder.newName();
        folder.write(name, sound);
        return folder.file(name);
    }

    @Test
    void the_sounds_of_the_last_day_are_counted_with_advice_for_the_most_frequent() {
        keep(GOOD, Duration.ofHours(1));
        keep(NOISY, Duration.ofHours(2));
        keep(QUIET, Duration.ofHours(3));
        keep(QUIET, Duration.ofHours(23));
        keep(LOUD, Duration.ofHours(25));
        keep(LOUD, Duration.ofHours(-1));
        assertThat(SoundTelling.lastDay(settings()))
                .contains("Sounds of the last day: 4; too noisy 1, too quiet 2, too loud 0."
                        + " Too quiet: bring the microphone closer to your mouth, or turn it up.");
    }

    @Test
    void where_all_are_good_there_is_no_advice_and_where_none_are_nothing_is_told() {
        assertThat(SoundTelling.lastDay(settings())).isEmpty();
        keep(LOUD, Duration.ofHours(25));
        assertThat(SoundTelling.lastDay(settings())).isEmpty();
        keep(GOOD, Duration.ofHours(1));
        assertThat(SoundTelling.lastDay(settings()))
                .contains("Sounds of the last day: 1; too noisy 0, too quiet 0, too loud 0.");
    }

    @Test
    void no_more_than_the_newest_two_hundred_are_read() {
        for (int i = 0; i < 200; i++) {
            keep(GOOD, Duration.ofMinutes(i));
        }
        keep(LOUD, Duration.ofHours(5));
        assertThat(SoundTelling.lastDay(settings()))
                .contains("Sounds of the last day: the newest 200 of 201; too noisy 0, too quiet 0, too loud 0.");
    }

    @Test
    void a_file_that_is_no_sound_is_told_and_one_that_is_not_ours_is_left() throws IOException {
        Files.write(keep(GOOD, Duration.ofHours(1)), new byte[10]);
        Files.write(data.resolve("sounds").resolve("somebodys.wav"), new byte[10]);
        keep(LOUD, Duration.ofHours(2));
        assertThat(SoundTelling.lastDay(settings()).orElseThrow())
                .startsWith("Sounds of the last day: 2; too noisy 0, too quiet 0, too loud 1. 1 could not be read");
    }

    private Optional<String> told(Sound sound, Interpretation meaning) {
        Answers answers = new Answers(new Messages(Locale.US), settings());
        return answers.ofSound(
                new Heard(sound, meaning, new SpeechTime(NOW, ZoneOffset.UTC), Evidence.of(List.of()), false));
    }

    @Test
    void what_was_not_understood_is_told_with_what_is_wrong_with_its_sound() {
        Interpretation nothing = new Interpretation.NoMatch(List.of("moo"));
        assertThat(told(NOISY, nothing)).contains("Too noisy: bring the microphone closer to your mouth.");
        assertThat(told(LOUD, nothing)).contains("Too loud: turn the microphone down, or hold it further away.");
        assertThat(told(GOOD, nothing)).isEmpty();
    }

    @Test
    void nothing_is_told_of_the_sound_of_what_was_understood() {
        ParseTree tree = new ParseTree("utterance", null, 0, 1, List.of("moo"), List.of());
        assertThat(told(NOISY, new Interpretation.Matched(List.of("moo"), tree)))
                .isEmpty();
    }
}
