package strawbed.hearing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import strawbed.bench.Material;
import strawbed.bench.Outcome;
import strawbed.bench.People;
import strawbed.bench.Speaker;
import strawbed.bench.Tally;
import strawbed.bench.VoiceRun;
import strawbed.testkit.SharedSpeech;

/** A short form of the bench, with the goals a little lower: a few dozen sentences leave more to chance. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpokenTableIT {
    @TempDir
    Path folder;

    @Test
    void of_every_fourth_sentence_of_the_table_nine_in_ten_are_wholly_right() throws IOException {
        VoiceRun run = VoiceRun.of(Speaker.INSIDE, new Material(folder).table(Speaker.INSIDE, 4));

        Tally tally = Tally.of(run.outcomes());
        assertThat(tally.total()).isGreaterThanOrEqualTo(50);
        assertThat(tally.share(Outcome.RIGHT))
                .as("wholly right; others: %s", run.confusions())
                .isGreaterThanOrEqualTo(0.90);
    }

    @Test
    void of_real_people_digits_are_heard_and_talk_never_becomes_a_record() {
        People people = People.heard(
                new Material(folder),
                SharedSpeech.files("human-digits"),
                SharedSpeech.file("human-digits-sequence.wav"),
                SharedSpeech.files("human-other"));

        assertThat(people.digits()).isEqualTo(300);
        assertThat(people.digitsRight()).isGreaterThanOrEqualTo(276);
        assertThat(people.sequence()).isEqualTo(People.ROWS);
        assertThat(people.others()).isEqualTo(74);
        assertThat(people.othersUnderstood()).isZero();
    }
}
