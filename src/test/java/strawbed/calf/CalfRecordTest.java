package strawbed.calf;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.event.Event;
import strawbed.event.Event.BreathingNoted;
import strawbed.event.Event.CalfBorn;
import strawbed.event.Event.CalfFound;
import strawbed.event.Event.CalfNumbered;
import strawbed.event.Event.CalvingEaseNoted;
import strawbed.event.Event.ColostrumFed;
import strawbed.event.Event.ColostrumLeft;
import strawbed.event.Event.DamNoted;
import strawbed.event.Event.EarTagFitted;
import strawbed.event.Event.LickingNoted;
import strawbed.event.Event.MilestoneReached;
import strawbed.event.Event.SexNoted;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalfRecordTest {
    @Test
    void a_calf_is_what_was_told_of_it() {
        CalfRecord calf = new Told()
                .open("A", "06:00", null, "412")
                .a("06:00", new CalfBorn(Told.at("05:50")), new SexNoted(Term.Sex.FEMALE), new DamNoted(null, 3))
                .a("06:01", new CalvingEaseNoted(Term.CalvingEase.EASY_ASSIST, null))
                .a("06:02", new BreathingNoted(Term.Breathing.WELL), new LickingNoted(true))
                .a("06:20", new MilestoneReached(Term.Milestone.STANDING))
                .a("06:30", new CalfNumbered("1207"), new Event.CalfMoved("hutch 3"))
                .record();
        assertThat(calf.opened()).contains(Told.time("06:00"));
        assertThat(calf.number()).contains("1207");
        assertThat(calf.dam()).contains("412");
        assertThat(calf.parity()).contains(3);
        assertThat(calf.sex()).contains(Term.Sex.FEMALE);
        assertThat(calf.birth()).contains(Told.at("05:50"));
        assertThat(calf.ease()).contains(Term.CalvingEase.EASY_ASSIST);
        assertThat(calf.easeScore()).isEmpty();
        assertThat(calf.breathing().orElseThrow().at()).isEqualTo(Told.time("06:02"));
        assertThat(calf.licked()).contains(true);
        assertThat(calf.reached(Term.Milestone.STANDING)).contains(Told.time("06:20"));
        assertThat(calf.place()).contains("hutch 3");
        assertThat(calf.isOpen()).isTrue();
        assertThat(calf.history()).hasSize(10).noneMatch(CalfRecord.Entry::withdrawn);
    }

    @Test
    void what_was_not_said_is_missing() {
        CalfRecord calf = new Told().open("A", "06:00", null, null).record();
        assertThat(calf.number()).isEmpty();
        assertThat(calf.sex()).isEmpty();
        assertThat(calf.birth()).isEmpty();
        assertThat(calf.licked()).isEmpty();
        assertThat(calf.firstFeed()).isEmpty();
        assertThat(calf.isDried()).isFalse();
        assertThat(calf.bornAbout()).contains(Told.time("06:00"));
    }

    @Test
    void the_last_word_on_the_birth_counts_although_it_names_an_earlier_time() {
        CalfRecord calf = new Told()
                .open("A", "06:00", null, null)
                .a("06:00", new CalfBorn(Told.at("06:00")))
                .a("05:30", new CalfBorn(Told.at("05:30")))
                .record();
        assertThat(calf.birth()).contains(Told.at("05:30"));
    }

    @Test
    void a_found_calf_is_marked_until_its_birth_is_told() {
        Told told = new Told().open("A", "06:00", null, null).a("06:00", new CalfFound(Told.at("06:00")));
        assertThat(told.record().isBirthOnlyFound()).isTrue();
        assertThat(told.record().birth()).contains(Told.at("06:00"));
        When window = new When.Between(Told.time("02:00"), Told.time("04:00"));
        told.a("06:10", new CalfBorn(window));
        assertThat(told.record().isBirthOnlyFound()).isFalse();
        assertThat(told.record().bornAbout()).contains(Told.time("03:00"));
    }

    @Test
    void what_happened_earlier_stands_earlier_although_it_was_told_later() {
        CalfRecord calf = new Told()
                .open("A", "06:00", null, null)
                .a("06:10", new BreathingNoted(Term.Breathing.WELL))
                .a("06:05", new BreathingNoted(Term.Breathing.GASPING))
                .record();
        assertThat(calf.all(BreathingNoted.class))
                .extracting(noted -> noted.event().breathing())
                .containsExactly(Term.Breathing.GASPING, Term.Breathing.WELL);
        assertThat(calf.breathing().orElseThrow().event().breathing()).isEqualTo(Term.Breathing.WELL);
    }

    @Test
    void of_two_facts_at_one_time_the_one_told_last_is_the_latest() {
        CalfRecord calf = new Told()
                .a("06:10", new LickingNoted(true))
                .a("06:10", new LickingNoted(false))
                .record();
        assertThat(calf.licked()).contains(false);
    }

    @Test
    void a_calf_without_a_number_is_called_by_its_farm_tag() {
        Told told = new Told()
                .open("A", "06:00", null, null)
                .a("06:00", new EarTagFitted("840003123456789", Term.TagScheme.OFFICIAL))
                .a("06:00", new EarTagFitted("4471", Term.TagScheme.FARM));
        assertThat(told.record().number()).contains("4471");
        told.a("06:05", new CalfNumbered("12"));
        assertThat(told.record().number()).contains("12");
        assertThat(told.record().numbers()).containsExactly("12", "4471");
        assertThat(told.record().bears("04471")).isTrue();
        assertThat(told.record().bears("447")).isFalse();
    }

    @Test
    void a_calf_keeps_one_number_when_it_gets_another() {
        CalfRecord calf = new Told()
                .open("A", "06:00", "11", null)
                .a("06:05", new CalfNumbered("12"))
                .record();
        assertThat(calf.bears("12")).isTrue();
        assertThat(calf.bears("11")).isFalse();
    }

    @Test
    void what_is_left_belongs_to_the_last_feed_at_or_before_it() {
        CalfRecord calf = new Told()
                .a("07:00", fed("2"))
                .a("09:00", fed("3"))
                .a("08:00", new ColostrumLeft(litres("0.5")))
                .a("06:30", new ColostrumLeft(litres("1")))
                .a("09:00", new ColostrumLeft(litres("1.5")))
                .record();
        assertThat(calf.feeds()).extracting(Feed::litres).containsExactly(new BigDecimal("1.5"), new BigDecimal("1.5"));
        assertThat(calf.volumeFedLitres()).isEqualByComparingTo("3.0");
    }

    @Test
    void the_last_word_on_what_was_left_counts() {
        CalfRecord calf = new Told()
                .a("07:00", fed("2"))
                .a("07:30", new ColostrumLeft(litres("1")), new ColostrumLeft(litres("0.2")))
                .record();
        assertThat(calf.volumeFedLitres()).isEqualByComparingTo("1.8");
    }

    @Test
    void more_left_than_offered_is_a_feed_of_nothing() {
        CalfRecord calf = new Told()
                .a("07:00", fed("2"))
                .a("07:30", new ColostrumLeft(litres("3")))
                .a("08:00", fed("1"))
                .record();
        assertThat(calf.feeds().get(0).litres()).isEqualByComparingTo("0");
        assertThat(calf.firstFeed().orElseThrow().at()).isEqualTo(Told.time("08:00"));
    }

    @Test
    void what_was_left_of_no_feed_changes_nothing() {
        CalfRecord calf = new Told().a("07:30", new ColostrumLeft(litres("1"))).record();
        assertThat(calf.feeds()).isEmpty();
        assertThat(calf.history()).hasSize(1);
    }

    @Test
    void a_withdrawn_event_stays_in_the_history_and_counts_nowhere() {
        Told told = new Told().open("A", "06:00", null, null).a("06:01", new SexNoted(Term.Sex.MALE));
        EventId wrong = told.last();
        told.withdraw(wrong);
        assertThat(told.record().sex()).isEmpty();
        assertThat(told.record().history())
                .extracting(CalfRecord.Entry::withdrawn)
                .containsExactly(false, true, false);
    }

    @Test
    void withdrawing_a_withdrawal_restores_the_event() {
        Told told = new Told().open("A", "06:00", null, null).a("06:01", new SexNoted(Term.Sex.MALE));
        EventId sex = told.last();
        EventId undo = told.withdraw(sex);
        EventId redo = told.withdraw(undo);
        assertThat(told.record().sex()).contains(Term.Sex.MALE);
        told.withdraw(redo);
        assertThat(told.record().sex()).isEmpty();
    }

    @Test
    void a_withdrawn_correction_gives_the_earlier_word_back() {
        Told told = new Told().a("06:01", new SexNoted(Term.Sex.MALE)).a("06:02", new SexNoted(Term.Sex.FEMALE));
        told.withdraw(told.last());
        assertThat(told.record().sex()).contains(Term.Sex.MALE);
    }

    @Test
    void a_withdrawn_death_brings_the_calf_back() {
        Told told = new Told()
                .open("A", "06:00", null, null)
                .a("06:01", new Event.CalfDied(Told.time("06:01"), Term.DeathTime.AT_BIRTH));
        assertThat(told.record().isOpen()).isFalse();
        told.withdraw(told.last());
        assertThat(told.record().isOpen()).isTrue();
    }

    private static ColostrumFed fed(String litres) {
        return new ColostrumFed(litres(litres), null, null);
    }

    private static Volume litres(String litres) {
        return new Volume(new BigDecimal(litres), VolumeUnit.LITRE);
    }
}
