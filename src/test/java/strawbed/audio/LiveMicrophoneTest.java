package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static strawbed.audio.MicrophoneState.BUSY;
import static strawbed.audio.MicrophoneState.GONE;
import static strawbed.audio.MicrophoneState.LISTENING;
import static strawbed.audio.MicrophoneState.NONE;
import static strawbed.audio.MicrophoneState.OPENING;
import static strawbed.audio.MicrophoneState.SILENT;
import static strawbed.audio.MicrophoneState.WRONG_FORMAT;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.sound.sampled.AudioFormat;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import strawbed.audio.MicrophoneException.Reason;

@Timeout(20)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LiveMicrophoneTest {
    /** Longer than a block of a fake line ever takes; a poll returns when the block is there. */
    private static final Duration LONG = Duration.ofSeconds(10);

    private static final Duration BLOCK = Duration.ofMillis(20);
    private static final short LOUD = 1_000;

    private final SetTime time = new SetTime();
    private final Deque<Supplier<MicrophoneSource>> openings = new ArrayDeque<>();
    private final AtomicInteger tries = new AtomicInteger();

    private LiveMicrophone microphone() {
        return microphone(Runnable::run);
    }

    private LiveMicrophone microphone(Executor threads) {
        return new LiveMicrophone(this::openNext, "the barn's", time, SetTime.ORIGIN, time::nanoseconds, threads);
    }

    private MicrophoneSource openNext() {
        tries.incrementAndGet();
        return openings.size() > 1
                ? openings.remove().get()
                : openings.element().get();
    }

    private void nextFailsWith(Reason reason) {
        openings.add(() -> {
            throw new MicrophoneException(reason, "It is " + reason + "; mend it.", null);
        });
    }

    private FakeLine nextIs(FakeLine line) {
        openings.add(() -> new MicrophoneSource(line.line(), "the barn's", LONG));
        return line;
    }

    private FakeLine nextOpens() {
        return nextIs(new FakeLine());
    }

    private Sound next(LiveMicrophone microphone) {
        return next(microphone, false);
    }

    private Sound next(LiveMicrophone microphone, boolean mayJump) {
        return microphone.poll(LONG, mayJump).orElseThrow();
    }

    private static Optional<Sound> look(LiveMicrophone microphone) {
        return microphone.poll(Duration.ZERO, false);
    }

    /** Gives blocks one after the other, as time passes, and takes each. */
    private List<Sound> hear(LiveMicrophone microphone, FakeLine line, int blocks, boolean mayJump) {
        List<Sound> heard = new ArrayList<>();
        for (int i = 0; i < blocks; i++) {
            time.pass(BLOCK);
            line.give(1, LOUD);
            heard.add(next(microphone, mayJump));
        }
        return heard;
    }

    private static void assertNoHole(List<Sound> blocks) {
        for (int i = 1; i < blocks.size(); i++) {
            assertThat(blocks.get(i).startSample())
                    .isEqualTo(
                            blocks.get(i - 1).startSample() + blocks.get(i - 1).length());
        }
    }

    /** Opens and hears the first block, which begins at the origin. */
    private LiveMicrophone listening(FakeLine line) {
        LiveMicrophone microphone = microphone();
        assertThat(look(microphone)).isEmpty();
        assertThat(hear(microphone, line, 1, false).get(0).startSample()).isZero();
        assertThat(microphone.state()).isEqualTo(LISTENING);
        return microphone;
    }

    @Test
    void nobody_waits_while_it_is_being_opened() throws InterruptedException {
        CountDownLatch mayOpen = new CountDownLatch(1);
        FakeLine line = new FakeLine();
        line.give(1, LOUD);
        openings.add(() -> {
            try {
                mayOpen.await();
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
            return new MicrophoneSource(line.line(), "the barn's", LONG);
        });
        try (LiveMicrophone microphone = microphone(task -> SoundDevices.start("opening", task))) {
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(OPENING);
            assertThat(microphone.sentence()).contains("the barn's", "use the buttons");
            time.pass(Duration.ofMinutes(1));
            assertThat(look(microphone)).isEmpty();
            mayOpen.countDown();
            assertThat(microphone.poll(LONG, false))
                    .as("opened while it waited")
                    .isEmpty();
            assertThat(next(microphone).copySamples()).contains(LOUD);
            assertThat(tries.get()).as("one opening at a time").isEqualTo(1);
        }
        line.awaitClosed();
    }

    @Test
    void a_microphone_that_is_missing_is_tried_for_every_two_seconds() {
        nextFailsWith(Reason.NONE);
        try (LiveMicrophone microphone = microphone()) {
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(NONE);
            assertThat(microphone.sentence()).isEqualTo("It is NONE; mend it.");
            for (int round = 1; round < 1_000; round++) {
                assertThat(tries.get()).isEqualTo(round);
                time.pass(Duration.ofMillis(1_999));
                assertThat(look(microphone)).isEmpty();
                assertThat(tries.get()).isEqualTo(round);
                time.pass(Duration.ofMillis(1));
                assertThat(look(microphone)).isEmpty();
            }
            assertThat(microphone.losses()).isZero();
        }
    }

    @Test
    void one_that_is_plugged_in_later_begins_where_the_clock_is() {
        nextFailsWith(Reason.NONE);
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = microphone()) {
            assertThat(look(microphone)).isEmpty();
            time.pass(Duration.ofSeconds(2));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).as("no sound came yet").isEqualTo(NONE);
            time.pass(BLOCK);
            line.give(1, LOUD);
            assertThat(next(microphone).start()).isEqualTo(Duration.ofSeconds(2));
            assertThat(microphone.state()).isEqualTo(LISTENING);
            assertThat(microphone.sentence()).contains("the barn's", "listens");
        }
    }

    @Test
    void blocks_that_waited_for_their_reader_stand_before_the_clock() throws InterruptedException {
        FakeLine line = nextOpens();
        line.give(100, LOUD);
        try (LiveMicrophone microphone = microphone()) {
            line.awaitAllTaken();
            assertThat(look(microphone)).isEmpty();
            time.pass(Duration.ofSeconds(3));
            assertThat(next(microphone).start()).isEqualTo(Duration.ofSeconds(1));
        }
    }

    @Test
    void one_that_is_held_by_another_program_is_told_with_its_remedy() {
        nextFailsWith(Reason.BUSY);
        try (LiveMicrophone microphone = microphone()) {
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(BUSY);
            assertThat(microphone.sentence()).isEqualTo("It is BUSY; mend it.");
        }
    }

    @Test
    void a_pulled_plug_is_noticed_at_once_and_leaves_a_hole() throws InterruptedException {
        FakeLine first = nextOpens();
        FakeLine second = nextOpens();
        try (LiveMicrophone microphone = listening(first)) {
            time.pass(Duration.ofSeconds(8));
            first.pullPlug();
            assertThat(microphone.poll(LONG, false)).isEmpty();
            assertThat(microphone.state()).isEqualTo(GONE);
            assertThat(microphone.sentence()).contains("the barn's").endsWith("plug it in again.");
            assertThat(microphone.losses()).isEqualTo(1);
            first.awaitClosed();
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).as("no sound came yet").isEqualTo(GONE);
            assertThat(hear(microphone, second, 1, false).get(0).start()).isEqualTo(Duration.ofMillis(8_020));
            assertThat(microphone.state()).isEqualTo(LISTENING);
        }
    }

    @Test
    void a_plug_without_contact_does_not_keep_the_computer_busy() {
        FakeLine line = nextOpens();
        line.pullPlug();
        try (LiveMicrophone microphone = microphone()) {
            for (int i = 0; i < 100; i++) {
                time.pass(Duration.ofMillis(100));
                assertThat(microphone.poll(Duration.ofMillis(1), false)).isEmpty();
            }
            assertThat(microphone.state()).isEqualTo(GONE);
            assertThat(tries.get()).isBetween(4, 6);
            assertThat(microphone.losses()).as("it never gave sound").isZero();
        }
    }

    @Test
    void what_is_lost_stays_lost_while_the_sentence_tells_what_is_wrong_now() {
        FakeLine line = nextOpens();
        nextFailsWith(Reason.NONE);
        nextFailsWith(Reason.BUSY);
        try (LiveMicrophone microphone = listening(line)) {
            line.pullPlug();
            assertThat(microphone.poll(LONG, false)).isEmpty();
            time.pass(Duration.ofSeconds(2));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(GONE);
            assertThat(microphone.sentence()).isEqualTo("It is NONE; mend it.");
            time.pass(Duration.ofSeconds(2));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(GONE);
            assertThat(microphone.sentence()).isEqualTo("It is BUSY; mend it.");
        }
    }

    @Test
    void a_line_that_stops_giving_sound_is_gone_after_a_second() throws InterruptedException {
        FakeLine line = nextOpens();
        line.hangOnClose();
        try (LiveMicrophone microphone = listening(line)) {
            time.pass(Duration.ofMillis(999));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(LISTENING);
            time.pass(Duration.ofMillis(1));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).as("though closing its line hangs").isEqualTo(GONE);
            line.awaitClosed();
        }
    }

    @Test
    void a_reader_that_was_held_up_finds_the_sound_and_loses_nothing() throws InterruptedException {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            line.give(250, LOUD);
            time.pass(Duration.ofSeconds(5));
            List<Sound> heard = new ArrayList<>();
            for (int i = 0; i < 250; i++) {
                heard.add(next(microphone, true));
            }
            assertNoHole(heard);
            assertThat(microphone.state()).isEqualTo(LISTENING);
            assertThat(microphone.losses()).isZero();
        }
    }

    @Test
    void a_line_that_opens_and_never_gives_sound_is_gone_after_three_seconds() {
        nextOpens();
        try (LiveMicrophone microphone = microphone()) {
            assertThat(look(microphone)).isEmpty();
            time.pass(Duration.ofMillis(2_999));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(OPENING);
            time.pass(Duration.ofMillis(1));
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(GONE);
        }
    }

    @Test
    void no_block_stands_before_the_end_of_the_last_though_the_clock_was_put_back() {
        FakeLine first = nextOpens();
        FakeLine second = nextOpens();
        try (LiveMicrophone microphone = listening(first)) {
            time.setWallClock(Duration.ofHours(-1));
            first.pullPlug();
            assertThat(microphone.poll(LONG, false)).isEmpty();
            time.pass(Duration.ofSeconds(2));
            assertThat(look(microphone)).isEmpty();
            assertThat(hear(microphone, second, 1, true).get(0).startSample()).isEqualTo(AudioSource.BLOCK);
        }
    }

    @Test
    void a_clock_before_the_origin_gives_no_negative_place() {
        FakeLine line = nextOpens();
        time.setWallClock(Duration.ofMinutes(-1));
        try (LiveMicrophone microphone = microphone()) {
            assertThat(look(microphone)).isEmpty();
            assertThat(hear(microphone, line, 1, false).get(0).startSample()).isZero();
        }
    }

    @Test
    void three_seconds_of_exact_silence_are_told_until_sound_comes() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            line.give(150, (short) 0);
            for (int i = 0; i < 149; i++) {
                next(microphone);
            }
            assertThat(microphone.state()).isEqualTo(LISTENING);
            next(microphone);
            assertThat(microphone.state()).isEqualTo(SILENT);
            assertThat(microphone.sentence()).contains("the barn's", "switch it on");
            assertThat(microphone.level()).isEqualTo(-100);
            line.give(1, (short) 1);
            next(microphone);
            assertThat(microphone.state()).isEqualTo(LISTENING);
        }
    }

    @Test
    void the_faintest_noise_is_no_silence() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            for (int i = 0; i < 40; i++) {
                line.give(9, (short) 0);
                line.give(1, (short) -1);
            }
            for (int i = 0; i < 400; i++) {
                next(microphone);
                assertThat(microphone.state()).isEqualTo(LISTENING);
            }
        }
    }

    @Test
    void sound_at_full_scale_is_told_while_it_is_within_the_last_second() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            line.give(1, Short.MAX_VALUE);
            next(microphone);
            assertThat(microphone.clips())
                    .as("a fiftieth, where %s is the limit", LiveMicrophone.MOST_CLIPPED)
                    .isTrue();
            assertThat(microphone.state()).isEqualTo(LISTENING);
            assertThat(microphone.sentence()).contains("the barn's", "further away");
            line.give(50, LOUD);
            for (int i = 0; i < 49; i++) {
                next(microphone);
                assertThat(microphone.clips()).isTrue();
            }
            next(microphone);
            assertThat(microphone.clips()).isFalse();
            assertThat(microphone.sentence()).contains("listens");
        }
    }

    @Test
    void another_format_is_told_and_the_line_let_go() throws InterruptedException {
        FakeLine line = nextOpens();
        line.deliver(new AudioFormat(8_000, 16, 1, true, false));
        try (LiveMicrophone microphone = microphone()) {
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.state()).isEqualTo(WRONG_FORMAT);
            assertThat(microphone.sentence()).contains("8000.0 Hz", "choose another one");
            line.awaitClosed();
        }
    }

    @Test
    void blocks_that_lag_behind_the_clock_go_on_after_a_hole_once_that_is_allowed() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            List<Sound> heard = new ArrayList<>(hear(microphone, line, 10, true));
            time.setWallClock(Duration.ofMillis(320));
            heard.addAll(hear(microphone, line, 200, false));
            assertNoHole(heard);
            long end = heard.get(heard.size() - 1).startSample() + AudioSource.BLOCK;
            List<Sound> later = hear(microphone, line, 100, true);
            assertThat(later.get(0).startSample() - end).isEqualTo(320 * 16);
            assertNoHole(later);
        }
    }

    @Test
    void a_lag_that_is_made_up_for_within_a_second_leaves_no_hole() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            List<Sound> heard = new ArrayList<>(hear(microphone, line, 10, true));
            time.setWallClock(Duration.ofMillis(400));
            heard.addAll(hear(microphone, line, 49, true));
            time.setWallClock(Duration.ofMillis(-200));
            heard.addAll(hear(microphone, line, 200, true));
            assertNoHole(heard);
        }
    }

    @Test
    void a_small_lag_is_left_alone() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = listening(line)) {
            List<Sound> heard = new ArrayList<>(hear(microphone, line, 10, true));
            time.setWallClock(Duration.ofMillis(290));
            heard.addAll(hear(microphone, line, 200, true));
            assertNoHole(heard);
        }
    }

    @Test
    void what_is_lost_in_buffers_is_counted_over_all_openings() throws InterruptedException {
        FakeLine first = nextOpens();
        FakeLine second = nextOpens();
        first.fillBuffer();
        first.give(510, LOUD);
        second.give(507, LOUD);
        try (LiveMicrophone microphone = microphone()) {
            first.awaitAllTaken();
            assertThat(look(microphone)).isEmpty();
            assertThat(microphone.dropped()).isEqualTo(10);
            for (int i = 0; i < 500; i++) {
                next(microphone);
            }
            first.pullPlug();
            assertThat(microphone.poll(LONG, false)).isEmpty();
            time.pass(Duration.ofSeconds(2));
            assertThat(look(microphone)).isEmpty();
            second.awaitAllTaken();
            assertThat(microphone.dropped()).isEqualTo(17);
            assertThat(microphone.overruns()).isEqualTo(511);
        }
    }

    @Test
    void each_state_is_given_once() {
        FakeLine line = nextOpens();
        try (LiveMicrophone microphone = microphone()) {
            assertThat(microphone.changed()).contains(OPENING);
            assertThat(microphone.changed()).isEmpty();
            assertThat(look(microphone)).isEmpty();
            hear(microphone, line, 1, false);
            assertThat(microphone.changed()).contains(LISTENING);
            hear(microphone, line, 1, false);
            assertThat(microphone.changed()).isEmpty();
            line.pullPlug();
            assertThat(microphone.poll(LONG, false)).isEmpty();
            assertThat(microphone.changed()).contains(GONE);
            assertThat(microphone.changed()).isEmpty();
        }
    }

    @Test
    void the_level_is_that_of_the_newest_block_and_none_without_a_microphone() {
        FakeLine line = nextOpens();
        nextFailsWith(Reason.NONE);
        try (LiveMicrophone microphone = microphone()) {
            assertThat(microphone.level()).isEqualTo(-100);
            assertThat(look(microphone)).isEmpty();
            line.give(1, (short) 16_384);
            next(microphone);
            assertThat(microphone.level()).isCloseTo(-6.02, within(0.01));
            line.pullPlug();
            assertThat(microphone.poll(LONG, false)).isEmpty();
            assertThat(microphone.level()).isEqualTo(-100);
        }
    }

    @Test
    void what_is_opened_after_the_end_is_closed() throws InterruptedException {
        FakeLine line = nextOpens();
        List<Runnable> held = new ArrayList<>();
        LiveMicrophone microphone = microphone(held::add);
        microphone.close();
        microphone.close();
        held.get(0).run();
        line.awaitClosed();
    }

    @Test
    void a_mistake_of_the_programs_own_is_not_hidden() {
        openings.add(() -> {
            throw new IllegalArgumentException("a mistake");
        });
        try (LiveMicrophone microphone = microphone()) {
            assertThatThrownBy(() -> look(microphone))
                    .isInstanceOf(IllegalStateException.class)
                    .hasRootCauseMessage("a mistake");
        }
    }

    @Test
    void the_real_devices_are_asked_without_waiting_for_them() {
        try (LiveMicrophone microphone = LiveMicrophone.open("No such microphone", time, SetTime.ORIGIN)) {
            assertThat(microphone.state()).isEqualTo(OPENING);
            assertThat(microphone.poll(LONG, false)).isEmpty();
            assertThat(microphone.state()).isEqualTo(NONE);
            assertThat(microphone.sentence()).contains("No such microphone", "plug one in");
        }
    }
}
