package strawbed.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Protocol;
import strawbed.report.CalfCard;
import strawbed.report.Fact;
import strawbed.report.Mark;
import strawbed.report.MarkKind;
import strawbed.report.ToDo;
import strawbed.text.Messages;

/** What stands on the card of each kind of calf. The wording is our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CardContentsTest {
    private static final Messages MESSAGES = new Messages(Locale.US);

    /** The 22 % line: Michigan State University Extension. */
    @Test
    void an_easy_birth_fed_in_time() {
        CalfCard card = card(Calves.easyBirth(), "03:30");
        assertThat(card.number()).isEqualTo("417");
        assertThat(card.sex()).isEqualTo("HEIFER");
        assertThat(card.born()).isEqualTo("Sun 1 Mar 02:10");
        assertThat(card.dam()).isEqualTo("212 (parity 3)");
        assertThat(card.birth()).isEqualTo("unassisted, forwards");
        assertThat(card.twin()).isEmpty();
        assertThat(card.facts())
                .containsExactly(
                        new Fact("1st feed", "3 quarts, 45 min after birth (best)"),
                        new Fact("Fed", "3 quarts"),
                        new Fact("Brix", "24.5 %, meets 22 %"),
                        new Fact("Weight", "88 pounds"),
                        new Fact("Tag", "4127"),
                        new Fact("Official tag", "840 003 123 456 789"));
        assertThat(card.printedAt())
                .isEqualTo(
                        "Printed Sun 1 Mar 03:30, protocol " + Protocol.usual().version());
        assertThat(card.cautions())
                .as("iodine and the fresh cow are cautions for the pen, not for the hutch")
                .isEmpty();
    }

    /** Second feed 6 to 12 hours after the first: Michigan State University Extension. */
    @Test
    void the_timeline_shows_what_was_done_and_what_is_planned() {
        CalfCard card = card(Calves.easyBirth(), "03:30");
        assertThat(card.timeline().startIsBirth()).isTrue();
        assertThat(card.timeline().marks())
                .extracting(Mark::kind, Mark::clock, Mark::label, Mark::done)
                .containsExactlyInAnyOrder(
                        tuple(MarkKind.FEED, "02:55", "3 qt", true),
                        tuple(MarkKind.DIP, "02:30", "", true),
                        tuple(MarkKind.CHECK, "02:12", "", true),
                        tuple(MarkKind.CHECK, "03:05", "", true),
                        tuple(MarkKind.FEED, "14:55", "", false),
                        tuple(MarkKind.DIP, "02:10", "", false));
        assertThat(card.toDos())
                .containsExactly(
                        new ToDo("2nd colostrum", "08:55–14:55"),
                        new ToDo("dip navel", "14:10–Mon 02:10"),
                        new ToDo("look at navel", "14:10–Mon 02:10"),
                        new ToDo("blood test", "2 Mar–8 Mar"));
    }

    @Test
    void a_found_calf_with_signs_of_a_hard_birth() {
        CalfCard card = card(Calves.foundWithSigns(), "07:00");
        assertThat(card.born()).isEqualTo("found Sun 1 Mar 05:10");
        assertThat(card.dam()).isEqualTo("not recorded");
        assertThat(card.timeline().startIsBirth()).isFalse();
        assertThat(card.facts())
                .contains(new Fact("1st feed", "2 quarts, 1 h 30 min after found (on target)"))
                .contains(new Fact("Brix", "not recorded"));
        assertThat(card.cautions())
                .extracting(caution -> caution.substring(0, caution.indexOf(' ')))
                .containsExactly("Cold:", "Hard", "Tube:");
        assertThat(card.toDos()).contains(new ToDo("temperature, suck", "by 07:10"), new ToDo("dip navel", "NOW"));
    }

    @Test
    void a_heifer_twin_of_a_bull() {
        CalfCard card = card(Calves.mixedTwins(), "24:30");
        assertThat(card.twin()).contains("Twin of 14 (bull)");
        assertThat(card.born()).isEqualTo("Sun 1 Mar 22:00 to Mon 00:00");
        assertThat(card.cautions())
                .anySatisfy(caution ->
                        assertThat(caution).startsWith("Freemartin likely:").contains("cannot breed"));
        CalfCard brother = CardContents.of(
                Calves.mixedTwins().record("B"),
                Calves.mixedTwins().herd(),
                Told.time("24:30"),
                MESSAGES,
                ZoneOffset.UTC,
                "");
        assertThat(brother.twin()).contains("Twin of 13 (heifer)");
        assertThat(brother.cautions())
                .noneSatisfy(caution -> assertThat(caution).contains("Freemartin"));
    }

    @Test
    void what_nobody_said_is_not_recorded() {
        CalfCard card = card(Calves.nothingKnown(), "03:05");
        assertThat(card.number()).isEqualTo("9");
        assertThat(card.sex()).isEqualTo("sex not recorded");
        assertThat(card.born()).isEqualTo("not recorded");
        assertThat(card.dam()).isEqualTo("not recorded");
        assertThat(card.birth()).isEqualTo("not recorded");
        assertThat(card.facts())
                .hasSize(5)
                .allSatisfy(fact -> assertThat(fact.value()).isEqualTo("not recorded"));
        assertThat(card.timeline().startIsBirth()).isFalse();
        assertThat(card.timeline().marks()).isNotEmpty().noneMatch(Mark::done);
    }

    @Test
    void a_dead_calf_has_nothing_left_to_do() {
        CalfCard card = card(Calves.dead(), "06:00");
        assertThat(card.number()).isEqualTo("417");
        assertThat(card.facts().get(0)).isEqualTo(new Fact("DIED", "Sun 1 Mar 05:40"));
        assertThat(card.toDos()).isEmpty();
        assertThat(card.cautions()).isEmpty();
        assertThat(card.timeline().marks()).allMatch(Mark::done);
    }

    @Test
    void a_calf_without_a_number_is_called_by_its_dam() {
        assertThat(card(Calves.withoutNumber(), "03:05").number()).isEqualTo("cow 306");
    }

    @Test
    void a_late_first_feed_and_weak_colostrum_stand_out() {
        Told told = new Told()
                .open("A", "02:00", "1", null)
                .a("02:00", new Event.CalfBorn(Told.at("02:00")))
                .a("06:30", new Event.ColostrumTestedByBrix(new BigDecimal(15)))
                .a("06:30", Calves.fed("2", Term.FeedingMethod.BOTTLE))
                .a("06:40", new Event.ColostrumLeft(new Volume(new BigDecimal("0.5"), VolumeUnit.QUART)))
                .a("07:00", new Event.DamNursed());
        assertThat(card(told, "08:00").facts())
                .contains(
                        new Fact("1st feed", "1.5 quarts, 4 h 30 min after birth (LATE)"),
                        new Fact("Fed", "1.5 quarts, and nursed"),
                        new Fact("Brix", "15 %, below 18 %"));
    }

    @Test
    void nothing_but_the_record_and_the_time_makes_the_card() {
        assertThat(Calves.all()).allSatisfy(told -> {
            CalfCard card = card(told, "36:00");
            assertThat(card(told, "36:00")).isEqualTo(card);
            assertThat(card.timeline().marks())
                    .filteredOn(mark -> !mark.done())
                    .allMatch(mark -> mark.afterStart().compareTo(Duration.ofHours(24)) <= 0);
        });
    }

    private static CalfCard card(Told told, String now) {
        return CardContents.of(
                told.record(), told.herd(), Told.time(now), MESSAGES, ZoneOffset.UTC, "Willow Bend Dairy");
    }
}
