package strawbed.calf;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.CalfId;
import strawbed.event.Event;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.TwinNoted;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HerdTest {
    @Test
    void an_empty_record_has_no_calves() {
        assertThat(Herd.of(List.of()).calves()).isEmpty();
        assertThat(Herd.of(List.of()).openNumbers()).isEmpty();
        assertThat(Herd.of(List.of()).byNumber("1")).isEmpty();
    }

    @Test
    void calves_stand_in_the_order_in_which_they_were_opened() {
        Herd herd = new Told()
                .of("C", "05:00", new SexNoted(Term.Sex.MALE))
                .open("B", "06:00", "2", null)
                .open("A", "05:00", "1", null)
                .herd();
        assertThat(ids(herd.calves())).containsExactly(Told.calf("B"), Told.calf("A"));
        assertThat(herd.calf(Told.calf("C"))).isPresent();
    }

    @Test
    void a_calf_whose_opening_is_undone_is_no_longer_listed() {
        Told told = new Told().open("A", "06:00", "1", "412");
        told.withdraw(told.last());
        assertThat(told.herd().calves()).isEmpty();
        assertThat(told.herd().byNumber("1")).isEmpty();
        assertThat(told.herd().byDam("412")).isEmpty();
        assertThat(told.record().isOpen()).isFalse();
    }

    @Test
    void a_number_means_the_youngest_open_calf_that_bears_it() {
        Told told = new Told()
                .open("A", "06:00", "0412", null)
                .of("A", "06:00", new CalfBorn(Told.at("05:00")))
                .open("B", "06:10", "412", null)
                .of("B", "06:10", new CalfBorn(Told.at("04:00")));
        assertThat(told.herd().byNumber("412").orElseThrow().id()).isEqualTo(Told.calf("A"));
        assertThat(told.herd().openNumbers()).containsExactly("0412", "412");
        told.of("A", "07:00", new CalfDied(Told.time("07:00"), Term.DeathTime.LATER));
        assertThat(told.herd().byNumber("00412").orElseThrow().id()).isEqualTo(Told.calf("B"));
        assertThat(told.herd().openNumbers()).containsExactly("412");
    }

    @Test
    void the_number_nought_is_a_number() {
        Herd herd = new Told().open("A", "06:00", "00", null).herd();
        assertThat(herd.byNumber("0")).isPresent();
        assertThat(herd.byNumber("")).isEmpty();
    }

    @Test
    void twins_stand_under_their_dam_in_the_order_of_opening() {
        Herd herd = new Told()
                .open("B", "06:00", null, "88")
                .open("A", "06:30", null, "088")
                .open("C", "06:30", null, "89")
                .herd();
        assertThat(ids(herd.byDam("88"))).containsExactly(Told.calf("B"), Told.calf("A"));
    }

    @Test
    void calves_of_one_cow_within_a_day_are_twins() {
        // Common practice, no published source.
        Herd herd = new Told()
                .open("A", "06:00", null, "88")
                .of("A", "06:00", new CalfBorn(Told.at("06:00")))
                .open("B", "06:00", null, "88")
                .of("B", "06:00", new CalfBorn(Told.at("30:00")))
                .open("C", "06:00", null, "88")
                .of("C", "06:00", new CalfBorn(Told.at("30:00:01")))
                .herd();
        assertThat(twins(herd, "A")).containsExactly(Told.calf("B"));
        assertThat(twins(herd, "B")).containsExactly(Told.calf("A"), Told.calf("C"));
    }

    @Test
    void a_calf_that_names_its_twin_makes_both_twins() {
        Herd herd = new Told()
                .open("A", "06:00", "1", null)
                .open("B", "06:30", "2", null)
                .open("C", "06:40", "3", null)
                .of("B", "06:30", new TwinNoted("01", 2))
                .herd();
        assertThat(twins(herd, "A")).containsExactly(Told.calf("B"));
        assertThat(twins(herd, "B")).containsExactly(Told.calf("A"));
        assertThat(twins(herd, "C")).isEmpty();
    }

    @Test
    void a_named_twin_is_the_calf_nearest_in_age_when_numbers_come_back() {
        Herd herd = new Told()
                .open("A", "00:00", "1", null)
                .open("B", "900:00", "1", null)
                .open("C", "900:30", "2", null)
                .of("C", "900:30", new TwinNoted("1", 2))
                .herd();
        assertThat(twins(herd, "C")).containsExactly(Told.calf("B"));
        assertThat(twins(herd, "A")).isEmpty();
    }

    @Test
    void a_dead_twin_stays_a_twin() {
        Herd herd = new Told()
                .open("A", "06:00", null, "88")
                .open("B", "06:00", null, "88")
                .of("B", "06:01", new CalfDied(Told.time("06:01"), Term.DeathTime.AT_BIRTH))
                .herd();
        assertThat(twins(herd, "A")).containsExactly(Told.calf("B"));
    }

    @Test
    void what_is_said_of_the_barn_belongs_to_no_calf() {
        Told told = new Told().open("A", "06:00", null, null);
        told.tell(null, Told.time("06:00"), climate("12"));
        told.withdraw(told.last());
        told.tell(null, Told.time("06:01"), climate("21"));
        assertThat(told.herd().barn()).extracting(RecordedEvent::event).containsExactly(climate("21"));
        assertThat(told.record().history()).hasSize(2);
    }

    private static Event climate(String celsius) {
        return new Event.BarnClimateNoted(new Temperature(new BigDecimal(celsius), TemperatureUnit.CELSIUS), null);
    }

    private static List<CalfId> twins(Herd herd, String calf) {
        return ids(herd.twinsOf(herd.calf(Told.calf(calf)).orElseThrow()));
    }

    private static List<CalfId> ids(List<CalfRecord> calves) {
        return calves.stream().map(CalfRecord::id).toList();
    }
}
