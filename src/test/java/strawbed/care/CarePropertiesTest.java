package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.RandomEvents;
import strawbed.calf.Told;
import strawbed.event.RecordedEvent;
import strawbed.protocol.Protocol;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CarePropertiesTest {
    private static final Duration TWO_DAYS = Duration.ofDays(2);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void no_record_makes_any_rule_throw_and_the_order_of_states_holds(long seed) {
        List<RecordedEvent> all = new RandomEvents(seed).told(150).events();
        for (int length = 0; length <= all.size(); length += 5) {
            Herd herd = Herd.of(all.subList(0, length));
            Instant now = Told.MIDNIGHT.plus(Duration.ofMinutes(length * 20L));
            for (CalfRecord calf : herd.calves()) {
                String about = "seed " + seed + ", prefix " + length + ", calf " + calf.id();
                assertThat(DueList.of(calf, Farm.of(herd), now))
                        .as(about)
                        .isNotEmpty()
                        .allSatisfy(item -> assertSound(item, now));
                assertThat(Caution.of(calf, herd))
                        .as(about)
                        .doesNotHaveDuplicates()
                        .isSorted();
                assertDoseIsSound(FirstDose.of(calf, Farm.of(herd).protocolFor(calf), now), Farm.of(herd), about);
            }
        }
        all.forEach(recorded -> {
            assertThat(Plausibility.of(recorded.event())).as("seed %d", seed).allMatch(CarePropertiesTest::isOutside);
            assertThat(Caution.of(recorded.event(), Protocol.usual()))
                    .as("seed %d", seed)
                    .isNotNull();
        });
    }

    private static void assertDoseIsSound(FirstDose dose, Farm farm, String about) {
        assertThat(dose.litres().value().isPresent())
                .as(about)
                .isEqualTo(dose.calf().firstFeed().isPresent());
        dose.litres()
                .value()
                .ifPresent(litres -> assertThat(litres)
                        .as(about)
                        .isLessThanOrEqualTo(dose.calf().volumeFedLitres()));
        AntibodyMass.of(dose, farm)
                .value()
                .ifPresent(mass -> assertThat(mass.grams()).as(about).isBetween(mass.least(), mass.most()));
        assertThat(FedColostrum.of(dose.calf(), dose.feeds(), dose.end(), dose.protocol(), farm))
                .as(about)
                .extracting(FedColostrum::feed)
                .containsExactlyElementsOf(dose.feeds());
        Absorption.observed(dose, farm)
                .value()
                .ifPresent(range -> assertThat(range.least()).as(about).isLessThanOrEqualTo(range.most()));
        Absorption.expectedSerum(dose, farm)
                .value()
                .ifPresent(range -> assertThat(range.least()).as(about).isLessThanOrEqualTo(range.most()));
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43, 44, 45})
    void one_record_and_one_time_give_one_list_however_it_was_handed_over(long seed) {
        List<RecordedEvent> all = new RandomEvents(seed).told(120).events();
        List<RecordedEvent> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, new Random(seed));
        for (Duration age = Duration.ZERO; age.compareTo(TWO_DAYS) <= 0; age = age.plusHours(3)) {
            Instant now = Told.MIDNIGHT.plus(age);
            assertThat(DueList.open(Herd.of(shuffled), now))
                    .as("seed %d at %s", seed, now)
                    .isEqualTo(DueList.open(Herd.of(all), now));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54, 55})
    void time_alone_settles_nothing_and_moves_no_due_time(long seed) {
        Herd herd = new RandomEvents(seed).told(100).herd();
        Farm farm = Farm.of(herd);
        for (CalfRecord calf : herd.calves()) {
            List<String> before = withoutState(DueList.of(calf, farm, Told.MIDNIGHT));
            List<String> after = withoutState(DueList.of(calf, farm, Told.MIDNIGHT.plus(TWO_DAYS)));
            assertThat(after).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(before);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63})
    void the_herds_list_is_that_of_its_living_calves(long seed) {
        Herd herd = new RandomEvents(seed).told(60).herd();
        Instant now = Told.MIDNIGHT.plus(Duration.ofHours(20));
        List<DueItem> open = DueList.open(herd, now);
        for (CalfRecord calf : herd.calves()) {
            List<DueItem> ofCalf =
                    open.stream().filter(item -> item.calf().equals(calf.id())).toList();
            if (calf.isAlive()) {
                assertThat(DueList.of(calf, Farm.of(herd), now))
                        .as("seed %d", seed)
                        .containsSubsequence(ofCalf);
            } else {
                assertThat(ofCalf).as("seed %d", seed).isEmpty();
            }
        }
    }

    private static void assertSound(DueItem item, Instant now) {
        Instant from = item.from();
        assertThat(from).isNotNull();
        if (item.state() == DueState.AHEAD) {
            assertThat(now).isBefore(from);
        }
        if (item.state() == DueState.LATE) {
            assertThat(now).isAfter(item.dueAt());
        }
        if (item.hardLimit() != null) {
            assertThat(item.hardLimit()).isAfterOrEqualTo(item.dueAt());
        }
    }

    private static boolean isOutside(Oddity odd) {
        return odd.value().compareTo(odd.low()) < 0 || odd.value().compareTo(odd.high()) > 0;
    }

    /** But for what the weather asks for, which changes with the age of the barn's last reading. */
    private static List<String> withoutState(List<DueItem> items) {
        return items.stream()
                .filter(item -> item.kind() != DueKind.SHELTER && item.kind() != DueKind.DRY)
                .map(item -> item.kind() + " " + item.from() + " " + item.dueAt() + " "
                        + item.state().isOpen())
                .toList();
    }
}
