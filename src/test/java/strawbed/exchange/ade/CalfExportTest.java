package strawbed.exchange.ade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static strawbed.exchange.ade.AdeDocument.FARM;
import static strawbed.exchange.ade.AdeDocument.list;
import static strawbed.exchange.ade.AdeDocument.members;
import static strawbed.exchange.ade.AdeDocument.only;
import static strawbed.exchange.ade.AdeDocument.reasons;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.Term;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;

/** Which fact of a calf goes where in the standard, and which one goes nowhere and why. The animals are invented. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalfExportTest {
    @Test
    void a_calf_is_an_animal_called_by_its_official_tag_with_its_other_numbers_beside() {
        Told told = new Told()
                .open("A", "02:10", "312", "88")
                .a(
                        "06:00",
                        new Event.BreedNoted("Holstein"),
                        new Event.CalfBorn(Told.at("02:05")),
                        new Event.EarTagFitted("2312", Term.TagScheme.FARM),
                        new Event.EarTagFitted("840003123456789", Term.TagScheme.OFFICIAL));

        assertThat(only(told, AdeType.ANIMAL))
                .contains(
                        entry("identifier", Map.of("scheme", "usa.ain", "id", "840003123456789")),
                        entry("gender", "Unknown"),
                        entry("birthDate", "2026-03-01T02:05:00Z"),
                        entry("primaryBreed", Map.of("scheme", "org.example.willowbank.breed", "id", "Holstein")))
                .doesNotContainKeys("status", "parentage", "healthStatus")
                .extractingByKey("alternativeIdentifiers")
                .isEqualTo(List.of(
                        Map.of(
                                "scheme",
                                "org.example.willowbank.calf",
                                "id",
                                Told.calf("A").toString()),
                        Map.of("scheme", "org.example.willowbank.farm-tag", "id", "2312")));
        assertThat(list(only(told, AdeType.PARTURITION), "progenyDetails"))
                .singleElement()
                .satisfies(calf -> assertThat(calf).containsEntry("taggingDate", "2026-03-01T06:00:00Z"));
    }

    @Test
    void an_official_number_of_another_form_keeps_a_scheme_of_our_own() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("06:00", new Event.EarTagFitted("12345", Term.TagScheme.OFFICIAL));

        assertThat(only(told, AdeType.ANIMAL))
                .containsEntry("identifier", Map.of("scheme", "org.example.willowbank.official-tag", "id", "12345"));
    }

    @Test
    void a_weight_keeps_its_unit_and_says_how_it_was_taken() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("03:00", weighed("88.5", MassUnit.POUND, Term.WeighingMethod.TAPE));

        assertThat(only(told, AdeType.WEIGHT))
                .containsEntry("weight", Map.of("measurement", 88.5, "units", "LBR", "method", "Girth"))
                .containsEntry("eventDateTime", "2026-03-01T03:00:00Z");
    }

    /** Source: the mass measure of the ICAR Animal Data Exchange standard, where a load cell is the usual method. */
    @Test
    void a_weight_taken_nobody_knows_how_would_be_read_as_one_of_a_load_cell_and_is_listed() {
        Told told = new Told().open("A", "02:10", "312", null).a("03:00", weighed("40", MassUnit.KILOGRAM, null));

        assertThat(members(told, AdeType.WEIGHT)).isEmpty();
        assertThat(reasons(told)).containsExactly(WhyNotExported.WEIGHING_METHOD_NOT_RECORDED);
    }

    /** Source: the feed intake event of the ICAR Animal Data Exchange standard, which requires the visit's duration. */
    @Test
    void a_feed_whose_duration_nobody_recorded_is_listed() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("03:00", new Event.ColostrumFed(new Volume(new BigDecimal("3"), VolumeUnit.QUART), null, null));

        assertThat(reasons(told)).containsExactly(WhyNotExported.FEEDING_TIME_NOT_RECORDED);
        assertThat(AdeExport.json(told.herd(), FARM)).doesNotContain("FeedIntake");
    }

    @Test
    void a_dipped_navel_is_a_treatment_by_a_procedure() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("02:20", new Event.NavelDipped(Term.NavelAgent.IODINE, new BigDecimal("7")));

        assertThat(only(told, AdeType.TREATMENT))
                .contains(
                        entry("medicine", Map.of("name", "iodine")),
                        entry("procedure", "navel dipping"),
                        entry("site", "navel"),
                        entry("remark", "7 percent"));
    }

    @Test
    void what_was_given_is_told_with_all_that_is_not_known_of_it() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("02:20", new Event.TreatmentNoted(Term.Treatment.VACCINE, "t.wav"));

        assertThat(only(told, AdeType.TREATMENT))
                .containsEntry("remark", "vaccine said to be given; medicine, dose and withdrawal period not recorded")
                .doesNotContainKeys("medicine", "dose", "withdrawals");
    }

    @Test
    void a_death_has_no_reason_that_nobody_told() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("09:00", new Event.CalfDied(Told.time("08:00"), Term.DeathTime.LATER));

        assertThat(only(told, AdeType.DEATH))
                .contains(entry("eventDateTime", "2026-03-01T08:00:00Z"), entry("remark", "died later"))
                .doesNotContainKeys("deathReason", "deathMethod", "disposalMethod");
        assertThat(only(told, AdeType.ANIMAL)).containsEntry("status", "Dead");
    }

    @Test
    void no_sign_is_turned_into_a_state_of_health() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a(
                        "02:20",
                        new Event.SignNoted(Term.Sign.SCOURING, null, null),
                        new Event.NavelChecked(Term.NavelFinding.SWOLLEN),
                        new Event.BreathingNoted(Term.Breathing.HARD));

        assertThat(reasons(told)).hasSize(3).containsOnly(WhyNotExported.NEEDS_A_DIAGNOSIS);
        assertThat(AdeExport.json(told.herd(), FARM)).doesNotContain("Diagnosis", "healthStatus", "observedStatus");
    }

    @Test
    void a_correction_is_exported_and_what_it_corrects_is_listed() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("02:20", new Event.SexNoted(Term.Sex.MALE), new Event.SexNoted(Term.Sex.FEMALE));
        EventId weighed =
                told.tell(Told.calf("A"), Told.MIDNIGHT, weighed("41", MassUnit.KILOGRAM, Term.WeighingMethod.SCALE));
        told.withdraw(weighed);

        assertThat(only(told, AdeType.ANIMAL)).containsEntry("gender", "Female");
        assertThat(members(told, AdeType.WEIGHT)).isEmpty();
        assertThat(reasons(told))
                .containsExactly(WhyNotExported.TOLD_AGAIN, WhyNotExported.WITHDRAWN, WhyNotExported.ABOUT_THE_RECORD);
    }

    @Test
    void facts_of_no_calf_and_of_a_calf_that_was_never_opened_are_listed() {
        Told told = new Told().a("02:20", new Event.SexNoted(Term.Sex.MALE));
        told.tell(
                null,
                Told.MIDNIGHT,
                new Event.ColostrumStored("b1", new Volume(BigDecimal.ONE, VolumeUnit.LITRE), null, null));

        assertThat(reasons(told)).containsExactly(WhyNotExported.CALF_NOT_OPENED, WhyNotExported.NO_ANIMAL);
        assertThat(AdeExport.json(told.herd(), FARM)).isEqualTo("{\"view\":{\"totalItems\":0},\"member\":[]}");
    }

    private static Event weighed(String amount, MassUnit unit, Term.@Nullable WeighingMethod method) {
        return new Event.CalfWeighed(new Mass(new BigDecimal(amount), unit), method);
    }
}
