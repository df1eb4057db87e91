package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.care.HerdReport.DamAge;
import strawbed.care.HerdReport.Days;
import strawbed.care.HerdReport.Group;
import strawbed.care.HerdReport.Grouping;
import strawbed.care.HerdReport.Shift;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.testkit.SimulatedHerd;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdReportTest {
    private static final ZoneId BARN = ZoneId.of("America/Chicago");
    private static final Days DAYS = new Days(LocalDate.of(2026, 2, 28), LocalDate.of(2026, 3, 1));
    private static final Event.NavelDipped DIP = new Event.NavelDipped(Term.NavelAgent.IODINE, BigDecimal.valueOf(7));

    private static Event.ColostrumFed fed() {
        return new Event.ColostrumFed(
                new Volume(BigDecimal.valueOf(3), VolumeUnit.QUART), Term.FeedingMethod.BOTTLE, null);
    }

    private static Told born(String time) {
        return new Told().open("A", time, "12", "88").a(time, new Event.CalfBorn(Told.at(time)));
    }

    private static HerdReport report(Herd herd, String now) {
        return HerdReport.of(herd, Farm.of(herd), DAYS, BARN, Told.time(now));
    }

    private static Figure figure(HerdReport report, HerdMeasure measure) {
        return Objects.requireNonNull(report.figures().get(measure));
    }

    private static String counts(Figure figure) {
        return figure.count() + " of " + figure.of() + ", " + figure.unknown() + " unknown";
    }

    /** Midnight of the barn is 06:00 of these times. Shifts begin at 6, 14 and 22 o'clock of the barn. */
    @ParameterizedTest
    @CsvSource({
        "06:00, FROM_22_TO_6",
        "11:59, FROM_22_TO_6",
        "12:00, FROM_6_TO_14",
        "19:59, FROM_6_TO_14",
        "20:00, FROM_14_TO_22",
        "27:59, FROM_14_TO_22",
        "28:00, FROM_22_TO_6",
        "29:59, FROM_22_TO_6"
    })
    void a_birth_counts_in_the_shift_of_its_time_in_the_barn(String time, Shift shift) {
        HerdReport report = report(born(time).herd(), "40:00");
        assertThat(Objects.requireNonNull(report.groups().get(Grouping.SHIFT)))
                .filteredOn(group -> group.born() == 1)
                .extracting(Group::key)
                .containsExactly(shift);
    }

    @Test
    void days_and_weeks_are_those_of_the_barn() {
        // 05:59 UTC of 1 March is still the last of February in the barn, a Saturday.
        HerdReport report = report(born("05:59").herd(), "40:00");
        assertThat(report.born()).isEqualTo(1);
        assertThat(Objects.requireNonNull(report.groups().get(Grouping.WEEKDAY)))
                .filteredOn(group -> group.born() == 1)
                .extracting(Group::key)
                .containsExactly(DayOfWeek.SATURDAY);
        assertThat(Objects.requireNonNull(report.groups().get(Grouping.WEEK)))
                .extracting(Group::key)
                .as("Sunday belongs to the week before, by ISO 8601")
                .containsExactly(LocalDate.of(2026, 2, 23));
        assertThat(report(born("30:00").herd(), "40:00").born()).as("2 March").isZero();
    }

    @Test
    void the_dams_age_is_what_was_told() {
        Told told = born("12:00")
                .a("12:00", new Event.DamNoted("88", 1))
                .open("B", "13:00", "13", "89")
                .of("B", "13:00", new Event.DamNoted("89", 2))
                .open("C", "14:00", "14", null);
        assertThat(Objects.requireNonNull(report(told.herd(), "40:00").groups().get(Grouping.DAM)))
                .extracting(group -> group.key() + " " + group.born())
                .containsExactly(DamAge.FIRST_CALF + " 1", DamAge.OLDER + " 1", DamAge.NOT_KNOWN + " 1");
    }

    /** Usual practice of the protocol: the first dip within half an hour. */
    @ParameterizedTest
    @CsvSource({
        "12:30, '1 of 1, 0 unknown'",
        "12:31, '0 of 1, 0 unknown'",
        "40:00, '0 of 1, 0 unknown'",
    })
    void a_dip_is_in_time_up_to_the_protocols_limit(String dipped, String counts) {
        Herd herd = born("12:00").a(dipped, DIP).herd();
        assertThat(counts(figure(report(herd, "40:00"), HerdMeasure.DIPPED_IN_TIME)))
                .isEqualTo(counts);
    }

    @Test
    void a_calf_without_a_dip_does_not_count_until_the_limit_has_passed() {
        Herd undipped = born("12:00").herd();
        assertThat(counts(figure(report(undipped, "12:29"), HerdMeasure.DIPPED_IN_TIME)))
                .isEqualTo("0 of 0, 1 unknown");
        assertThat(counts(figure(report(undipped, "12:30"), HerdMeasure.DIPPED_IN_TIME)))
                .isEqualTo("0 of 1, 0 unknown");
    }

    @Test
    void two_dips_count_on_the_first_day_of_a_calf_that_is_a_day_old() {
        Herd twice = born("12:00").a("12:10", DIP).a("36:00", DIP).herd();
        assertThat(counts(figure(report(twice, "36:00"), HerdMeasure.DIPPED_TWICE)))
                .isEqualTo("1 of 1, 0 unknown");
        assertThat(counts(figure(report(twice, "35:59"), HerdMeasure.DIPPED_TWICE)))
                .as("not a day old")
                .isEqualTo("0 of 0, 1 unknown");
        Herd late = born("12:00").a("12:10", DIP).a("36:01", DIP).herd();
        assertThat(counts(figure(report(late, "40:00"), HerdMeasure.DIPPED_TWICE)))
                .isEqualTo("0 of 1, 0 unknown");
    }

    /** Usual practice of the protocol: a dip counts for a feed up to 30 min before or after it, on the first day. */
    @ParameterizedTest
    @CsvSource({
        "13:30, '1 of 1, 0 unknown'",
        "12:30, '1 of 1, 0 unknown'",
        "12:29, '0 of 1, 0 unknown'",
        "13:31, '0 of 1, 0 unknown'",
    })
    void a_dip_near_each_feed_counts(String dipped, String counts) {
        Herd herd = born("12:00").a("13:00", fed()).a(dipped, DIP).herd();
        assertThat(counts(figure(report(herd, "40:00"), HerdMeasure.DIPPED_AROUND_FEEDS)))
                .isEqualTo(counts);
    }

    @Test
    void each_feed_of_the_first_day_asks_for_its_dip_and_a_calf_counts_when_that_is_over() {
        Told told = born("12:00").a("13:00", fed(), DIP).a("20:00", fed());
        assertThat(counts(figure(report(told.herd(), "36:29"), HerdMeasure.DIPPED_AROUND_FEEDS)))
                .as("too young")
                .isEqualTo("0 of 0, 1 unknown");
        assertThat(counts(figure(report(told.herd(), "36:30"), HerdMeasure.DIPPED_AROUND_FEEDS)))
                .isEqualTo("0 of 1, 0 unknown");
        Herd late = told.a("20:10", DIP).a("36:01", fed()).herd();
        assertThat(counts(figure(report(late, "40:00"), HerdMeasure.DIPPED_AROUND_FEEDS)))
                .as("the third feed came after the first day")
                .isEqualTo("1 of 1, 0 unknown");
        Herd unfed = born("12:00").a("12:10", DIP).herd();
        assertThat(counts(figure(report(unfed, "40:00"), HerdMeasure.DIPPED_AROUND_FEEDS)))
                .isEqualTo("0 of 0, 1 unknown");
    }

    @Test
    void calf_by_calf_there_are_the_doses_with_their_weights_and_the_plausible_readings() {
        Herd herd = born("12:00")
                .a(
                        "12:10",
                        new Event.CalfWeighed(
                                new Mass(BigDecimal.valueOf(40), MassUnit.KILOGRAM), Term.WeighingMethod.SCALE))
                .a("12:20", new Event.ColostrumTestedByBrix(new BigDecimal("24.5")))
                .a("13:00", fed())
                .open("B", "14:00", "13", "89")
                .of("B", "14:00", new Event.CalfBorn(Told.at("14:00")))
                .of("B", "14:10", new Event.ColostrumTestedByBrix(new BigDecimal("99")))
                .herd();
        HerdSpread spread = report(herd, "40:00").spread();
        assertThat(spread.brix()).as("99 % is no reading").containsExactly(new BigDecimal("24.5"));
        assertThat(spread.doses()).hasSize(1);
        HerdSpread.Dose dose = spread.doses().get(0);
        assertThat(dose.kilograms()).isEqualByComparingTo("40");
        assertThat(dose.litres()).isBetween(new BigDecimal("2.83"), new BigDecimal("2.85"));
        assertThat(dose.grams()).isPresent();
    }

    @ParameterizedTest
    @CsvSource({"13:00, 1111", "13:01, 0111", "14:01, 0011", "16:00, 0011", "16:01, 0001", "18:01, 0000"})
    void a_first_feed_counts_within_one_two_four_and_six_hours(String fed, String within) {
        HerdReport report = report(born("12:00").a(fed, fed()).herd(), "40:00");
        StringBuilder found = new StringBuilder();
        for (HerdMeasure measure : List.of(
                HerdMeasure.FED_WITHIN_1_HOUR,
                HerdMeasure.FED_WITHIN_2_HOURS,
                HerdMeasure.FED_WITHIN_4_HOURS,
                HerdMeasure.FED_WITHIN_6_HOURS)) {
            found.append(figure(report, measure).count());
        }
        assertThat(found.toString()).isEqualTo(within);
    }

    @Test
    void a_calf_that_was_born_dead_is_asked_for_no_feed_and_no_dip() {
        Herd herd = born("12:00")
                .a("12:00", new Event.CalfDied(Told.time("12:00"), Term.DeathTime.AT_BIRTH))
                .herd();
        HerdReport report = report(herd, "40:00");
        assertThat(counts(figure(report, HerdMeasure.STILLBORN))).isEqualTo("1 of 1, 0 unknown");
        for (HerdMeasure measure :
                List.of(HerdMeasure.FED_WITHIN_4_HOURS, HerdMeasure.DIPPED_IN_TIME, HerdMeasure.DOSE_ENOUGH)) {
            assertThat(counts(figure(report, measure))).as("%s", measure).isEqualTo("0 of 0, 0 unknown");
        }
    }

    @Test
    void first_feeds_are_counted_by_the_hour() {
        Told told = born("12:00").a("12:59", fed()).open("B", "12:00", "13", "89");
        told.of("B", "12:00", new Event.CalfBorn(Told.at("12:00"))).of("B", "21:00", fed());
        assertThat(report(told.herd(), "40:00").firstFeedsByHour(6)).containsExactly(1, 0, 0, 0, 0, 0, 1);
    }

    @Test
    void the_parts_of_a_herd_add_up_to_the_whole_and_agree_with_the_figures_of_the_due_list() {
        Instant from = Instant.parse("2026-01-05T06:00:00Z");
        Herd herd = Herd.of(new SimulatedHerd(600, 10, from, 17).rest());
        Days days = new Days(LocalDate.of(2026, 1, 10), LocalDate.of(2026, 2, 20));
        Instant now = from.plus(Duration.ofDays(70));
        HerdReport report = HerdReport.of(herd, Farm.of(herd), days, BARN, now);
        assertThat(report.born()).isGreaterThan(300);
        report.groups().forEach((grouping, groups) -> {
            assertThat(groups.stream().mapToInt(Group::born).sum()).isEqualTo(report.born());
            for (HerdMeasure measure : HerdMeasure.values()) {
                List<Figure> parts = groups.stream()
                        .map(group -> Objects.requireNonNull(group.figures().get(measure)))
                        .toList();
                Figure sum = new Figure(
                        parts.stream().mapToInt(Figure::count).sum(),
                        parts.stream().mapToInt(Figure::of).sum(),
                        parts.stream().mapToInt(Figure::unknown).sum(),
                        parts.stream().mapToInt(Figure::flagged).sum());
                assertThat(sum).as("%s %s", grouping, measure).isEqualTo(figure(report, measure));
                assertThat(sum.of()).as("%s", measure).isPositive();
            }
        });
        HerdFigures figures = HerdFigures.of(herd, Farm.of(herd), days.period(BARN), now);
        assertThat(figure(report, HerdMeasure.FED_WITHIN_4_HOURS)).isEqualTo(figures.fedWithinFourHours());
        assertThat(figure(report, HerdMeasure.STILLBORN)).isEqualTo(figures.stillborn());
        assertThat(report.firstFeedsByHour(24).stream()
                        .mapToInt(Integer::intValue)
                        .sum())
                .isEqualTo(figures.firstFeeds().known().size());
    }

    @Test
    void a_period_does_not_end_before_it_begins() {
        assertThatThrownBy(() -> new Days(LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 1)))
                .hasMessageContaining("2026-03-01");
    }
}
