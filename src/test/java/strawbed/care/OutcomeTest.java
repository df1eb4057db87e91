package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.RandomEvents;
import strawbed.calf.Told;
import strawbed.care.Vigour.State;
import strawbed.event.Event;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.ProtocolAdopted;
import strawbed.event.Event.SerumTested;
import strawbed.event.EventId;
import strawbed.event.Provenance;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.Term.SerumMeasure;
import strawbed.event.When;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.CountedSign;

/** What the examples in one line cannot say: whole answers, corrections, periods and clocks that were set back. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OutcomeTest {
    private static final BirthPeriod FIRST_DAY = new BirthPeriod(Told.MIDNIGHT, Told.time("24:00"));

    @Test
    void a_verdict_names_its_sample_its_age_and_what_the_age_is_counted_from() {
        Told told = born("06:00").a("40:00", protein("5.75", "36:30"));
        PassiveImmunity immunity =
                PassiveImmunity.of(told.record(), Farm.of(told.herd())).value().orElseThrow();
        assertThat(immunity.sample().id()).isEqualTo(told.last());
        assertThat(immunity.age()).isEqualTo(Duration.parse("PT30H30M"));
        assertThat(immunity.start())
                .isEqualTo(new AgeStart(Told.time("06:00"), Told.time("06:00"), AgeStart.Basis.BORN));
        assertThat(immunity.shown()).isEqualTo("5.75");
    }

    @Test
    void a_category_names_its_least_reading() {
        assertThat(ImmunityCategory.GOOD.from(SerumMeasure.BRIX)).contains(new BigDecimal("8.9"));
        assertThat(ImmunityCategory.POOR.from(SerumMeasure.IGG)).isEmpty();
    }

    @Test
    void a_withdrawn_sample_tells_nothing() {
        Told told = born("06:00").a("40:00", protein("5.0", "36:30"));
        told.withdraw(told.last());
        assertThat(PassiveImmunity.of(told.record(), Farm.of(told.herd())).whyNot())
                .contains(WhyNot.NO_SAMPLE);
    }

    @Test
    void a_withdrawn_word_on_the_birth_tells_nothing() {
        Told told = born("06:00").a("06:05", Told.score(4)).a("06:06", Told.score(1));
        told.withdraw(told.last());
        assertThat(EaseClass.of(told.record()).value()).contains(EaseClass.DIFFICULT);
    }

    @Test
    void a_period_holds_its_beginning_and_not_its_end() {
        Told told = new Told();
        List.of("00:00", "23:59:59", "24:00")
                .forEach(time -> told.open(time, time, null, null).of(time, time, new CalfBorn(Told.at(time))));
        told.open("before", "00:00", null, null)
                .of("before", "00:00", new CalfBorn(new When.At(Told.MIDNIGHT.minusSeconds(1))));
        assertThat(FIRST_DAY.bornIn(told.herd()))
                .extracting(CalfRecord::id)
                .containsExactly(Told.calf("00:00"), Told.calf("23:59:59"));
        assertThat(HerdFigures.of(told.herd(), Farm.of(told.herd()), FIRST_DAY, Told.time("24:00"))
                        .born())
                .isEqualTo(2);
    }

    @Test
    void a_period_cannot_end_before_it_begins() {
        assertThatThrownBy(() -> new BirthPeriod(Told.time("00:01"), Told.MIDNIGHT))
                .hasMessageContaining("2026-03-01T00:00:00Z");
        assertThat(new BirthPeriod(Told.MIDNIGHT, Told.MIDNIGHT)
                        .bornIn(born("00:00").herd()))
                .isEmpty();
    }

    @Test
    void a_herd_without_calves_is_too_few_even_where_none_are_asked_for() {
        HerdImmunity none = new HerdImmunity(FIRST_DAY, Map.of(), Map.of(), 0, 0, 0);
        assertThat(none.goal().whyNot()).contains(WhyNot.TOO_FEW);
        assertThat(none.counts()).containsOnlyKeys(ImmunityCategory.values()).containsValue(0);
    }

    @Test
    void a_share_is_never_shown_on_the_other_side_of_the_goal() {
        assertThat(shares(1001, 0, 0, 1501)).containsEntry(ImmunityCategory.EXCELLENT, "40.01");
        assertThat(shares(999, 0, 0, 1501)).containsEntry(ImmunityCategory.EXCELLENT, "39.96");
        assertThat(shares(2260, 0, 0, 251)).containsEntry(ImmunityCategory.POOR, "9.996");
        assertThat(shares(9, 0, 0, 1)).containsEntry(ImmunityCategory.POOR, "10.0");
        assertThat(shares(4, 0, 0, 6)).containsEntry(ImmunityCategory.EXCELLENT, "40.0");
        assertThat(shares(1, 2, 4, 5))
                .containsEntry(ImmunityCategory.GOOD, "16.7")
                .containsEntry(ImmunityCategory.FAIR, "33.3");
    }

    @Test
    void a_later_protocol_changes_no_earlier_verdict() {
        Told told = new Told();
        for (int i = 0; i < 12; i++) {
            told.open("c" + i, "01:00", null, null)
                    .of("c" + i, "01:00", new CalfBorn(Told.at("01:00")))
                    .of("c" + i, "30:00", protein("6.2", "30:00"));
        }
        told.tell(null, Told.time("00:00"), new ProtocolAdopted(new TreeMap<>(Map.of("least_calves_for_herd", "12"))));
        told.tell(null, Told.time("40:00"), new ProtocolAdopted(new TreeMap<>(Map.of("least_calves_for_herd", "60"))));
        HerdImmunity herd = HerdImmunity.of(told.herd(), Farm.of(told.herd()), FIRST_DAY);
        assertThat(herd.least()).isEqualTo(12);
        assertThat(herd.goal().value()).contains(new HerdImmunity.Goal(true, true));
        told.open("young", "23:00", null, null).of("young", "41:00", new CalfBorn(Told.at("41:00")));
        BirthPeriod twoDays = new BirthPeriod(Told.MIDNIGHT, Told.time("48:00"));
        assertThat(HerdImmunity.of(told.herd(), Farm.of(told.herd()), twoDays).least())
                .isEqualTo(60);
        BirthPeriod empty = new BirthPeriod(Told.time("100:00"), Told.time("101:00"));
        assertThat(HerdImmunity.of(told.herd(), Farm.of(told.herd()), empty).least())
                .isEqualTo(60);
    }

    @Test
    void a_sign_names_the_event_that_it_rests_on() {
        Told told = born("06:00")
                .a("06:40", new MilestoneReached(Term.Milestone.STANDING))
                .a("06:50", new MilestoneReached(Term.Milestone.STANDING));
        Vigour vigour = Vigour.of(told.record(), Farm.of(told.herd()));
        assertThat(vigour.with(State.NORMAL)).singleElement().satisfies(seen -> {
            assertThat(seen.sign()).isEqualTo(CountedSign.STANDING);
            assertThat(seen.by()).extracting(by -> by.at()).isEqualTo(Told.time("06:40"));
        });
        assertThat(vigour.with(State.NOT_RECORDED))
                .hasSize(CountedSign.values().length - 1)
                .allSatisfy(seen -> assertThat(seen.by()).isNull());
    }

    @Test
    void a_correction_of_the_birth_moves_all_that_is_due_and_all_that_is_judged() {
        Told told = new Told().open("A", "06:00", null, null).a("06:00", new CalfBorn(Told.at("06:00")));
        EventId wrong = told.last();
        told.a("47:00", new CalfDied(Told.time("53:30"), Term.DeathTime.LATER), protein("5.5", "29:30"));
        Map<DueKind, Instant> before = dueTimes(told);
        assertThat(outcome(told)).isEqualTo(BirthOutcome.Kind.DIED_WITHIN_LIMIT);
        assertThat(PassiveImmunity.of(told.record(), Farm.of(told.herd())).whyNot())
                .contains(WhyNot.DRAWN_TOO_EARLY);
        told.withdraw(wrong);
        told.a("06:30", new CalfBorn(Told.at("05:00")));
        assertThat(dueTimes(told))
                .hasSize(11)
                .isEqualTo(before.entrySet().stream()
                        .collect(Collectors.toMap(
                                Map.Entry::getKey, due -> due.getValue().minus(Duration.ofHours(1)))));
        assertThat(outcome(told)).isEqualTo(BirthOutcome.Kind.DIED_LATER);
        assertThat(PassiveImmunity.of(told.record(), Farm.of(told.herd())).value())
                .isPresent();
    }

    @Test
    void a_clock_that_was_set_back_changes_no_age() {
        Herd herd = Herd.of(List.of(
                recorded(1, "07:00", "07:00", new Event.CalfOpened(null, null)),
                recorded(2, "07:00", "06:00", new CalfBorn(Told.at("06:00"))),
                // The clock went back an hour here: what was told later bears an earlier time of record.
                recorded(3, "06:20", "06:50", new MilestoneReached(Term.Milestone.STANDING)),
                recorded(4, "06:30", "06:10", new MilestoneReached(Term.Milestone.ON_ITS_BREASTBONE)),
                recorded(
                        5,
                        "06:40",
                        "07:30",
                        new Event.ColostrumFed(new Volume(BigDecimal.ONE, VolumeUnit.LITRE), null, null))));
        CalfRecord calf = herd.calf(Told.calf("A")).orElseThrow();
        assertThat(FirstFeedAge.of(calf).value().orElseThrow().middle()).isEqualTo(Duration.ofMinutes(90));
        assertThat(Vigour.of(calf, Farm.of(herd)).with(State.NORMAL))
                .extracting(Vigour.Seen::sign)
                .containsExactly(CountedSign.ON_BREASTBONE, CountedSign.STANDING);
        assertThat(DueList.of(calf, Farm.of(herd), Told.time("07:40")))
                .filteredOn(item -> item.kind() == DueKind.FIRST_COLOSTRUM || item.kind() == DueKind.STAND)
                .extracting(DueItem::state)
                .containsOnly(DueState.DONE);
    }

    @ParameterizedTest
    @ValueSource(longs = {71, 72, 73, 74, 75, 76, 77, 78})
    void no_record_makes_any_outcome_throw_and_all_are_counted_once(long seed) {
        List<RecordedEvent> all = new RandomEvents(seed).told(150).events();
        for (int length = 0; length <= all.size(); length += 10) {
            Herd herd = Herd.of(all.subList(0, length));
            Farm farm = Farm.of(herd);
            String about = "seed " + seed + ", prefix " + length;
            BirthPeriod period = new BirthPeriod(Told.MIDNIGHT, Told.time("72:00"));
            int born = period.bornIn(herd).size();
            HerdImmunity immunity = HerdImmunity.of(herd, farm, period);
            int left = immunity.notCounted().values().stream()
                    .mapToInt(Integer::intValue)
                    .sum();
            assertThat(immunity.counted() + left).as(about).isEqualTo(born);
            HerdFigures figures = HerdFigures.of(herd, farm, period, Told.time("48:00"));
            assertThat(List.of(figures.stillborn(), figures.assisted(), figures.difficult(), figures.goodBrix()))
                    .as(about)
                    .allSatisfy(
                            figure -> assertThat(figure.of() + figure.unknown()).isEqualTo(born));
            assertThat(figures.firstFeeds().known())
                    .as(about)
                    .hasSize(figures.fedWithinFourHours().of());
            assertThat(figures.firstFeeds().unknown())
                    .as(about)
                    .isEqualTo(figures.fedWithinFourHours().unknown());
            assertThat(figures.difficult().count())
                    .as(about)
                    .isLessThanOrEqualTo(figures.assisted().count());
            for (CalfRecord calf : herd.calves()) {
                Vigour vigour = Vigour.of(calf, farm);
                assertThat(vigour.signs())
                        .as(about)
                        .hasSize(farm.protocolFor(calf).signs().size());
                assertThat(Freemartin.chanceInPercent(calf, herd).isPresent())
                        .as(about)
                        .isIn(false, Freemartin.of(calf, herd) == Freemartin.UNKNOWN);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83})
    void what_is_shown_never_leaves_its_category(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2_000; i++) {
            for (SerumMeasure measure : SerumMeasure.values()) {
                BigDecimal value = BigDecimal.valueOf(random.nextInt(30_000), 3);
                BigDecimal shown = ImmunityCategory.shown(measure, value);
                assertThat(ImmunityCategory.of(measure, shown))
                        .as("seed %d, %s %s", seed, measure, value)
                        .isEqualTo(ImmunityCategory.of(measure, value));
                assertThat(shown.subtract(value).abs()).isLessThanOrEqualTo(new BigDecimal("0.05"));
            }
        }
    }

    private static Told born(String time) {
        return new Told().open("A", time, null, null).a(time, new CalfBorn(Told.at(time)));
    }

    private static SerumTested protein(String value, String drawnAt) {
        return new SerumTested(SerumMeasure.PROTEIN, new BigDecimal(value), Told.time(drawnAt));
    }

    private static BirthOutcome.Kind outcome(Told told) {
        return BirthOutcome.of(told.record(), Farm.of(told.herd()))
                .value()
                .orElseThrow()
                .kind();
    }

    private static Map<DueKind, Instant> dueTimes(Told told) {
        return DueList.of(told.record(), Farm.of(told.herd()), Told.time("06:30")).stream()
                .collect(Collectors.toMap(DueItem::kind, DueItem::dueAt));
    }

    private static Map<ImmunityCategory, String> shares(int excellent, int good, int fair, int poor) {
        Map<ImmunityCategory, Integer> counts = new EnumMap<>(ImmunityCategory.class);
        counts.put(ImmunityCategory.EXCELLENT, excellent);
        counts.put(ImmunityCategory.GOOD, good);
        counts.put(ImmunityCategory.FAIR, fair);
        counts.put(ImmunityCategory.POOR, poor);
        HerdImmunity herd = new HerdImmunity(FIRST_DAY, counts, Map.of(), 0, 0, 8);
        return counts.keySet().stream()
                .collect(Collectors.toMap(
                        Function.identity(),
                        category -> herd.shownPercent(category)
                                .value()
                                .orElseThrow()
                                .toPlainString()));
    }

    private static RecordedEvent recorded(long sequence, String recordedAt, String occurredAt, Event event) {
        return new RecordedEvent(
                new EventId(new UUID(0x7000L, sequence)),
                sequence,
                Told.time(recordedAt),
                Told.time(occurredAt),
                ZoneId.of("America/Chicago"),
                Told.calf("A"),
                event,
                Provenance.of(Provenance.Source.COMMAND));
    }
}
