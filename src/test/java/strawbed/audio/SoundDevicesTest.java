package strawbed.audio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SoundDevicesTest {
    private static final int HANGING = 4;

    @Test
    void while_a_sound_system_hangs_no_more_than_four_threads_wait_for_it() throws Exception {
        CountDownLatch thawed = new CountDownLatch(1);
        CountDownLatch closed = new CountDownLatch(HANGING);
        ExecutorService threads = Executors.newFixedThreadPool(HANGING);
        List<Callable<AutoCloseable>> calls = Collections.nCopies(
                HANGING,
                () -> SoundDevices.ask(() -> {
                    thawed.await();
                    return closed::countDown;
                }));
        for (Future<AutoCloseable> call : threads.invokeAll(calls)) {
            assertThatThrownBy(call::get).hasCauseInstanceOf(TimeoutException.class);
        }
        threads.shutdown();
        assertThatThrownBy(() -> SoundDevices.ask(() -> "never asked")).isInstanceOf(TimeoutException.class);
        thawed.countDown();
        // What was opened too late is closed, and then there is room again.
        closed.await();
        assertThat(SoundDevices.ask(() -> "answered")).isEqualTo("answered");
    }
}
