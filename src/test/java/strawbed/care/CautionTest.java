package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CalfMoved;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Event.SexNoted;
import strawbed.event.Event.TwinNoted;
import strawbed.event.Term;
import strawbed.protocol.Protocol;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CautionTest {
    @Test
    void the_gravest_caution_stands_first() {
        Told told = opened().a("06:01", new NavelDipped(Term.NavelAgent.IODINE, null))
                .a("06:02", new CalvingEaseNoted(Term.CalvingEase.C_SECTION, null))
                .a("06:03", new BreathingNoted(Term.Breathing.GASPING));
        assertThat(cautions(told))
                .containsExactly(
                        Caution.NOT_BREATHING,
                        Caution.HARD_BIRTH,
                        Caution.STRONG_IODINE,
                        Caution.FRESH_COW,
                        Caution.BIRTH_FLUIDS);
    }

    @Test
    void the_cow_is_a_danger_until_the_calf_was_moved() {
        assertThat(cautions(opened())).containsExactly(Caution.FRESH_COW);
        assertThat(cautions(opened().a("07:00", new CalfMoved("hutch 2")))).isEmpty();
        assertThat(Caution.of(new CalfBorn(Told.at("06:00")), Protocol.usual())).contains(Caution.FRESH_COW);
    }

    @Test
    void a_dead_calf_calls_for_no_caution() {
        Told told = opened().a("06:01", new BreathingNoted(Term.Breathing.NONE))
                .a("06:09", new CalfDied(Told.time("06:09"), Term.DeathTime.AT_BIRTH));
        assertThat(cautions(told)).isEmpty();
    }

    @Test
    void a_withdrawn_fact_calls_for_no_caution() {
        Told told = opened().a("06:01", new BreathingNoted(Term.Breathing.NONE));
        told.withdraw(told.last());
        assertThat(cautions(told)).containsExactly(Caution.FRESH_COW);
    }

    @Test
    void a_heifer_that_names_a_bull_as_its_twin_is_likely_infertile() {
        Told told = opened().open("B", "06:20", "17", null)
                .of("B", "06:20", new SexNoted(Term.Sex.MALE))
                .a("06:21", new SexNoted(Term.Sex.FEMALE), new TwinNoted("17", 2));
        assertThat(Freemartin.of(told.record(), told.herd())).isEqualTo(Freemartin.LIKELY);
        assertThat(Freemartin.of(told.record("B"), told.herd())).isEqualTo(Freemartin.NO);
    }

    @Test
    void a_single_heifer_is_no_freemartin() {
        Told told = opened().a("06:21", new SexNoted(Term.Sex.FEMALE));
        assertThat(Freemartin.of(told.record(), told.herd())).isEqualTo(Freemartin.NO);
    }

    @Test
    void a_caution_is_told_once_for_a_calf() {
        Told told = opened().a("06:10", new NavelDipped(Term.NavelAgent.IODINE, null));
        Event again = new NavelDipped(Term.NavelAgent.IODINE, new BigDecimal("7"));
        assertThat(toTell(opened(), again)).containsExactly(Caution.STRONG_IODINE);
        assertThat(toTell(told, again)).isEmpty();
        assertThat(toTell(told, new NavelDipped(Term.NavelAgent.IODINE, BigDecimal.ONE)))
                .isEmpty();
    }

    @Test
    void new_events_that_are_saved_already_do_not_hide_their_own_caution() {
        NavelDipped dipped = new NavelDipped(Term.NavelAgent.IODINE, null);
        Told told = opened().a("06:10", dipped);
        assertThat(Caution.toTell(List.of(dipped), told.record(), Set.of(told.last()), told.herd()))
                .containsExactly(Caution.STRONG_IODINE);
    }

    @Test
    void a_danger_is_told_anew_when_it_was_over_in_between() {
        Event gasping = new BreathingNoted(Term.Breathing.GASPING);
        Told still = opened().a("06:01", gasping);
        assertThat(toTell(still, gasping)).doesNotContain(Caution.NOT_BREATHING);
        Told over = opened().a("06:01", gasping, new BreathingNoted(Term.Breathing.WELL));
        assertThat(toTell(over, gasping)).containsExactly(Caution.NOT_BREATHING);
        Told moved = opened().a("06:01", gasping, new CalfMoved("hutch 2"));
        assertThat(toTell(moved, gasping)).isEmpty();
    }

    @Test
    void a_calf_without_a_record_is_told_all() {
        assertThat(Caution.toTell(
                        List.of(new BreathingNoted(Term.Breathing.NONE), new CalfBorn(Told.at("06:00"))),
                        null,
                        Set.of(),
                        Herd.of(List.of())))
                .containsExactly(Caution.NOT_BREATHING, Caution.FRESH_COW);
    }

    @Test
    void what_this_farm_calls_a_hard_birth_calls_for_the_caution() {
        Told told = new Told();
        told.tell(
                null,
                Told.time("05:00"),
                new Event.ProtocolAdopted(new TreeMap<>(Map.of("hard_from_ease_score", "2"))));
        told.open("A", "06:00", null, null).a("06:00", Told.score(2));
        assertThat(cautions(told)).contains(Caution.HARD_BIRTH);
        assertThat(Caution.toTell(List.of(Told.score(2)), null, Set.of(), told.herd()))
                .contains(Caution.HARD_BIRTH);
    }

    private static List<Caution> toTell(Told told, Event fresh) {
        return Caution.toTell(List.of(fresh), told.record(), Set.of(), told.herd());
    }

    private static Told opened() {
        return new Told().open("A", "06:00", null, null).a("06:00", new CalfBorn(Told.at("06:00")));
    }

    private static List<Caution> cautions(Told told) {
        return Caution.of(told.record(), told.herd());
    }
}
