package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.RandomEvents;
import strawbed.calf.Told;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.RecordedEvent;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.protocol.Allowed;
import strawbed.protocol.Protocol;
import strawbed.protocol.Setting;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CarePropertiesTest {
    private static final Duration TWO_DAYS = Duration.ofDays(2);

    /** Due at once when the calf is moved or seen not to be licked, which random events tell as before its birth too. */
    private static final Set<DueKind> DUE_WHEN_TOLD = Set.of(DueKind.TAG, DueKind.WEIGH, DueKind.DRY);

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

    /** At each time the list is made from what was recorded up to then; what is recorded later changes it no more. */
    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73, 74})
    void the_list_at_a_time_never_depends_on_what_is_recorded_later(long seed) {
        List<RecordedEvent> all = journal(seed);
        Herd herd = Herd.of(List.of());
        for (int length = 1; length <= all.size(); length++) {
            RecordedEvent last = all.get(length - 1);
            Instant now = last.occurredAt().plus(Duration.ofHours(seed % 5));
            Herd before = herd;
            List<DueItem> list = DueList.open(before, now);
            herd = before.plus(List.of(last));
            String about = "seed " + seed + ", prefix " + length;
            assertThat(DueList.open(before, now)).as(about).isEqualTo(list);
            List<RecordedEvent> upToThen = all.stream()
                    .filter(recorded -> !recorded.recordedAt().isAfter(last.recordedAt()))
                    .toList();
            assertThat(DueList.open(Herd.of(upToThen), now)).as(about).isEqualTo(DueList.open(herd, now));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83, 84, 85, 86})
    void what_is_settled_stays_settled_while_nothing_happens(long seed) {
        Herd herd = Herd.of(journal(seed));
        Farm farm = Farm.of(herd);
        for (CalfRecord calf : herd.calves()) {
            Map<String, DueState> earlier = new HashMap<>();
            for (Duration later = TWO_DAYS; later.compareTo(TWO_DAYS.multipliedBy(5)) < 0; later = later.plusHours(1)) {
                Map<String, DueState> states = new HashMap<>();
                for (DueItem item : DueList.of(calf, farm, Told.MIDNIGHT.plus(later))) {
                    String name = item.kind() + " " + item.times() + " "
                            + item.ground().event();
                    states.put(name, item.state());
                    DueState before = earlier.getOrDefault(name, item.state());
                    assertThat(rank(item.state()))
                            .as("seed %d, calf %s, %s was %s after %s", seed, calf.id(), name, before, later)
                            .isGreaterThanOrEqualTo(rank(before));
                    assertThat(item.state().isOpen() && !calf.isAlive())
                            .as("open for a dead calf: %s", name)
                            .isFalse();
                }
                earlier = states;
            }
        }
    }

    /** The order written down once more: group, kind of what is urgent, its time, kind, and the calves as opened. */
    @ParameterizedTest
    @ValueSource(longs = {91, 92, 93, 94})
    void the_list_has_one_order_of_items_and_calves(long seed) {
        Herd herd = Herd.of(journal(seed));
        List<CalfId> calves = herd.calves().stream().map(CalfRecord::id).toList();
        for (Duration age = Duration.ZERO; age.compareTo(TWO_DAYS) <= 0; age = age.plusHours(2)) {
            Instant now = Told.MIDNIGHT.plus(age);
            Comparator<DueItem> written = Comparator.comparing(
                            (DueItem item) -> isUrgent(item, now) ? 0 : item.state() == DueState.MISSED ? 2 : 1)
                    .thenComparing(item -> isUrgent(item, now) ? item.kind() : DueKind.BREATHING_RECHECK)
                    .thenComparing(item -> item.state() == DueState.AHEAD ? item.from() : item.dueAt())
                    .thenComparing(DueItem::kind)
                    .thenComparing(item -> calves.indexOf(item.calf()));
            assertThat(DueList.open(herd, now))
                    .as("seed %d after %s", seed, age)
                    .isSortedAccordingTo(written);
        }
    }

    private static boolean isUrgent(DueItem item, Instant now) {
        return item.state() == DueState.LATE
                || (item.state() == DueState.DUE && !item.dueAt().isAfter(now.plusSeconds(3600)));
    }

    /** No protocol that a farm can set makes a time run out before it is due, or begin after. */
    @ParameterizedTest
    @ValueSource(longs = {101, 102, 103, 104, 105, 106, 107, 108})
    void any_allowed_protocol_gives_sound_times(long seed) {
        Random random = new Random(seed);
        Map<String, String> settings = new TreeMap<>();
        for (Setting setting : Setting.values()) {
            if (setting.allowed() instanceof Allowed.Amount amount && random.nextBoolean()) {
                settings.put(
                        setting.key(), (random.nextBoolean() ? amount.least() : amount.greatest()).toPlainString());
                if (!Protocol.faults(settings).isEmpty()) {
                    settings.remove(setting.key());
                }
            }
        }
        settings.put("watch_minutes", pick(random, "5, 6, 7", "30, 35", "5, 1440", "30, 60, 120, 240", "1439, 1440"));
        Told told = new Told();
        told.tell(null, Told.MIDNIGHT.minus(TWO_DAYS), new Event.ProtocolAdopted(new TreeMap<>(settings)));
        new RandomEvents(seed)
                .told(150)
                .events()
                .forEach(recorded -> told.tell(recorded.calf(), recorded.occurredAt(), recorded.event()));
        Herd herd = told.herd();
        for (CalfRecord calf : herd.calves()) {
            for (DueItem item : DueList.of(calf, Farm.of(herd), Told.MIDNIGHT.plus(TWO_DAYS))) {
                String about = "seed " + seed + ", " + settings + ", " + item.kind() + " " + item.times();
                if (!DUE_WHEN_TOLD.contains(item.kind())) {
                    assertThat(item.from()).as(about).isBeforeOrEqualTo(item.dueAt());
                }
                assertThat(item.dueAt())
                        .as(about)
                        .isBeforeOrEqualTo(item.times().lateAfter());
                if (item.hardLimit() != null) {
                    assertThat(item.hardLimit()).as(about).isAfterOrEqualTo(item.dueAt());
                }
            }
        }
    }

    private static String pick(Random random, String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    /** Random events, with more of the barn's air and with withdrawals of what was told just before. */
    private static List<RecordedEvent> journal(long seed) {
        Random random = new Random(seed);
        Told told = new Told();
        for (RecordedEvent recorded : new RandomEvents(seed).told(110).events()) {
            told.tell(recorded.calf(), recorded.occurredAt(), recorded.event());
            if (random.nextInt(8) == 0) {
                told.withdraw(told.last());
            }
            if (random.nextInt(8) == 0) {
                told.tell(
                        null,
                        recorded.occurredAt(),
                        new Event.BarnClimateNoted(
                                new Temperature(BigDecimal.valueOf(random.nextInt(40)), TemperatureUnit.CELSIUS),
                                BigDecimal.valueOf(random.nextInt(100))));
            }
        }
        return told.events();
    }

    /** How far an item has come; with time alone it never goes back. */
    private static int rank(DueState state) {
        return switch (state) {
            case AHEAD -> 0;
            case DUE -> 1;
            case LATE -> 2;
            case MISSED -> 3;
            case DONE, NOT_NEEDED -> 4;
        };
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
