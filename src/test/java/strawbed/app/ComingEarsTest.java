package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.audio.Sound;
import strawbed.hearing.Heard;
import strawbed.statement.Evidence;
import strawbed.statement.Interpretation;
import strawbed.statement.SpeechTime;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ComingEarsTest {
    private static final Sound QUIET = Sound.of(new short[320], 0);

    /** An utterance ends with each sound of this length. */
    private static final Sound ENDING = Sound.of(new short[100], 320);

    private final CountDownLatch made = new CountDownLatch(1);
    private final Fake fake = new Fake();
    private final ComingEars coming = ComingEars.begin(List.of("12"), () -> {
        await(made);
        return fake;
    });

    /** Notes what it is told. */
    private static final class Fake implements Attention {
        private final List<String> told = new ArrayList<>();

        @Override
        public Optional<Heard> accept(Sound block) {
            told.add("block of " + block.length());
            return block.length() == ENDING.length() ? heard(block) : Optional.empty();
        }

        @Override
        public Optional<Heard> finish() {
            told.add("end");
            return heard(QUIET);
        }

        private static Optional<Heard> heard(Sound sound) {
            return Optional.of(new Heard(
                    sound,
                    new Interpretation.NoMatch(List.of()),
                    new SpeechTime(Instant.EPOCH, ZoneOffset.UTC),
                    Evidence.of(List.of()),
                    false));
        }

        @Override
        public Interpretation again(Sound sound, Instant began) {
            return new Interpretation.NoMatch(List.of());
        }

        @Override
        public void settle() {
            told.add("settled");
        }

        @Override
        public boolean isSpeaking() {
            return true;
        }

        @Override
        public void listenFor(Collection<String> openCalves, boolean sameCalf) {
            told.add("listens for " + String.join(" ", openCalves) + (sameCalf ? ", same calf" : ""));
        }

        @Override
        public String grammarVersion() {
            return "g";
        }

        @Override
        public String modelName() {
            return "m";
        }

        @Override
        public Optional<String> whyDeaf() {
            return Optional.of("no model");
        }

        @Override
        public void close() {
            told.add("closed");
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void areMade() throws InterruptedException {
        made.countDown();
        while (coming.isComing()) {
            Thread.sleep(1);
        }
    }

    @Test
    void sound_waits_in_its_order_and_gives_one_utterance_at_a_time() throws InterruptedException {
        assertThat(coming.accept(QUIET)).isEmpty();
        assertThat(coming.accept(ENDING)).isEmpty();
        assertThat(coming.finish()).as("a pedal was let go").isEmpty();
        assertThat(coming.late()).isEmpty();
        assertThat(coming.isSpeaking()).isFalse();
        assertThat(coming.whyDeaf()).as("not known yet").isEmpty();
        areMade();
        assertThat(coming.late()).as("the first").map(Heard::sound).contains(ENDING);
        assertThat(fake.told).containsExactly("listens for 12", "block of 320", "block of 100");
        assertThat(coming.accept(QUIET)).as("the second").map(Heard::sound).contains(QUIET);
        assertThat(coming.late()).as("what came meanwhile is heard, too").isEmpty();
        assertThat(fake.told).endsWith("block of 100", "end", "block of 320");
    }

    @Test
    void they_listen_for_the_calves_that_are_known_when_they_are_there() throws InterruptedException {
        coming.listenFor(List.of("12", "13"), true);
        coming.settle();
        areMade();
        assertThat(coming.isSpeaking()).isTrue();
        coming.settle();
        coming.listenFor(List.of("13"), false);
        assertThat(fake.told).containsExactly("listens for 12 13, same calf", "settled", "listens for 13");
    }

    @Test
    void who_asks_what_only_they_know_waits_for_them() {
        CompletableFuture.delayedExecutor(Duration.ofMillis(50).toMillis(), TimeUnit.MILLISECONDS)
                .execute(made::countDown);
        assertThat(coming.again(QUIET, Instant.EPOCH)).isInstanceOf(Interpretation.NoMatch.class);
        assertThat(coming.grammarVersion() + coming.modelName()).isEqualTo("gm");
        assertThat(coming.whyDeaf()).contains("no model");
    }

    @Test
    void who_closes_them_before_they_are_there_waits_and_closes_them() {
        made.countDown();
        coming.close();
        assertThat(fake.told).containsExactly("closed");
    }

    @Test
    void an_unforeseen_failure_is_not_swallowed() {
        ComingEars broken = ComingEars.begin(List.of(), () -> {
            throw new IllegalStateException("out of luck");
        });
        assertThatThrownBy(broken::modelName)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("out of luck");
        assertThatThrownBy(() -> broken.accept(QUIET)).hasMessage("out of luck");
        broken.close();
    }
}
