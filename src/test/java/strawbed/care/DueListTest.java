package strawbed.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfDied;
import strawbed.event.Event.CalfFound;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.NavelDipped;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Setting;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DueListTest {
    private static final Farm NO_FARM = Farm.of(Herd.of(List.of()));

    @Test
    void a_newborn_calf_needs_all_that_the_first_day_asks() {
        assertThat(DueList.of(born("06:00").record(), NO_FARM, Told.time("06:00")))
                .extracting(DueItem::kind)
                .containsExactly(
                        DueKind.BREATHING_CHECK,
                        DueKind.ON_BREASTBONE,
                        DueKind.DRY,
                        DueKind.NAVEL_DIP,
                        DueKind.STAND,
                        DueKind.FIRST_COLOSTRUM,
                        DueKind.REPEAT_DIP,
                        DueKind.NAVEL_LOOK,
                        DueKind.TAG,
                        DueKind.WEIGH,
                        DueKind.SERUM_SAMPLE);
    }

    @Test
    void what_is_most_urgent_for_the_calf_comes_first_whichever_calf_it_is() {
        Told told = born("06:00")
                .open("B", "06:00", null, null)
                .of("B", "06:00", new CalfBorn(Told.at("06:00")))
                .a("06:01", new BreathingNoted(Term.Breathing.WELL))
                .of("B", "06:01", new BreathingNoted(Term.Breathing.GASPING));
        List<DueItem> open = DueList.open(told.herd(), Told.time("06:01"));
        assertThat(open.get(0).kind()).isEqualTo(DueKind.BREATHING_RECHECK);
        assertThat(open.get(0).calf()).isEqualTo(Told.calf("B"));
        assertThat(open.get(1).kind()).isEqualTo(DueKind.CALL_VET);
        assertThat(open.get(2).kind()).isEqualTo(DueKind.ON_BREASTBONE);
        assertThat(open.get(2).calf()).isEqualTo(Told.calf("A"));
        assertThat(open.get(3).calf()).isEqualTo(Told.calf("B"));
    }

    @Test
    void pressing_comes_before_ahead_and_ahead_before_missed() {
        Told told = born("06:00").a("07:00", fed("2")).a("15:00", fed("2"));
        List<DueState> states = DueList.open(told.herd(), Told.time("15:05")).stream()
                .map(DueItem::state)
                .distinct()
                .toList();
        assertThat(states.indexOf(DueState.AHEAD)).isGreaterThan(states.lastIndexOf(DueState.DUE));
        assertThat(states).last().isEqualTo(DueState.MISSED);
        assertThat(states).contains(DueState.AHEAD);
    }

    @Test
    void colostrum_that_is_due_comes_before_a_late_tag() {
        Told told = born("06:00").a("06:30", new Event.CalfMoved("hutch 1"));
        List<DueKind> kinds = kinds(told, "07:30");
        assertThat(kinds.indexOf(DueKind.FIRST_COLOSTRUM)).isLessThan(kinds.indexOf(DueKind.TAG));
    }

    @Test
    void after_the_first_day_only_the_serum_sample_is_asked_for_a_week() {
        Told told = born("06:00");
        assertThat(kinds(told, "29:59")).contains(DueKind.NAVEL_DIP);
        assertThat(kinds(told, "30:00")).containsExactly(DueKind.SERUM_SAMPLE);
        assertThat(kinds(told, "173:59")).containsExactly(DueKind.SERUM_SAMPLE);
        assertThat(kinds(told, "174:00")).isEmpty();
    }

    @Test
    void nothing_is_asked_for_a_dead_calf() {
        Told told = born("06:00")
                .a("06:05", new NavelDipped(null, null), new CalfDied(Told.time("06:10"), Term.DeathTime.LATER));
        assertThat(DueList.open(told.herd(), Told.time("06:20"))).isEmpty();
        assertThat(DueList.of(told.record(), NO_FARM, Told.time("06:20")))
                .extracting(DueItem::state)
                .contains(DueState.DONE)
                .doesNotContain(DueState.DUE, DueState.LATE, DueState.AHEAD, DueState.MISSED);
    }

    @Test
    void nothing_is_asked_for_a_calf_whose_opening_is_undone() {
        Told told = new Told().open("A", "06:00", null, null);
        told.withdraw(told.last());
        assertThat(DueList.open(told.herd(), Told.time("06:20"))).isEmpty();
        assertThat(DueList.of(told.record(), NO_FARM, Told.time("06:20"))).isEmpty();
    }

    @Test
    void a_withdrawn_dip_is_due_again() {
        Told told = born("06:00").a("06:10", new NavelDipped(Term.NavelAgent.IODINE, new BigDecimal("7")));
        assertThat(kinds(told, "06:11")).doesNotContain(DueKind.NAVEL_DIP);
        told.withdraw(told.last());
        assertThat(kinds(told, "06:11")).contains(DueKind.NAVEL_DIP);
    }

    @Test
    void every_kind_names_its_source_and_every_item_what_an_unseen_birth_is_counted_from() {
        assertThat(DueKind.values())
                .allSatisfy(kind -> assertThat(kind.source()).isNotBlank());
        Told found = new Told().open("A", "06:00", null, null).a("06:00", new CalfFound(Told.at("06:00")));
        assertThat(DueList.of(found.record(), NO_FARM, Told.time("06:00"))).allSatisfy(item -> {
            assertThat(item.ground().basis()).isEqualTo(AgeStart.Basis.FOUND);
            assertThat(item.ground().isAssumed()).isTrue();
        });
        assertThat(DueList.of(born("06:00").record(), NO_FARM, Told.time("06:00")))
                .allSatisfy(item -> assertThat(item.ground().isAssumed()).isFalse());
    }

    @Test
    void a_refused_feed_or_one_that_was_left_whole_is_no_first_colostrum() {
        Told told = born("06:00").a("07:00", new Event.FeedRefused(), fed("2"), new Event.ColostrumLeft(litres("2")));
        assertThat(kinds(told, "07:05"))
                .contains(DueKind.FIRST_COLOSTRUM)
                .doesNotContain(DueKind.SECOND_COLOSTRUM, DueKind.NAVEL_REDIP);
    }

    @Test
    void a_calf_of_eighty_events_keeps_its_list() {
        Told told = born("06:00");
        for (int minute = 2; minute < 80; minute++) {
            told.a("06:" + minute % 60, new BreathingNoted(Term.Breathing.WELL));
        }
        assertThat(told.record().history()).hasSize(80);
        assertThat(DueList.open(told.herd(), Told.time("07:20")))
                .hasSize(10)
                .noneMatch(item -> item.kind() == DueKind.BREATHING_CHECK);
    }

    @Test
    void only_a_timed_birth_is_no_estimate() {
        assertThat(AgeStart.of(born("06:00").record()).orElseThrow().isEstimated())
                .isFalse();
        Told opened = new Told().open("A", "06:00", null, null);
        assertThat(AgeStart.of(opened.record()).orElseThrow().isEstimated()).isTrue();
        assertThat(AgeStart.of(opened.record()).orElseThrow().basis()).isEqualTo(AgeStart.Basis.OPENED);
    }

    @Test
    void what_is_due_or_late_presses_and_nothing_else() {
        assertThat(DueState.values()).filteredOn(DueState::isPressing).containsExactly(DueState.DUE, DueState.LATE);
        assertThat(DueState.values())
                .filteredOn(state -> !state.isOpen())
                .containsExactly(DueState.DONE, DueState.NOT_NEEDED);
    }

    @Test
    void every_kind_tells_the_settings_of_its_rule() {
        assertThat(DueKind.values())
                .allSatisfy(kind -> assertThat(kind.settings()).isNotEmpty());
        assertThat(DueKind.NAVEL_DIP.settings()).startsWith(Setting.FIRST_DIP_MINUTES);
    }

    private static Told born(String time) {
        return new Told().open("A", time, null, null).a(time, new CalfBorn(Told.at(time)));
    }

    private static List<DueKind> kinds(Told told, String now) {
        return DueList.open(told.herd(), Told.time(now)).stream()
                .map(DueItem::kind)
                .toList();
    }

    private static ColostrumFed fed(String litres) {
        return new ColostrumFed(litres(litres), null, null);
    }

    private static Volume litres(String litres) {
        return new Volume(new BigDecimal(litres), VolumeUnit.LITRE);
    }
}
