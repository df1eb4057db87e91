package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.CalfRecord;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueList;
import strawbed.care.DueState;
import strawbed.care.Farm;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** What is due and how a calf is, to be read and to be heard. The wording is our own; the clock is that of {@link Told}. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CareAnswersTest {
    private static final CareAnswers SPOKEN = CareAnswers.spoken(new Messages(Locale.US), ZoneOffset.UTC);
    private static final CareAnswers WRITTEN = CareAnswers.written(new Messages(Locale.US), ZoneOffset.UTC);
    private static final Farm NO_FARM = Farm.of(Herd.of(List.of()));

    @Test
    void the_voice_names_the_first_item_and_counts_the_others() {
        Told told = new Told().open("A", "03:30", "417", null);
        List<DueItem> items = List.of(
                DueItems.item(DueKind.FIRST_COLOSTRUM, DueState.DUE, null, "05:30"),
                DueItems.item(DueKind.NAVEL_DIP, DueState.DUE, null, "05:40"),
                DueItems.item(DueKind.TAG, DueState.DUE, null, "06:00"),
                DueItems.item(DueKind.REPEAT_DIP, DueState.AHEAD, "15:30", "27:30"));
        assertThat(SPOKEN.due(items, told.herd(), Told.time("05:00")))
                .isEqualTo("Due next: calf four one seven, first colostrum, by five thirty. One more within the hour.");
        assertThat(SPOKEN.due(items.subList(3, 4), told.herd(), Told.time("05:00")))
                .isEqualTo("Nothing is due now. Next: calf four one seven, dip navel again, from fifteen thirty.");
        assertThat(SPOKEN.due(List.of(), told.herd(), Told.time("05:00"))).isEqualTo("Nothing is due.");
        assertThat(WRITTEN.due(items, told.herd(), Told.time("05:00")))
                .isEqualTo("Due next: calf 417, first colostrum, by 05:30. 1 more within the hour.");
    }

    @Test
    void the_voice_says_late_first() {
        Told told = new Told().open("A", "03:30", null, "212").open("B", "03:40", null, "212");
        List<DueItem> items = List.of(DueItems.item(DueKind.NAVEL_DIP, DueState.LATE, null, "04:00"));
        assertThat(SPOKEN.due(items, told.herd(), Told.time("05:00")))
                .isEqualTo("Late: first calf of cow two one two, dip navel, since four o'clock.");
        assertThat(WRITTEN.due(items, told.herd(), Told.time("05:00")))
                .isEqualTo("Late: first calf of cow 212, dip navel, since 04:00.");
        assertThat(SPOKEN.late(items.get(0), told.herd())).isEqualTo("Late! first calf of cow two one two, dip navel.");
        assertThat(WRITTEN.late(items.get(0), told.herd())).isEqualTo("Late: first calf of cow 212, dip navel.");
    }

    @Test
    void how_a_calf_is_fits_one_sentence() {
        Told told = new Told()
                .open("A", "03:30", "417", "212")
                .a("03:30", new Event.CalfBorn(Told.at("03:30")), new Event.SexNoted(Term.Sex.FEMALE))
                .a("03:40", new Event.BreathingNoted(Term.Breathing.WELL), new Event.NavelDipped(null, null))
                .a("03:50", new Event.MilestoneReached(Term.Milestone.STANDING), new Event.CalfDried(null))
                .a(
                        "04:00",
                        new Event.ColostrumFed(new Volume(new BigDecimal(3), VolumeUnit.QUART), null, null),
                        new Event.EarTagFitted("417", Term.TagScheme.FARM));
        CalfRecord calf = told.record();
        Instant now = Told.time("05:00");
        assertThat(SPOKEN.calf(calf, DueList.of(calf, NO_FARM, now), now))
                .isEqualTo("Calf four one seven: heifer, born three thirty, fed three quarts, navel dipped;"
                        + " next: second colostrum, from ten o'clock.");
    }

    @Test
    void a_dead_calf_is_only_said_to_have_died() {
        CalfRecord calf = new Told()
                .open("A", "03:30", "417", null)
                .a("04:00", new Event.CalfDied(Told.time("04:00"), Term.DeathTime.LATER))
                .record();
        Instant now = Told.time("05:00");
        assertThat(SPOKEN.calf(calf, DueList.of(calf, NO_FARM, now), now)).isEqualTo("Calf four one seven: died.");
    }
}
