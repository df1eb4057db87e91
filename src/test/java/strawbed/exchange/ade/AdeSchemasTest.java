package strawbed.exchange.ade;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.calf.RandomEvents;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.Term;
import strawbed.measure.MassUnit;
import strawbed.testkit.AdeSchemas;

/** The export against the JSON schemas of the ICAR Animal Data Exchange standard. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AdeSchemasTest {
    private static final AdeSource FARM = new AdeSource("org.example.willowbank");

    private AdeSchemas schemas;

    @BeforeEach
    void find() {
        schemas = AdeSchemas.here();
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void every_resource_of_a_rich_record_is_valid(long seed) throws IOException {
        AdeExport export = AdeExport.of(rich(seed).herd(), FARM);
        for (AdeType type : AdeType.values()) {
            assertThat(members(export.json(type)))
                    .isNotEmpty()
                    .allSatisfy(member ->
                            assertThat(schemas.faults(schema(type), member)).isEmpty());
        }
    }

    /** The standard's base collection leaves the list of members to the collections made from it. */
    @Test
    void the_document_is_a_collection_with_members() throws IOException {
        Map<String, Object> document = JSON.std.mapFrom(AdeExport.json(rich(14).herd(), FARM));

        assertThat(schemas.faults("collections/icarResourceCollection.json", document))
                .containsExactly("$.member: the standard names no such field");
    }

    @Test
    void the_births_alone_are_the_standards_own_collection() throws IOException {
        String births = AdeExport.of(rich(15).herd(), FARM).json(AdeType.PARTURITION);

        assertThat(members(births)).isNotEmpty();
        assertThat(schemas.faults("collections/icarReproParturitionEventCollection.json", JSON.std.mapFrom(births)))
                .isEmpty();
    }

    @Test
    void a_broken_birth_is_found_out() throws IOException {
        assertThat(broken(birth -> birth.remove("animal"))).isNotEmpty();
        assertThat(broken(birth -> birth.remove("resourceType"))).isNotEmpty();
        assertThat(broken(birth -> birth.put("animal", Map.of("id", "88")))).isNotEmpty();
        assertThat(broken(birth -> birth.put("calvingEase", "Easy"))).isNotEmpty();
        assertThat(broken(birth -> birth.put("eventDateTime", "1 March, two in the morning")))
                .isNotEmpty();
        assertThat(broken(birth -> birth.put("damParity", "3"))).isNotEmpty();
        assertThat(broken(birth -> birth.put("progenyDetails", List.of(Map.of("gender", "Female")))))
                .isNotEmpty();
        assertThat(broken(birth -> birth.put("damsParity", 3))).isNotEmpty();
        assertThat(broken(birth -> birth.put("meta", Map.of("source", "here")))).isNotEmpty();
        assertThat(broken(birth -> {})).isEmpty();
    }

    @Test
    void our_words_for_calving_ease_are_the_standards_and_theirs_are_ours() {
        assertThat(Arrays.stream(Term.CalvingEase.values()).map(Term::word))
                .containsExactlyElementsOf(schemas.words("icarReproCalvingEaseType"));
        assertThat(schemas.words("icarReproCalvingEaseType"))
                .allSatisfy(word ->
                        assertThat(Term.find(Term.CalvingEase.class, word)).isPresent());
    }

    /** A newborn calf is not castrated: the list's three other words have no use here. */
    @Test
    void each_sex_has_its_own_word_in_the_standards_list() {
        List<String> ours = new ArrayList<>(
                Arrays.stream(Term.Sex.values()).map(AdeWords::gender).toList());
        ours.add(AdeWords.UNKNOWN_GENDER);

        assertThat(ours).doesNotHaveDuplicates().isSubsetOf(schemas.words("icarAnimalGenderType"));
        assertThat(schemas.words("icarAnimalGenderType"))
                .filteredOn(word -> !ours.contains(word))
                .containsExactly("FemaleNeuter", "MaleCryptorchid", "MaleNeuter");
    }

    @Test
    void each_way_to_weigh_and_each_unit_has_its_own_word_in_the_standards_lists() {
        assertThat(Arrays.stream(Term.WeighingMethod.values()).map(AdeWords::method))
                .doesNotHaveDuplicates()
                .isSubsetOf(schemas.words("icarWeightMethodType"));
        assertThat(Arrays.stream(MassUnit.values()).map(AdeWords::unit))
                .doesNotHaveDuplicates()
                .isSubsetOf(schemas.words("uncefactMassUnitsType"));
        assertThat(schemas.words("icarAnimalSpecieType")).contains(AdeWords.CATTLE);
        assertThat(schemas.words("icarAnimalStatusType")).contains(AdeWords.DEAD);
        assertThat(schemas.words("icarParturitionBirthStatusType")).contains(AdeWords.STILLBORN);
    }

    @Test
    void every_reference_of_the_schemas_is_a_file_beside_them_so_nothing_is_fetched() {
        assertThat(schemas.references())
                .hasSizeGreaterThan(50)
                .allSatisfy(file -> assertThat(file).isRegularFile());
    }

    private List<String> broken(Consumer<Map<String, Object>> fault) throws IOException {
        Told told = new Told()
                .open("A", "02:10", "312", "88")
                .a("02:10", new Event.CalfBorn(Told.at("02:05")), new Event.DamNoted("88", 3));
        Map<String, Object> birth =
                new LinkedHashMap<>(members(AdeExport.of(told.herd(), FARM).json(AdeType.PARTURITION))
                        .get(0));
        fault.accept(birth);
        return schemas.faults(schema(AdeType.PARTURITION), birth);
    }

    /** Facts of every kind, of three calves that are certain to be open at the end. */
    private static Told rich(long seed) {
        return new RandomEvents(seed)
                .told(500)
                .open("A", "40:00", "411", "88")
                .open("B", "40:00", "412", "88")
                .open("C", "40:00", "413", "89");
    }

    private static String schema(AdeType type) {
        return "resources/" + type.resourceType() + ".json";
    }

    @SuppressWarnings("unchecked") // the members of a collection are objects
    private static List<Map<String, Object>> members(String json) throws IOException {
        return (List<Map<String, Object>>) JSON.std.mapFrom(json).getOrDefault("member", List.of());
    }
}
