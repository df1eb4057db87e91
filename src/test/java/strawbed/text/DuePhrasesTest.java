package strawbed.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.CalfRecord;
import strawbed.calf.Told;
import strawbed.care.DueItem;
import strawbed.care.DueKind;
import strawbed.care.DueState;
import strawbed.care.Settled;
import strawbed.event.Event;

/** What is due, on the list. The wording is our own; the farm's clock is that of {@link Told}. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DuePhrasesTest {
    private static final Messages MESSAGES = new Messages(Locale.US);
    private static final DuePhrases PHRASES = new DuePhrases(MESSAGES, ZoneOffset.UTC);

    @Test
    void a_due_item_tells_its_time_and_how_long_there_is() {
        assertThat(when(DueState.DUE, null, "04:30", "04:10")).isEqualTo("due 04:30, in 20 min");
        assertThat(when(DueState.DUE, null, "04:30", "04:30")).isEqualTo("due now, 04:30");
        assertThat(when(DueState.DUE, null, "04:30", "04:50")).isEqualTo("due 04:30, 20 min over");
        assertThat(when(DueState.DUE, null, "24:30", "23:00")).isEqualTo("due 00:30, in 1 h 30 min");
    }

    @Test
    void a_late_item_is_loud() {
        assertThat(when(DueState.LATE, null, "05:10", "05:45")).isEqualTo("LATE by 35 min, since 05:10");
        assertThat(when(DueState.LATE, null, "05:10", "05:10")).isEqualTo("LATE since 05:10");
        assertThat(when(DueState.MISSED, null, "05:10", "30:00")).isEqualTo("MISSED, was due yesterday 05:10");
    }

    @Test
    void an_item_ahead_tells_when_it_begins() {
        assertThat(when(DueState.AHEAD, "09:40", "15:40", "05:00")).isEqualTo("from 09:40 to 15:40");
    }

    @Test
    void settled_items_tell_when_they_were_done_or_why_they_need_not_be() {
        assertThat(when(doneAt("05:00"), DueState.DONE)).isEqualTo("done 05:00");
        assertThat(when(doneAt("05:30"), DueState.DONE)).isEqualTo("done 05:30, 20 min late");
        assertThat(when(new Settled.Needless(Settled.Why.DEAD, null), DueState.NOT_NEEDED))
                .isEqualTo("not needed: the calf died");
    }

    @Test
    void calves_without_a_number_go_by_their_dam() {
        Told told = new Told()
                .open("A", "03:30", null, "417")
                .open("B", "03:40", null, "417")
                .open("C", "03:50", null, "500")
                .open("D", "03:55", null, null);
        CalfNames names = new CalfNames(MESSAGES);
        assertThat(names.of(told.record("A"), told.herd())).isEqualTo("first calf of cow 417");
        assertThat(names.of(told.record("B"), told.herd())).isEqualTo("second calf of cow 417");
        assertThat(names.of(told.record("C"), told.herd())).isEqualTo("calf of cow 500");
        assertThat(names.of(told.record("D"), told.herd())).isEqualTo("calf without a number");
    }

    private static String when(DueState state, @Nullable String from, String dueAt, String now) {
        return PHRASES.when(DueItems.item(DueKind.FIRST_COLOSTRUM, state, from, dueAt), Told.time(now));
    }

    private static String when(Settled settled, DueState state) {
        DueItem open = DueItems.item(DueKind.FIRST_COLOSTRUM, state, null, "05:10");
        return PHRASES.when(
                new DueItem(open.calf(), open.kind(), open.times(), state, settled, open.ground()), Told.time("05:45"));
    }

    private static Settled doneAt(String time) {
        CalfRecord calf = new Told()
                .open("A", "03:30", "417", null)
                .a(time, new Event.DamNursed())
                .record();
        return new Settled.Done(calf.nursings().get(0));
    }
}
