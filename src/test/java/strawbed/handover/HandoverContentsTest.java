package strawbed.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Herd;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.Provenance.Source;
import strawbed.event.RecordedEvent;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.journal.NewOpenStatement;
import strawbed.journal.OpenStatement;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.report.Fact;
import strawbed.report.HandoverSheet;
import strawbed.report.SheetEntry;
import strawbed.report.SheetSection;
import strawbed.report.ToDo;
import strawbed.text.Messages;

/** What stands on the sheet of a shift from midnight to noon of an invented farm. The wording is our own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HandoverContentsTest {
    private static final Messages MESSAGES = new Messages(Locale.US);

    @Test
    void a_shift_with_nothing_says_none_everywhere() {
        HandoverSheet sheet = sheet(new Told(), "Ana");
        assertThat(sheet.title()).isEqualTo("Handover");
        assertThat(sheet.period()).isEqualTo("Sun 1 Mar 00:00 to Sun 1 Mar 12:00");
        assertThat(sheet.printedAt()).isEqualTo("Printed Sun 1 Mar 12:00");
        assertThat(sheet.page().of(1, 2)).isEqualTo("page 1 of 2");
        assertThat(sheet.about()).containsExactly(new Fact("Recorded by", "not recorded"));
        assertThat(sheet.signatures()).containsExactly("Handed over by", "Taken over by");
        assertThat(sheet.sections())
                .extracting(SheetSection::title)
                .containsExactly(
                        "Late or missed",
                        "Due by Mon 00:00",
                        "Due after Mon 00:00",
                        "On watch",
                        "Born or lost",
                        "Not confirmed",
                        "Sound notes",
                        "Colostrum",
                        "Mind");
        assertThat(sheet.sections()).allSatisfy(section -> {
            assertThat(section.entries()).isEmpty();
            assertThat(section.none()).isEqualTo("none");
        });
    }

    @Test
    void births_are_told_with_sex_dam_time_and_how_they_went() {
        Told told = new Told()
                .open("A", "09:00", "417", "212")
                .a(
                        "09:00",
                        new Event.CalfBorn(Told.at("08:50")),
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.DamNoted(null, 3),
                        new Event.CalvingEaseNoted(Term.CalvingEase.UNASSISTED, null),
                        new Event.PresentationNoted(Term.Presentation.FORWARDS));
        assertThat(section(told, "Born or lost"))
                .containsExactly(SheetEntry.told(
                        "calf 417", "08:50", "heifer, dam 212 (parity 3). Birth: unassisted, forwards."));
    }

    @Test
    void what_nobody_said_of_a_birth_is_not_recorded() {
        assertThat(section(new Told().open("A", "09:00", "9", null), "Born or lost"))
                .containsExactly(SheetEntry.told(
                        "calf 9", "time not recorded", "sex not recorded, dam not recorded. Birth: not recorded."));
    }

    @Test
    void twins_name_each_other_and_the_dead_one_is_said_to_be_dead() {
        Told told = new Told()
                .open("A", "09:00", "13", "300")
                .open("B", "09:05", null, "300")
                .a("09:00", new Event.CalfBorn(Told.at("09:00")), new Event.SexNoted(Term.Sex.FEMALE))
                .of(
                        "B",
                        "09:05",
                        new Event.CalfBorn(new When.Between(Told.time("09:00"), Told.time("09:05"))),
                        new Event.SexNoted(Term.Sex.MALE),
                        new Event.CalfDied(Told.time("09:05"), Term.DeathTime.AT_BIRTH));
        assertThat(section(told, "Born or lost"))
                .extracting(SheetEntry::lead, SheetEntry::strong, SheetEntry::text)
                .containsExactly(
                        tuple(
                                "calf 13",
                                "09:00",
                                "heifer, dam 300. Birth: not recorded. Twin of calf of cow 300 (bull)."),
                        tuple(
                                "calf of cow 300",
                                "09:00–09:05, DIED at birth",
                                "bull, dam 300. Birth: not recorded. Twin of 13 (heifer)."));
        assertThat(names(section(told, "Due by Mon 00:00"))).containsOnly("calf 13");
    }

    @Test
    void a_calf_of_an_earlier_shift_is_told_only_if_it_died_or_was_told_late() {
        Told told = new Told();
        told.tell(Told.calf("OLD"), Told.time("00:00").minus(Duration.ofHours(9)), new Event.CalfOpened("7", "70"));
        told.tell(Told.calf("LOST"), Told.time("00:00").minus(Duration.ofHours(9)), new Event.CalfOpened("8", "80"));
        told.of("LOST", "03:00", new Event.CalfDied(Told.time("03:00"), Term.DeathTime.LATER));
        told.open("A", "04:00", "9", "90");
        told.tell(
                Told.calf("A"),
                Told.time("04:00"),
                new Event.CalfBorn(new When.At(Told.time("00:00").minus(Duration.ofHours(1)))));
        assertThat(section(told, "Born or lost"))
                .extracting(SheetEntry::lead, SheetEntry::strong)
                .containsExactly(tuple("calf 8", "time not recorded, DIED 03:00"), tuple("calf 9", "Sat 23:00"));
    }

    /** The times are those of the usual protocol; their sources stand with each setting. */
    @Test
    void what_is_due_stands_in_order_of_time_and_what_a_calf_needs_within_an_hour_together() {
        Told told = careful("A", "417", "10:00").a("11:00", fed());
        careful(told, "B", "418", "11:40");
        List<SheetEntry> due = section(told, "Due by Mon 00:00");
        assertThat(due).extracting(SheetEntry::lead).containsExactly("calf 418", "calf 417");
        assertThat(due.get(0).toDos()).containsExactly(new ToDo("1st colostrum", "by 13:40"));
        assertThat(due.get(1).toDos()).containsExactly(new ToDo("2nd colostrum", "17:00–23:00"));
        assertThat(section(told, "Due after Mon 00:00"))
                .extracting(SheetEntry::strong, SheetEntry::text)
                .contains(
                        tuple("dip navel again, look at navel", "calf 417: 22:00–Mon 10:00; calf 418: 23:40–Mon 11:40"),
                        tuple("tag, weigh", "calf 417: by Mon 10:00; calf 418: by Mon 11:40"));
    }

    @Test
    void late_work_stands_first_with_how_late_it_is_and_why() {
        Told told = careful("A", "417", "05:00").a("11:00", new Event.BreathingNoted(Term.Breathing.GASPING));
        SheetEntry late = section(told, "Late or missed").get(0);
        assertThat(late.lead()).isEqualTo("calf 417");
        assertThat(late.toDos())
                .contains(new ToDo("check breathing", "LATE by 59 min, since 11:01"))
                .contains(new ToDo("1st colostrum", "OVERDUE by 5 h, since 07:00"));
        assertThat(late.text()).isEqualTo("Asked for by: gasping, 11:00.");
        assertThat(section(told, "Late or missed"))
                .as("a rule that no fact asked for stands once, under what is late")
                .last()
                .isEqualTo(
                        SheetEntry.told("", "1st colostrum", "By 2 h after birth, late after 4 h, overdue after 6 h."));
    }

    @Test
    void missed_checks_have_no_box_and_those_of_the_shift_before_are_counted() {
        Told told = careful("A", "417", "09:00")
                .a("09:01", new Event.CalvingEaseNoted(Term.CalvingEase.DIFFICULT_ASSIST, null));
        SheetEntry missed = section(told, "Late or missed").stream()
                .filter(entry -> entry.strong().equals("MISSED"))
                .findFirst()
                .orElseThrow();
        assertThat(missed.toDos()).isEmpty();
        assertThat(missed.text()).startsWith("temperature, suck (was due 09:30)");
        HandoverSheet later = HandoverContents.of(
                herd(told, "Ana"),
                List.of(),
                new Shift(Told.time("14:00"), Told.time("26:00")),
                MESSAGES,
                ZoneOffset.UTC,
                "");
        assertThat(later.sections().get(0).entries())
                .extracting(SheetEntry::text)
                .contains("3 more missed before this shift");
    }

    @Test
    void a_calf_after_a_hard_birth_is_on_watch_until_its_plan_ends() {
        Told told = careful("A", "417", "11:00")
                .a("11:01", new Event.CalvingEaseNoted(Term.CalvingEase.DIFFICULT_ASSIST, null));
        assertThat(section(told, "On watch"))
                .singleElement()
                .extracting(SheetEntry::text)
                .asString()
                .startsWith("difficult assist, 11:01.")
                .contains("Temperature and suck: 12:00, 13:00, 15:00.")
                .endsWith("No suck seen yet: by 13:00, else get help.");
        told.a("11:50", new Event.CalfDied(Told.time("11:50"), Term.DeathTime.LATER));
        assertThat(section(told, "On watch")).isEmpty();
    }

    @Test
    void statements_that_nobody_confirmed_stand_with_time_and_words() {
        HandoverSheet sheet = HandoverContents.of(
                herd(new Told(), "Ana"),
                List.of(
                        statement("00:00", -60, "an older one"),
                        statement("05:29", 0, "calf three one one fed two quarts"),
                        statement("06:00", 0, "")),
                shift(),
                MESSAGES,
                ZoneOffset.UTC,
                "");
        assertThat(entries(sheet, "Not confirmed"))
                .containsExactly(
                        SheetEntry.told("05:29", "", "“calf three one one fed two quarts”"),
                        SheetEntry.told("06:00", "", "kept as sound only"),
                        SheetEntry.plain("1 more from before this shift"));
    }

    @Test
    void notes_kept_as_sound_are_told_with_their_number_in_the_record() {
        Told told = new Told().open("A", "09:00", "417", null).a("09:10", new Event.VoiceNoteTaken("x.wav"));
        told.tell(null, Told.time("09:20"), voiceNoteWithoutSound());
        assertThat(section(told, "Sound notes"))
                .containsExactly(
                        SheetEntry.told("calf 417", "09:10", "number 2 of the record"),
                        SheetEntry.told("barn", "09:20", "number 3 of the record, without its sound"));
    }

    @Test
    void a_withdrawn_note_is_not_told() {
        Told told = new Told().open("A", "09:00", "417", null).a("09:10", new Event.VoiceNoteTaken("x.wav"));
        told.withdraw(told.last());
        assertThat(section(told, "Sound notes")).isEmpty();
    }

    /** Raw colostrum keeps two days in a refrigerator: the source stands with the setting. */
    @Test
    void colostrum_in_stock_is_told_as_on_the_due_list() {
        Told told = new Told();
        told.tell(null, Told.time("06:00"), new Event.ColostrumStored("9", quarts("6"), new BigDecimal("24.5"), null));
        assertThat(section(told, "Colostrum"))
                .containsExactly(SheetEntry.told(
                        "batch 9",
                        "",
                        "6 quarts left; 24.5 percent Brix: good for a first feed; keeps until Tue 3 Mar 06:00"));
    }

    @Test
    void cautions_name_their_calves_and_defer_to_the_veterinarian() {
        Told told = careful("A", "417", "09:00").a("09:20", new Event.SignNoted(Term.Sign.SCOURING, null, null));
        List<SheetEntry> mind = section(told, "Mind");
        assertThat(mind)
                .contains(SheetEntry.warning("Cow with calf: keep a barrier between you and her.", "calf 417"))
                .contains(SheetEntry.warning("Scouring: wash hands, ask the veterinarian.", "calf 417"));
        assertThat(mind.get(mind.size() - 1).text()).contains("the herd's veterinarian decides");
    }

    @Test
    void who_recorded_is_named_once_and_facts_without_a_name_are_told() {
        Told told = careful("A", "417", "09:00");
        List<RecordedEvent> events = new ArrayList<>();
        List<@Nullable String> operators = new ArrayList<>();
        operators.add("Łucja");
        operators.add("Begoña");
        operators.add(null);
        for (RecordedEvent event : told.events()) {
            events.add(recorded(event, Source.VOICE, operators.get(events.size() % 3)));
        }
        assertThat(about(events)).isEqualTo("Łucja, Begoña; some facts without a name");
        assertThat(about(told.events().stream()
                        .map(event -> recorded(event, Source.VOICE, "Ana"))
                        .toList()))
                .isEqualTo("Ana");
        assertThat(about(told.events().stream()
                        .map(event -> recorded(event, Source.IMPORT, "Ana"))
                        .toList()))
                .as("a list that was brought in is nobody's work")
                .isEqualTo("not recorded");
    }

    @Test
    void a_shift_must_begin_before_it_hands_over() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Shift(Told.time("05:00"), Told.time("05:00")));
    }

    /** A calf whose first minutes were looked after. */
    private static Told careful(String calf, String number, String born) {
        return careful(new Told(), calf, number, born);
    }

    private static Told careful(Told told, String calf, String number, String born) {
        return told.open(calf, born, number, "212")
                .of(
                        calf,
                        born,
                        new Event.CalfBorn(Told.at(born)),
                        new Event.BreathingNoted(Term.Breathing.WELL),
                        new Event.LickingNoted(true),
                        new Event.NavelDipped(Term.NavelAgent.CHLORHEXIDINE, null),
                        new Event.MilestoneReached(Term.Milestone.STANDING));
    }

    private static Event fed() {
        return new Event.ColostrumFed(quarts("3"), null, null);
    }

    private static Event voiceNoteWithoutSound() {
        return new Event.VoiceNoteTaken(null);
    }

    private static Volume quarts(String count) {
        return new Volume(new BigDecimal(count), VolumeUnit.QUART);
    }

    private static OpenStatement statement(String time, int minutes, String words) {
        Instant at = Told.time(time).plus(Duration.ofMinutes(minutes));
        return new OpenStatement(
                new UUID(0x7000L, at.getEpochSecond()),
                at,
                new NewOpenStatement(
                        at, Duration.ofSeconds(2), "unsure", List.of(words.split(" ", -1)), null, "a.wav"));
    }

    private static List<SheetEntry> section(Told told, String title) {
        return entries(sheet(told, "Ana"), title);
    }

    private static List<SheetEntry> entries(HandoverSheet sheet, String title) {
        return sheet.sections().stream()
                .filter(section -> section.title().equals(title))
                .findFirst()
                .orElseThrow()
                .entries();
    }

    private static List<String> names(List<SheetEntry> entries) {
        return entries.stream().map(SheetEntry::lead).toList();
    }

    private static HandoverSheet sheet(Told told, String operator) {
        return HandoverContents.of(herd(told, operator), List.of(), shift(), MESSAGES, ZoneOffset.UTC, "");
    }

    private static String about(List<RecordedEvent> events) {
        return HandoverContents.of(Herd.of(events), List.of(), shift(), MESSAGES, ZoneOffset.UTC, "")
                .about()
                .get(0)
                .value();
    }

    private static Shift shift() {
        return new Shift(Told.time("00:00"), Told.time("12:00"));
    }

    private static Herd herd(Told told, String operator) {
        return Herd.of(told.events().stream()
                .map(event -> recorded(event, Source.VOICE, operator))
                .toList());
    }

    /** Saved when it happened. */
    private static RecordedEvent recorded(RecordedEvent told, Source source, @Nullable String operator) {
        return new RecordedEvent(
                told.id(),
                told.sequence(),
                told.occurredAt(),
                told.occurredAt(),
                told.zone(),
                told.calf(),
                told.event(),
                Provenance.of(source).by(operator));
    }
}
