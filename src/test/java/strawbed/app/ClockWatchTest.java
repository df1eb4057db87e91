package strawbed.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClockWatchTest {
    private static final Instant NIGHT = Instant.parse("2026-03-02T03:00:00Z");
    private static final ZoneId BARN = ZoneId.of("America/Chicago");

    private final AtomicReference<Instant> wall = new AtomicReference<>(NIGHT);
    private final AtomicLong nanoseconds = new AtomicLong(Long.MAX_VALUE - 1000);
    private final ClockWatch watch =
            new ClockWatch(((InstantSource) wall::get).withZone(ZoneOffset.UTC), nanoseconds::get);

    private void pass(Duration time, Duration shown) {
        nanoseconds.addAndGet(time.toNanos());
        wall.updateAndGet(before -> before.plus(shown));
    }

    @Test
    void time_that_passes_is_nothing_odd() {
        for (int i = 0; i < 100; i++) {
            pass(Duration.ofMinutes(3), Duration.ofMinutes(3).plusSeconds(i % 2 == 0 ? 4 : -4));
            assertThat(watch.look()).isEmpty();
        }
    }

    @Test
    void a_clock_set_back_or_ahead_is_seen_once_with_both_times() {
        pass(Duration.ofSeconds(1), Duration.ofHours(-1).plusSeconds(1));
        assertThat(watch.look()).contains(new Event.ClockChanged(NIGHT.plusSeconds(1), NIGHT.minusSeconds(3599)));
        assertThat(watch.look()).isEmpty();
        pass(Duration.ofSeconds(1), Duration.ofSeconds(7));
        assertThat(watch.look()).contains(new Event.ClockChanged(NIGHT.minusSeconds(3598), NIGHT.minusSeconds(3592)));
    }

    @Test
    void a_start_before_the_last_fact_or_in_another_zone_is_odd() {
        RecordedEvent last = new RecordedEvent(
                new EventId(new UUID(0x7000, 1)),
                1,
                NIGHT,
                NIGHT,
                BARN,
                null,
                new Event.FeedRefused(),
                Provenance.of(Provenance.Source.BUTTON));
        assertThat(ClockWatch.since(last, NIGHT.minusSeconds(5), BARN)).isEmpty();
        assertThat(ClockWatch.since(last, NIGHT.plusSeconds(999), BARN)).isEmpty();
        assertThat(ClockWatch.since(last, NIGHT.minusSeconds(60), ZoneOffset.UTC))
                .containsExactly(
                        new Event.ClockChanged(NIGHT, NIGHT.minusSeconds(60)),
                        new Event.ZoneChanged(BARN, ZoneOffset.UTC));
    }
}
