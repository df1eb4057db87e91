package strawbed.testkit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.journal.RecordLines;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SimulatedHerdTest {
    private static final Instant FROM = Instant.parse("2025-01-01T06:00:00Z");
    private static final int CALVES = 1500;

    private static List<RecordedEvent> herd(long seed) {
        return new SimulatedHerd(CALVES, 41, FROM, seed).rest();
    }

    @Test
    void the_same_seed_gives_the_same_bytes_and_another_seed_others() {
        RecordLines lines = new RecordLines();
        List<String> one = herd(7).stream().map(lines::line).toList();
        assertThat(herd(7).stream().map(lines::line).toList()).isEqualTo(one);
        assertThat(herd(8).stream().map(lines::line).toList()).isNotEqualTo(one);
    }

    @Test
    void events_come_in_the_order_of_the_record_and_never_before_they_happen() {
        Set<EventId> ids = new HashSet<>();
        long place = 0;
        Instant time = FROM;
        for (RecordedEvent event : herd(7)) {
            place++;
            assertThat(event.sequence()).isEqualTo(place);
            assertThat(event.recordedAt()).isAfterOrEqualTo(time).isAfterOrEqualTo(event.occurredAt());
            time = event.recordedAt();
            assertThat(ids.add(event.id())).isTrue();
            if (event.event() instanceof Event.EventWithdrawn withdrawal) {
                assertThat(ids).contains(withdrawal.event());
            }
        }
    }

    /** Twins: Silva del Rio 2007, 4.2 % of calvings. Dead: Utah State University Extension 2010, 6.5 % within 48 hours. */
    @Test
    void shares_are_as_published_and_a_calf_has_about_27_events() {
        List<RecordedEvent> events = new SimulatedHerd(6000, 41, FROM, 7).rest();
        List<CalfRecord> calves = Herd.of(events).calves();
        assertThat(events.size() / (double) calves.size()).isBetween(24.0, 30.0);
        double twins = calves.stream().filter(calf -> calf.twin().isPresent()).count() / (double) calves.size();
        assertThat(twins).isBetween(0.05, 0.10);
        long dead = calves.stream()
                .filter(calf -> calf.death().isPresent())
                .filter(calf -> calf.death()
                        .orElseThrow()
                        .at()
                        .isBefore(calf.bornAbout().orElseThrow().plusSeconds(48 * 3600)))
                .count();
        assertThat(dead / (double) calves.size()).isBetween(0.05, 0.08);
        assertThat(calves).extracting(calf -> calf.number().orElse("")).contains("1", "1500", "2000");
    }
}
