package strawbed.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.CalfRecord;
import strawbed.calf.Told;
import strawbed.care.DueItem;
import strawbed.care.DueList;
import strawbed.care.Farm;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.protocol.Protocol;
import strawbed.report.CalfCard;
import strawbed.report.CalfPage;
import strawbed.report.CardFoot;
import strawbed.report.Fact;
import strawbed.report.Mark;
import strawbed.report.MarkKind;
import strawbed.report.RecordSheet;
import strawbed.report.ToDo;
import strawbed.text.Messages;

/** What stands on the card of each kind of calf. The wording is our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CardContentsTest {
    private static final Event PRINT =
            new Event.CardPrinted(1, Term.Printout.HUTCH_CARD, Term.CardSize.FOUR_BY_SIX_INCH);
    private static final Messages MESSAGES = new Messages(Locale.US);

    /** The 22 % line: Michigan State University Extension. */
    @Test
    void an_easy_birth_fed_in_time() {
        CalfCard card = card(Calves.easyBirth(), "03:30");
        assertThat(card.head().number()).isEqualTo("417");
        assertThat(card.head().title()).isEqualTo("HEIFER");
        assertThat(card.head().lines())
                .containsExactly(
                        new Fact("Born", "Sun 1 Mar 02:10"),
                        new Fact("Dam", "212 (parity 3)"),
                        new Fact("Birth", "unassisted, forwards"));
        assertThat(card.head().beside()).isEmpty();
        assertThat(card.facts())
                .containsExactly(
                        new Fact("1st feed", "3 quarts, 45 min after birth (best)"),
                        new Fact("Fed", "3 quarts"),
                        new Fact("Brix", "24.5 %, meets 22 %"),
                        new Fact("Weight", "88 pounds"),
                        new Fact("Tag", "4127"),
                        new Fact("Official tag", "840 003 123 456 789"));
        assertThat(card.foot())
                .isEqualTo(new CardFoot(
                        "Print 1, Sun 1 Mar 03:30",
                        "",
                        "protocol " + Protocol.usual().version(),
                        "Willow Bend Dairy"));
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
        assertThat(card.head().lines())
                .contains(new Fact("Born", "found Sun 1 Mar 05:10"), new Fact("Dam", "not recorded"));
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
        assertThat(card.head().beside()).contains("Twin of 14 (bull)");
        assertThat(card.head().lines()).contains(new Fact("Born", "Sun 1 Mar 22:00 to Mon 00:00"));
        assertThat(card.cautions())
                .anySatisfy(caution ->
                        assertThat(caution).startsWith("Freemartin likely:").contains("cannot breed"));
        CalfCard brother = card(Calves.mixedTwins(), "B", "24:30");
        assertThat(brother.head().beside()).contains("Twin of 13 (heifer)");
        assertThat(brother.cautions())
                .noneSatisfy(caution -> assertThat(caution).contains("Freemartin"));
    }

    @Test
    void what_nobody_said_is_not_recorded() {
        CalfCard card = card(Calves.nothingKnown(), "03:05");
        assertThat(card.head().number()).isEqualTo("9");
        assertThat(card.head().title()).isEqualTo("sex not recorded");
        assertThat(card.head().lines())
                .extracting(Fact::value)
                .containsExactly("not recorded", "not recorded", "not recorded");
        assertThat(card.facts())
                .hasSize(5)
                .allSatisfy(fact -> assertThat(fact.value()).isEqualTo("not recorded"));
        assertThat(card.timeline().startIsBirth()).isFalse();
        assertThat(card.timeline().marks()).isNotEmpty().noneMatch(Mark::done);
    }

    @Test
    void of_a_dead_calf_there_is_what_was_recorded_and_nothing_to_do() {
        RecordSheet sheet = sheet(Calves.dead(), "06:00");
        assertThat(sheet.head().number()).isEqualTo("417");
        assertThat(sheet.head().title()).isEqualTo("DEAD");
        assertThat(sheet.head().beside()).contains("HEIFER");
        // The records of these tests are told right after midnight.
        assertThat(sheet.head().lines())
                .containsExactly(
                        new Fact("Died", "Sun 1 Mar 05:40, told 00:00"),
                        new Fact("Born", "Sun 1 Mar 02:10"),
                        new Fact("Dam", "212 (parity 3)"),
                        new Fact("Birth", "unassisted, forwards"));
        assertThat(sheet.recorded())
                .containsExactly(
                        new Fact("02:12", "breathing well"),
                        new Fact("02:12", "licked by the dam"),
                        new Fact("02:30", "navel dipped with iodine 7 percent"),
                        new Fact("02:50", "colostrum Brix 24.5 percent"),
                        new Fact("02:55", "3 quarts fed by bottle"),
                        new Fact("03:05", "standing"));
        assertThat(sheet.facts())
                .containsExactly(
                        new Fact("Weight", "88 pounds"),
                        new Fact("Tag", "4127"),
                        new Fact("Official tag", "840 003 123 456 789"));
        assertThat(sheet.title()).isEqualTo("Record of calf 417");
    }

    @Test
    void of_a_dead_calf_what_nobody_recorded_is_named() {
        Told told = Calves.nothingKnown().a("05:40", new Event.CalfDied(Told.time("05:40"), Term.DeathTime.AT_BIRTH));
        RecordSheet sheet = sheet(told, "06:00");
        assertThat(sheet.head().beside()).contains("sex not recorded");
        assertThat(sheet.head().lines().get(0)).isEqualTo(new Fact("Died", "at birth, told Sun 1 Mar 00:00"));
        assertThat(sheet.recorded()).isEmpty();
        assertThat(sheet.facts())
                .extracting(Fact::label, Fact::value)
                .containsExactly(
                        tuple("Feeds", "not recorded"),
                        tuple("Navel dips", "not recorded"),
                        tuple("Signs", "not recorded"),
                        tuple("Tests", "not recorded"),
                        tuple("Weight", "not recorded"),
                        tuple("Tag", "not recorded"));
    }

    @Test
    void a_second_print_says_what_it_takes_the_place_of() {
        Told told = Calves.easyBirth().a("03:30", PRINT);
        assertThat(card(told, "04:00").foot().print()).isEqualTo("Print 2, Sun 1 Mar 04:00");
        assertThat(card(told, "04:00").foot().replaces()).isEqualTo("in place of print 1, 03:30");
        assertThat(card(told, "25:00").foot().replaces()).isEqualTo("in place of print 1, Sun 03:30");
        CalfPage copy = CardContents.of(
                told.record(), told.herd(), Told.time("04:00"), MESSAGES, ZoneOffset.UTC, "", Print.COPY);
        assertThat(copy.foot().print()).isEqualTo("Copy, Sun 1 Mar 04:00");
        assertThat(copy.foot().replaces()).isEmpty();
    }

    @Test
    void a_print_changes_nothing_but_the_next_print() {
        for (Told told : Calves.all()) {
            CalfPage before = page(told, "04:00");
            List<DueItem> due = due(told);
            told.a("03:59", PRINT);
            CalfPage after = page(told, "04:00");
            assertThat(due(told)).isEqualTo(due);
            assertThat(after.head()).isEqualTo(before.head());
            assertThat(after.foot()).isNotEqualTo(before.foot());
            if (after instanceof CalfCard card && before instanceof CalfCard earlier) {
                assertThat(card.toDos()).isEqualTo(earlier.toDos());
                assertThat(card.timeline()).isEqualTo(earlier.timeline());
                assertThat(card.facts()).isEqualTo(earlier.facts());
            } else {
                assertThat(((RecordSheet) after).recorded()).isEqualTo(((RecordSheet) before).recorded());
            }
        }
    }

    @Test
    void the_code_names_the_calf_and_the_newest_fact_that_the_card_knows_of() {
        Told told = Calves.easyBirth();
        int known = told.events().size();
        String calf = "CALF " + told.record().id().toString().toUpperCase(Locale.ROOT) + " RECORD ";
        assertThat(page(told, "04:00").head().code()).isEqualTo(calf + known);
        told.open("B", "03:40", "77", null);
        assertThat(page(told, "04:00").head().code()).as("another calf's fact").isEqualTo(calf + known);
        told.a("03:45", new Event.DamNursed());
        assertThat(page(told, "04:00").head().code()).isEqualTo(calf + (known + 2));
        told.tell(null, Told.time("03:50"), new Event.EventWithdrawn(told.last()));
        assertThat(page(told, "04:00").head().code()).as("an undo").isEqualTo(calf + (known + 3));
    }

    @Test
    void a_calf_without_a_number_is_called_by_its_dam() {
        assertThat(card(Calves.withoutNumber(), "03:05").head().number()).isEqualTo("cow 306");
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
            assertThat(page(told, "36:00")).isEqualTo(page(told, "36:00"));
            if (page(told, "36:00") instanceof CalfCard card) {
                assertThat(card.timeline().marks())
                        .filteredOn(mark -> !mark.done())
                        .allMatch(mark -> mark.afterStart().compareTo(Duration.ofHours(24)) <= 0);
            }
        });
    }

    private static List<DueItem> due(Told told) {
        return DueList.of(told.record(), Farm.of(told.herd()), Told.time("04:00"));
    }

    private static CalfCard card(Told told, String now) {
        return card(told, "A", now);
    }

    private static CalfCard card(Told told, String calf, String now) {
        return (CalfCard) page(told, calf, now);
    }

    private static RecordSheet sheet(Told told, String now) {
        return (RecordSheet) page(told, now);
    }

    private static CalfPage page(Told told, String now) {
        return page(told, "A", now);
    }

    private static CalfPage page(Told told, String calf, String now) {
        CalfRecord wanted = told.record(calf);
        return CardContents.of(
                wanted, told.herd(), Told.time(now), MESSAGES, ZoneOffset.UTC, "Willow Bend Dairy", Print.next(wanted));
    }
}
