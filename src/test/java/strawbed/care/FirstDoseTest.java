package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfWeighed;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumLeft;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FirstDoseTest {
    @Test
    void a_second_feed_is_not_part_of_the_first_dose() {
        FirstDose dose = FirstDose.of(born().a("01:00", fed("2"))
                .a("06:59", fed("1"))
                .a("07:00", fed("2"))
                .record());
        assertThat(dose.litres()).isEqualByComparingTo("3");
    }

    @Test
    void what_was_left_is_not_taken() {
        FirstDose dose = FirstDose.of(born().a("00:30", weighed("40"))
                .a("01:00", fed("4"), new ColostrumLeft(litres("1")))
                .record());
        assertThat(dose.litres()).isEqualByComparingTo("3");
        assertThat(dose.shareOfBirthWeight()).contains(new BigDecimal("7.5"));
        assertThat(dose.timeToTarget()).isEmpty();
    }

    @Test
    void the_target_is_met_to_the_millilitre_without_rounding() {
        Told told = born().a("00:30", weighed("40.001")).a("01:00", fed("4"));
        assertThat(FirstDose.of(told.record()).shareOfBirthWeight()).contains(new BigDecimal("10.0"));
        assertThat(FirstDose.of(told.record()).timeToTarget()).isEmpty();
        told.a("02:00", fed("0.001"));
        assertThat(FirstDose.of(told.record()).timeToTarget()).contains(Duration.ofHours(2));
    }

    @Test
    void a_weight_taken_after_the_first_day_is_no_birth_weight() {
        assertThat(FirstDose.of(born().a("24:01", weighed("50")).record()).targetLitres())
                .isEmpty();
        assertThat(FirstDose.of(born().a("24:00", weighed("50")).record()).targetLitres())
                .hasValueSatisfying(target -> assertThat(target).isEqualByComparingTo("5"));
    }

    @Test
    void a_weight_of_nothing_gives_no_share() {
        FirstDose dose = FirstDose.of(
                born().a("00:30", weighed("0")).a("01:00", fed("4")).record());
        assertThat(dose.shareOfBirthWeight()).isEmpty();
        assertThat(dose.targetLitres()).isEmpty();
    }

    @Test
    void a_feed_told_as_before_the_birth_came_at_once() {
        FirstDose dose = FirstDose.of(new Told()
                .a("02:00", new CalfBorn(Told.at("02:00")))
                .a("01:00", fed("4"))
                .record());
        assertThat(dose.timeToFirstFeed()).contains(Duration.ZERO);
        assertThat(dose.timing()).contains(ColostrumTiming.BEST);
    }

    @Test
    void without_a_feed_there_is_no_dose() {
        FirstDose dose = FirstDose.of(born().record());
        assertThat(dose.timeToFirstFeed()).isEmpty();
        assertThat(dose.timing()).isEmpty();
        assertThat(dose.litres()).isEqualByComparingTo("0");
    }

    private static Told born() {
        return new Told().open("A", "00:00", null, null).a("00:00", new CalfBorn(Told.at("00:00")));
    }

    private static CalfWeighed weighed(String kilograms) {
        return new CalfWeighed(new Mass(new BigDecimal(kilograms), MassUnit.KILOGRAM), null);
    }

    private static ColostrumFed fed(String litres) {
        return new ColostrumFed(litres(litres), null, null);
    }

    private static Volume litres(String litres) {
        return new Volume(new BigDecimal(litres), VolumeUnit.LITRE);
    }
}
