package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strawbed.audio.MicrophoneException.Reason;

@Timeout(20)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class MicrophoneSourceTest {
    private final FakeLine fake = new FakeLine();

    private MicrophoneSource source() {
        return new MicrophoneSource(fake.line(), "the barn's", Duration.ofSeconds(10));
    }

    private static Reason reason(MicrophoneSource source) {
        try {
            Optional<Sound> block = source.read();
            throw new AssertionError("No exception but " + block);
        } catch (MicrophoneException e) {
            assertThat(e).hasMessageContaining("the barn's").hasMessageEndingWith("plug it in again.");
            return e.reason();
        }
    }

    @Test
    void blocks_come_in_order_with_their_positions() {
        fake.give(1, (short) 258);
        fake.give(1, (short) -2);
        try (MicrophoneSource source = source()) {
            Sound first = source.read().orElseThrow();
            assertThat(first.startSample()).isZero();
            assertThat(first.copySamples()).hasSize(320).containsOnly((short) 258);
            assertThat(source.position()).isEqualTo(320);
            Sound second = source.read().orElseThrow();
            assertThat(second.startSample()).isEqualTo(320);
            assertThat(second.copySamples()).containsOnly((short) -2);
        }
    }

    @Test
    void a_pulled_plug_is_told_after_the_last_sound_and_the_line_is_closed() throws InterruptedException {
        fake.give(2, (short) 1);
        fake.pullPlug();
        try (MicrophoneSource source = source()) {
            assertThat(source.read()).isPresent();
            assertThat(source.read()).isPresent();
            assertThat(reason(source)).isEqualTo(Reason.GONE);
            fake.awaitClosed();
        }
    }

    @Test
    void a_line_that_gives_nothing_is_gone() {
        try (MicrophoneSource source = new MicrophoneSource(fake.line(), "the barn's", Duration.ofMillis(20))) {
            assertThat(reason(source)).isEqualTo(Reason.GONE);
        }
    }

    @Test
    void a_closed_microphone_gives_no_more_and_its_line_is_closed() throws InterruptedException {
        MicrophoneSource source = source();
        source.close();
        source.close();
        fake.awaitClosed();
        assertThat(source.read()).isEmpty();
    }

    @Test
    void blocks_that_nobody_reads_are_counted_and_leave_a_hole() throws InterruptedException {
        fake.give(510, (short) 1);
        try (MicrophoneSource source = source()) {
            fake.awaitAllTaken();
            assertThat(source.dropped()).isEqualTo(10);
            for (int i = 0; i < 500; i++) {
                assertThat(source.read()).isPresent();
            }
            fake.give(1, (short) 1);
            assertThat(source.read().orElseThrow().startSample()).isEqualTo(510 * 320);
        }
    }

    @Test
    void the_level_is_that_of_the_newest_block() throws InterruptedException {
        fake.give(1, (short) 16_384);
        try (MicrophoneSource source = source()) {
            fake.awaitAllTaken();
            assertThat(source.level()).isCloseTo(-6.02, within(0.01));
        }
    }

    @Test
    void silence_has_the_lowest_level() throws InterruptedException {
        fake.give(1, (short) 0);
        try (MicrophoneSource source = source()) {
            fake.awaitAllTaken();
            assertThat(source.level()).isEqualTo(-100);
        }
    }

    @Test
    void a_full_device_buffer_is_counted() throws InterruptedException {
        fake.give(1, (short) 0);
        fake.fillBuffer();
        try (MicrophoneSource source = source()) {
            fake.awaitAllTaken();
            assertThat(source.overruns()).isEqualTo(2);
        }
    }

    @Test
    void another_format_than_asked_for_is_warned_of() {
        try (MicrophoneSource source = source()) {
            assertThat(source.warning()).isEmpty();
            fake.deliver(new AudioFormat(8_000, 16, 1, true, false));
            assertThat(source.warning())
                    .hasValueSatisfying(text -> assertThat(text).contains("8000.0 Hz", "choose another one"));
        }
    }

    @Test
    void a_name_that_no_microphone_has_is_told() {
        assertThatThrownBy(() -> MicrophoneSource.open("No such microphone"))
                .isInstanceOfSatisfying(
                        MicrophoneException.class, e -> assertThat(e.reason()).isEqualTo(Reason.NONE))
                .hasMessageContaining("No such microphone");
        assertThat(MicrophoneSource.names()).doesNotContain("No such microphone");
    }

    @Test
    void a_computer_without_sound_has_neither_microphone_nor_speaker() {
        Assumptions.assumeTrue(
                MicrophoneSource.names().isEmpty(), "Left out: this computer has a microphone, so nothing is missing");
        assertThatThrownBy(() -> MicrophoneSource.open(null))
                .isInstanceOfSatisfying(
                        MicrophoneException.class, e -> assertThat(e.reason()).isEqualTo(Reason.NONE));
        SpeakerSink speaker = new SpeakerSink();
        speaker.stop();
        assertThatThrownBy(() -> speaker.play(Sound.of(new short[320], 0)))
                .isInstanceOf(SpeakerException.class)
                .hasMessageContaining("plug one in");
    }
}
