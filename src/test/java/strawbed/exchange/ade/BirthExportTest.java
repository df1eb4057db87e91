package strawbed.exchange.ade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;
import static strawbed.exchange.ade.AdeDocument.list;
import static strawbed.exchange.ade.AdeDocument.members;
import static strawbed.exchange.ade.AdeDocument.only;
import static strawbed.exchange.ade.AdeDocument.reasons;

import java.util.Map;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.event.When;

/** Births as events of the dam. The farm and its animals are invented. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BirthExportTest {
    @Test
    void a_birth_is_an_event_of_the_dam_with_the_calf_as_its_offspring() {
        Told told = new Told()
                .open("A", "02:10", "312", "0088")
                .a(
                        "02:10",
                        new Event.CalfBorn(Told.at("02:05")),
                        new Event.SexNoted(Term.Sex.FEMALE),
                        new Event.CalvingEaseNoted(Term.CalvingEase.EASY_ASSIST, null),
                        new Event.DamNoted("0088", 3));
        Map<String, Object> birth = only(told, AdeType.PARTURITION);

        assertThat(birth)
                .contains(
                        entry("resourceType", "icarReproParturitionEventResource"),
                        entry("eventDateTime", "2026-03-01T02:05:00Z"),
                        entry("animal", Map.of("scheme", "org.example.willowbank.cow", "id", "88")),
                        entry("damParity", 3),
                        entry("calvingEase", "EasyAssisted"))
                .doesNotContainKeys("remark", "liveProgeny", "totalProgeny", "isEmbryoImplant");
        assertThat(list(birth, "progenyDetails"))
                .singleElement()
                .isEqualTo(Map.of(
                        "resourceType",
                        "icarProgenyDetailsResource",
                        "identifier",
                        Map.of(
                                "scheme",
                                "org.example.willowbank.calf",
                                "id",
                                Told.calf("A").toString()),
                        "specie",
                        "Cattle",
                        "gender",
                        "Female",
                        "managementTag",
                        "312"));
    }

    @Test
    void a_birth_without_a_known_dam_is_listed_and_not_made_up() {
        Told told = new Told()
                .open("A", "02:10", "312", null)
                .a("02:10", new Event.CalfBorn(Told.at("02:05")), Told.score(2));

        assertThat(members(told, AdeType.PARTURITION)).isEmpty();
        assertThat(reasons(told)).containsExactly(WhyNotExported.DAM_NOT_RECORDED, WhyNotExported.DAM_NOT_RECORDED);
    }

    @Test
    void a_birth_that_nobody_saw_has_no_moment_and_its_window_is_a_remark() {
        When window = new When.Between(Told.time("01:00"), Told.time("03:00"));
        Told told = new Told().open("A", "04:00", "312", "88").a("04:00", new Event.CalfBorn(window));

        assertThat(only(told, AdeType.PARTURITION))
                .doesNotContainKey("eventDateTime")
                .containsEntry("remark", "calf 312: born between 2026-03-01T01:00:00Z and 2026-03-01T03:00:00Z");
        assertThat(only(told, AdeType.ANIMAL)).doesNotContainKey("birthDate");
        assertThat(reasons(told)).isEmpty();
    }

    @Test
    void when_a_calf_was_found_is_told_beside_its_birth() {
        Told told = new Told().open("A", "04:00", "312", "88").a("04:00", new Event.CalfFound(Told.at("03:50")));

        assertThat(only(told, AdeType.PARTURITION))
                .doesNotContainKey("eventDateTime")
                .containsEntry("remark", "calf 312: found at 2026-03-01T03:50:00Z");
        assertThat(only(told, AdeType.ANIMAL)).doesNotContainKey("birthDate");
    }

    @Test
    void twins_are_one_birth_of_their_dam() {
        Told told = new Told()
                .open("A", "02:00", "312", "88")
                .open("B", "02:30", "313", "088")
                .of("A", "02:30", new Event.CalfBorn(Told.at("02:00")), new Event.TwinNoted("313", 2))
                .of("A", "02:30", new Event.CalvingEaseNoted(Term.CalvingEase.UNASSISTED, null))
                .of("B", "02:30", new Event.CalfBorn(Told.at("02:20")))
                .of("B", "02:30", new Event.CalvingEaseNoted(Term.CalvingEase.VET_ASSIST, null))
                .of("B", "02:40", new Event.CalfDied(Told.time("02:40"), Term.DeathTime.AT_BIRTH));
        Map<String, Object> birth = only(told, AdeType.PARTURITION);

        assertThat(list(birth, "progenyDetails"))
                .extracting(calf -> calf.get("managementTag"), calf -> calf.get("birthStatus"))
                .containsExactly(tuple("312", null), tuple("313", "Stillborn"));
        assertThat(birth)
                .contains(entry("eventDateTime", "2026-03-01T02:00:00Z"), entry("totalProgeny", 2))
                .doesNotContainKey("calvingEase")
                .containsEntry(
                        "remark",
                        "calf 312: born at 2026-03-01T02:00:00Z, born with 313, calving ease EasyUnassisted;"
                                + " calf 313: born at 2026-03-01T02:20:00Z, calving ease DifficultVeterinaryCare");
        assertThat(reasons(told)).isEmpty();
    }

    @Test
    void calvings_of_one_cow_a_year_apart_are_two_births() {
        Told told = new Told()
                .open("A", "02:00", "312", "88")
                .a("02:00", new Event.CalfBorn(Told.at("2025-02-01T02:00:00Z")))
                .open("B", "02:30", "313", "88")
                .of("B", "02:30", new Event.CalfBorn(Told.at("02:20")));

        assertThat(members(told, AdeType.PARTURITION)).hasSize(2);
    }

    @Test
    void a_score_of_a_farm_is_not_turned_into_a_word_of_the_standard() {
        Told told = new Told()
                .open("A", "02:10", "312", "88")
                .a("02:10", Told.score(2), new Event.PresentationNoted(Term.Presentation.BACKWARDS));

        assertThat(only(told, AdeType.PARTURITION))
                .doesNotContainKey("calvingEase")
                .containsEntry("remark", "calf 312: calving ease score 2, presentation backwards");
    }
}
