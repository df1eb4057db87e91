package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SpeakerSinkTest {
    private static final Duration LONG = Duration.ofSeconds(10);
    private static final Sound SOUND = Cue.PROBLEM.sound();
    private static final int HALF = SOUND.length() / 2 * Short.BYTES;

    private final Deque<FakeSpeakerLine> lines = new ArrayDeque<>();
    private final AtomicInteger tries = new AtomicInteger();

    private SpeakerSink sink(Duration patience) {
        return new SpeakerSink(this::openNext, " of the barn", patience);
    }

    private SourceDataLine openNext() throws LineUnavailableException {
        tries.incrementAndGet();
        if (lines.isEmpty()) {
            throw new LineUnavailableException("There is none");
        }
        return lines.remove().line();
    }

    private FakeSpeakerLine next(FakeSpeakerLine line) {
        lines.add(line);
        return line;
    }

    @Test
    void a_sound_is_played_whole_and_the_line_is_let_go() throws InterruptedException {
        FakeSpeakerLine line = next(FakeSpeakerLine.whole());
        SpeakerSink sink = sink(LONG);
        assertThat(sink.play(SOUND)).isTrue();
        assertThat(line.written()).isEqualTo(SOUND.littleEndianBytes());
        assertThat(sink.trouble()).isEmpty();
        line.awaitClosed();
    }

    @Test
    void a_sound_that_is_stopped_was_not_played_to_its_end_and_is_no_trouble() throws Exception {
        FakeSpeakerLine line = next(new FakeSpeakerLine(HALF, false));
        SpeakerSink sink = sink(LONG);
        FutureTask<Boolean> playing = new FutureTask<>(() -> sink.play(SOUND));
        SoundDevices.start("test speaker", playing);
        line.awaitFull();
        sink.stop();
        assertThat(playing.get()).isFalse();
        assertThat(line.written().length).isBetween(1, HALF);
        assertThat(sink.trouble()).isEmpty();
        line.awaitClosed();
    }

    @Test
    void a_speaker_that_goes_away_is_told_once_and_tried_with_each_sound() throws InterruptedException {
        FakeSpeakerLine line = next(new FakeSpeakerLine(HALF, true));
        SpeakerSink sink = sink(LONG);
        assertThatThrownBy(() -> sink.play(SOUND))
                .isInstanceOf(SpeakerException.class)
                .hasMessage("The speaker of the barn went away; plug it in again.");
        line.awaitClosed();
        assertThat(sink.play(SOUND)).isFalse();
        assertThat(sink.trouble())
                .hasValueSatisfying(text -> assertThat(text).contains("no speaker of the barn", "plug one in"));
        assertThat(sink.play(SOUND)).isFalse();
        assertThat(tries.get()).isEqualTo(3);
        next(FakeSpeakerLine.whole());
        assertThat(sink.play(SOUND)).isTrue();
        assertThat(sink.trouble()).isEmpty();
        assertThatThrownBy(() -> sink.play(SOUND))
                .as("anew, as it played meanwhile")
                .isInstanceOf(SpeakerException.class)
                .hasMessageContaining("no speaker of the barn");
    }

    @Test
    void a_speaker_that_sleeps_holds_nobody_for_ever() throws InterruptedException {
        FakeSpeakerLine line = next(new FakeSpeakerLine(HALF, false));
        SpeakerSink sink = sink(SOUND.duration().negated().plusMillis(50));
        assertThatThrownBy(() -> sink.play(SOUND))
                .isInstanceOf(SpeakerException.class)
                .hasMessage("The speaker of the barn takes no sound; switch it on, or plug it in again.");
        line.awaitClosed();
    }

    @Test
    void a_name_that_no_speaker_has_is_told() {
        assertThatThrownBy(() -> new SpeakerSink("No such speaker").play(SOUND))
                .isInstanceOf(SpeakerException.class)
                .hasMessageContaining("No such speaker");
        assertThat(SpeakerSink.names()).doesNotContain("No such speaker");
    }
}
