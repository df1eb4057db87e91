package strawbed.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;
import strawbed.measure.Mass;
import strawbed.measure.MassUnit;
import strawbed.measure.Temperature;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.Volume;
import strawbed.measure.VolumeUnit;
import strawbed.text.Messages;

/** What the account of a calf says. The wording is our own; the figures are those of the care rules' tests. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalfAccountTest {
    private static final Messages MESSAGES = new Messages(Locale.US);

    @Test
    void what_is_not_on_record_says_so() {
        Told told = new Told().open("A", "02:00", "12", null);
        assertThat(text(told, "Who it is", "Sex")).isEqualTo("not recorded");
        assertThat(text(told, "Who it is", "Breed")).isEqualTo("not recorded");
        assertThat(text(told, "Was it enough", "First feed")).isEqualTo("not judged: nothing was fed");
        assertThat(text(told, "Was it enough", "Colostrum")).isEqualTo("not judged: the colostrum was not tested");
    }

    @Test
    void a_measured_dose_is_judged_with_its_rules_and_assumptions() {
        Told told = born().a("02:20", weighed("43"), new Event.ColostrumTestedByBrix(new BigDecimal("22")))
                .a("03:30", fed("3"));
        assertThat(text(told, "Was it enough", "First feed")).isEqualTo("at 1 h 30 min of age: on target");
        assertThat(text(told, "Was it enough", "First dose"))
                .isEqualTo("3 liters, 7 percent of birth weight; below the target of 4.3 liters");
        assertThat(text(told, "Was it enough", "Colostrum")).isEqualTo("22 percent Brix: good for a first feed");
        assertThat(text(told, "Was it enough", "Antibody in it")).isEqualTo("about 63 g/L (29 to 97), an estimate");
        assertThat(text(told, "Was it enough", "Antibody fed"))
                .isEqualTo(
                        "about 190 g (88 to 292), an estimate: at the line, below what is advised, as far as the estimate goes");
        assertThat(line(told, "Was it enough", "Antibody fed").reasons())
                .containsExactly(
                        "Low below 150 g, advised from 200 g. Source: Chigerwe 2008, Am J Vet Res 69:1158.",
                        "Estimated: the antibody, from Brix.");
        assertThat(text(told, "Was it enough", "Serum to expect"))
                .isEqualTo("6 to 40 g/L of antibody at one day, an estimate");
        assertThat(line(told, "Was it enough", "Serum to expect").reasons())
                .anyMatch(reason -> reason.contains("share of plasma"))
                .anyMatch(reason -> reason.contains("published trials"));
    }

    @Test
    void the_farms_own_lines_are_those_that_are_told() {
        Told told = new Told();
        told.tell(
                null,
                Told.time("01:00"),
                new Event.ProtocolAdopted(new TreeMap<>(Map.of("good_from_brix_percent", "23"))));
        told.open("A", "02:00", "12", null)
                .a(
                        "02:00",
                        new Event.CalfBorn(Told.at("02:00")),
                        new Event.ColostrumTestedByBrix(new BigDecimal("22")));
        assertThat(line(told, "Was it enough", "Colostrum"))
                .satisfies(line -> assertThat(line.text())
                        .isEqualTo("22 percent Brix: middling; with antibody added, or for a later feed"))
                .satisfies(line -> assertThat(line.reasons().get(0))
                        .startsWith("Good from 23 percent, not for a first feed below 18 percent."));
    }

    @Test
    void a_rule_of_several_figures_names_the_source_of_each() {
        Told told = born().a("02:20", new Event.ColostrumTestedByBrix(new BigDecimal("22")))
                .a("03:30", fed("3"));
        assertThat(line(told, "Was it enough", "Colostrum").reasons().get(0))
                .contains("Michigan State University Extension", "Buczinski and Vandeweerd 2016");
        assertThat(line(told, "Was it enough", "First feed").reasons().get(0))
                .contains("Fischer 2018", "Gold Standards III", "Osaka 2014");
    }

    @Test
    void a_suckled_calf_has_at_least_what_was_measured() {
        Told told = born().a("03:00", fed("2")).a("03:30", new Event.DamNursed());
        assertThat(line(told, "Was it enough", "First dose").reasons())
                .contains("At least: it also sucked its dam, and how much is not known.");
        assertThat(text(told, "Was it enough", "Serum to expect"))
                .isEqualTo("not judged: it sucked its dam, and how much is not known");
    }

    @Test
    void an_estimated_birth_is_named_as_assumed() {
        Told told = new Told()
                .open("A", "05:00", "12", null)
                .a("05:00", new Event.CalfBorn(new When.Between(Told.time("02:00"), Told.time("04:00"))))
                .a("05:00", fed("3"));
        assertThat(line(told, "Who it is", "Born").reasons())
                .containsExactly("Assumed: counted from the middle of the birth window.");
        assertThat(line(told, "Was it enough", "First feed"))
                .satisfies(line -> assertThat(line.text()).isEqualTo("at 2 h of age: on target"))
                .satisfies(line ->
                        assertThat(line.reasons()).contains("Assumed: counted from the middle of the birth window."));
    }

    @Test
    void what_was_undone_stays_and_says_so() {
        Told told = born().a("03:00", new Event.SexNoted(Term.Sex.MALE));
        told.withdraw(told.last());
        told.a("03:00", new Event.SexNoted(Term.Sex.FEMALE));
        assertThat(part(told, "What happened").lines())
                .extracting(Line::text)
                .containsExactly("new calf 12 of cow 417", "born 02:00", "(bull)", "heifer");
        assertThat(part(told, "What happened").lines().get(2).reasons())
                .singleElement()
                .asString()
                .startsWith("No longer counts: undone or corrected");
        assertThat(text(told, "Who it is", "Sex")).isEqualTo("heifer");
    }

    @Test
    void every_due_item_has_its_reason() {
        Told told = born().a("02:10", Told.score(4));
        assertThat(part(told, "What is due").lines())
                .hasSizeGreaterThan(10)
                .allSatisfy(
                        line -> assertThat(line.reasons()).isNotEmpty().anyMatch(reason -> reason.contains("Source:")));
    }

    @Test
    void a_dead_calf_has_nothing_to_do() {
        Told told = born().a("03:00", new Event.CalfDied(Told.time("03:00"), Term.DeathTime.LATER));
        assertThat(part(told, "What is due").lines())
                .extracting(Line::text)
                .allMatch(text -> text.startsWith("not needed") || text.startsWith("done"));
    }

    @Test
    void immunity_tells_its_measure_its_lines_and_its_limits() {
        Told told = born().a("02:05", new Event.BreedNoted("jersey"))
                .a("32:00", new Event.SerumTested(Term.SerumMeasure.PROTEIN, new BigDecimal("5.75"), null));
        assertThat(text(told, "Was it enough", "Birth weight")).isEqualTo("26 kilograms, assumed");
        Line line = line(told, "Was it enough", "Passive immunity");
        assertThat(line.text()).isEqualTo("fair: serum protein 5.75 g/dL, at 30 h of age");
        assertThat(line.reasons())
                .containsExactly(
                        "excellent from 6.2, good from 5.8, fair from 5.1; else poor. Source: Lombard 2020, doi"
                                + " 10.3168/jds.2019-17955.",
                        "Protein and Brix screen, they do not diagnose (Deelen 2014; Elsohaby 2015).",
                        "The lines are those of Holsteins and do not fit Jerseys (Villarroel 2013).");
    }

    @Test
    void birth_and_signs_are_counted_and_not_scored() {
        Told told = born().a("02:01", Told.score(4), new Event.BreathingNoted(Term.Breathing.WELL))
                .a("02:50", new Event.MilestoneReached(Term.Milestone.STANDING))
                .a("02:55", new Event.SignNoted(Term.Sign.MECONIUM, null, null));
        assertThat(text(told, "How it came", "Outcome")).isEqualTo("born alive");
        assertThat(text(told, "How it came", "Calving ease")).isEqualTo("difficult");
        assertThat(line(told, "How it came", "Signs"))
                .satisfies(line -> assertThat(line.text()).isEqualTo("2 of 3 signs normal"))
                .satisfies(line -> assertThat(line.reasons())
                        .contains("Normal: breathing, standing.", "Not normal: no yellow stain."));
    }

    @Test
    void the_barns_air_is_told_with_its_index_and_lines() {
        Told told = born();
        told.tell(
                null,
                Told.time("05:00"),
                new Event.BarnClimateNoted(
                        new Temperature(new BigDecimal(27), TemperatureUnit.CELSIUS), new BigDecimal(80)));
        assertThat(line(told, "How it came", "Barn air"))
                .satisfies(line -> assertThat(line.text())
                        .isEqualTo("27 °C, heat index 78.1, hot enough to put its welfare at risk"))
                .satisfies(line -> assertThat(line.reasons()).anyMatch(reason -> reason.contains("Kovacs 2020")));
    }

    private static Told born() {
        return new Told().open("A", "02:00", "12", "417").a("02:00", new Event.CalfBorn(Told.at("02:00")));
    }

    private static Event weighed(String kilograms) {
        return new Event.CalfWeighed(new Mass(new BigDecimal(kilograms), MassUnit.KILOGRAM), null);
    }

    private static Event fed(String litres) {
        return new Event.ColostrumFed(new Volume(new BigDecimal(litres), VolumeUnit.LITRE), null, null);
    }

    private static String text(Told told, String part, String label) {
        return line(told, part, label).text();
    }

    private static Line line(Told told, String part, String label) {
        return part(told, part).lines().stream()
                .filter(line -> line.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line " + label + " in " + part(told, part)));
    }

    private static Part part(Told told, String title) {
        List<Part> parts = CalfAccount.of(told.record(), told.herd(), Told.time("06:00"), MESSAGES, ZoneOffset.UTC);
        return parts.stream()
                .filter(part -> part.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no part " + title + " in " + parts));
    }
}
