package strawbed.calf;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Event.EventWithdrawn;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdPropertiesTest {
    @Test
    void the_random_events_are_of_every_kind() {
        Set<Class<?>> seen = new HashSet<>();
        new RandomEvents(1)
                .told(3000)
                .events()
                .forEach(recorded -> seen.add(recorded.event().getClass()));
        assertThat(seen).containsAll(Arrays.asList(Event.class.getPermittedSubclasses()));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void a_herd_never_depends_on_what_follows(long seed) {
        List<RecordedEvent> all = new RandomEvents(seed).told(120).events();
        Herd herd = Herd.of(List.of());
        for (int length = 0; length < all.size(); length++) {
            List<CalfRecord> before = herd.calves();
            Herd longer = herd.plus(all.subList(length, length + 1));
            assertThat(herd.calves()).as("seed %d, prefix %d", seed, length).isEqualTo(before);
            herd = longer;
            List<RecordedEvent> prefix = all.subList(0, length + 1);
            assertSame(herd, Herd.of(prefix), "seed " + seed + ", prefix " + length);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void the_order_of_handing_over_does_not_matter_and_twice_is_once(long seed) {
        List<RecordedEvent> all = new RandomEvents(seed).told(200).events();
        List<RecordedEvent> shuffled = new ArrayList<>(all);
        shuffled.addAll(all);
        Collections.shuffle(shuffled, new Random(seed));
        assertSame(Herd.of(shuffled), Herd.of(all), "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void withdrawing_the_withdrawal_of_any_event_changes_no_calf(long seed) {
        Told told = new RandomEvents(seed).told(80);
        Herd before = told.herd();
        RecordedEvent any = told.events().get(new Random(seed).nextInt(80));
        boolean counted = before.calves().stream()
                .flatMap(calf -> calf.history().stream())
                .anyMatch(entry -> entry.recorded().equals(any) && !entry.withdrawn());
        EventId undo = told.withdraw(any.id());
        Herd undone = told.herd();
        told.withdraw(undo);
        Herd restored = told.herd();
        assertThat(told.events()).hasSize(82);
        assertThat(facts(restored)).as("seed %d", seed).isEqualTo(facts(before));
        if (counted && !(any.event() instanceof EventWithdrawn)) {
            assertThat(facts(undone)).as("seed %d", seed).isNotEqualTo(facts(before));
        }
    }

    @Test
    void a_withdrawal_of_what_comes_later_or_never_was_takes_nothing_away() {
        Told told = new Told().open("A", "06:00", null, null);
        EventId never = EventId.of("00000000-0000-7000-8000-000000000000");
        told.tell(Told.calf("A"), Told.MIDNIGHT, new EventWithdrawn(never));
        EventId next = new EventId(new UUID(0x7000L, 4));
        told.tell(Told.calf("A"), Told.MIDNIGHT, new EventWithdrawn(next));
        told.a("06:01", new Event.BreedNoted("Jersey"));
        assertThat(told.last()).isEqualTo(next);
        assertThat(told.record().breed()).contains("Jersey");
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void a_feed_is_never_below_nothing_and_the_sum_is_that_of_the_feeds(long seed) {
        for (CalfRecord calf : new RandomEvents(seed).told(400).herd().calves()) {
            assertThat(calf.feeds())
                    .as("seed %d", seed)
                    .allMatch(feed -> feed.litres().signum() >= 0);
            assertThat(calf.feeds()).extracting(Feed::at).isSorted();
            assertThat(calf.volumeFedLitres())
                    .as("seed %d", seed)
                    .isEqualByComparingTo(
                            calf.feeds().stream().map(Feed::litres).reduce(BigDecimal.ZERO, BigDecimal::add));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45, 46})
    void feeds_and_dips_are_the_same_in_whatever_order_they_are_told(long seed) {
        Random random = new Random(seed);
        List<Integer> minutes = new ArrayList<>();
        for (int minute = 0; minute < 24 * 60; minute += 1 + random.nextInt(90)) {
            minutes.add(minute);
        }
        CalfRecord inOrder = toldAt(minutes);
        Collections.shuffle(minutes, random);
        CalfRecord inDisorder = toldAt(minutes);
        assertThat(inDisorder.feeds())
                .as("seed %d", seed)
                .usingRecursiveComparison()
                .ignoringFields("id")
                .isEqualTo(inOrder.feeds());
        assertThat(inDisorder.dips()).as("seed %d", seed).extracting(Timed::at).isEqualTo(at(inOrder));
        assertThat(inOrder.feeds()).as("seed %d", seed).anyMatch(feed -> feed.left() != null);
    }

    private static List<Instant> at(CalfRecord calf) {
        return calf.dips().stream().map(Timed::at).toList();
    }

    /** A feed, a dip or something left at each of these minutes; which one depends on the minute only. */
    private static CalfRecord toldAt(List<Integer> minutes) {
        Told told = new Told();
        for (int minute : minutes) {
            Volume volume = new Volume(BigDecimal.valueOf(minute % 7 + 1), VolumeUnit.PINT);
            Event event = switch (minute % 3) {
                case 0 -> new Event.ColostrumFed(volume, null, null);
                case 1 -> new Event.ColostrumLeft(volume);
                default -> new Event.NavelDipped(null, null);
            };
            told.tell(Told.calf("A"), Told.MIDNIGHT.plusSeconds(minute * 60L), event);
        }
        return told.record();
    }

    /** What counts, calf by calf, without the withdrawals themselves. */
    private static List<Object> facts(Herd herd) {
        List<Object> facts = new ArrayList<>();
        for (CalfRecord calf : herd.calves()) {
            facts.add(calf.id());
            calf.history().stream()
                    .filter(entry -> !entry.withdrawn() && !(entry.recorded().event() instanceof EventWithdrawn))
                    .forEach(facts::add);
        }
        return facts;
    }

    private static void assertSame(Herd one, Herd other, String about) {
        assertThat(one.calves()).as(about).isEqualTo(other.calves());
        assertThat(one.barn()).as(about).isEqualTo(other.barn());
        assertThat(one.openNumbers()).as(about).isEqualTo(other.openNumbers());
        for (CalfRecord calf : one.calves()) {
            List<CalfId> twins = one.twinsOf(calf).stream().map(CalfRecord::id).toList();
            assertThat(other.twinsOf(calf)).as(about).extracting(CalfRecord::id).isEqualTo(twins);
        }
    }
}
