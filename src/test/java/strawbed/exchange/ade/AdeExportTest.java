package strawbed.exchange.ade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static strawbed.exchange.ade.AdeDocument.FARM;
import static strawbed.exchange.ade.AdeDocument.list;
import static strawbed.exchange.ade.AdeDocument.members;
import static strawbed.exchange.ade.AdeDocument.parsed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import strawbed.calf.Herd;
import strawbed.calf.RandomEvents;
import strawbed.calf.Told;
import strawbed.event.Event;
import strawbed.event.EventId;
import strawbed.event.RecordedEvent;

/** The document as a whole: nothing is lost in silence, and the same record gives the same text. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class AdeExportTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void every_event_is_either_exported_or_listed(long seed) {
        Told told = new RandomEvents(seed).told(600);
        AdeExport export = AdeExport.of(told.herd(), FARM);
        List<EventId> all = told.events().stream().map(RecordedEvent::id).toList();
        List<EventId> both = new ArrayList<>(export.exported());
        export.notExported().forEach(listed -> both.add(listed.recorded().id()));

        assertThat(kinds(told.events())).hasSize(Event.class.getPermittedSubclasses().length);
        assertThat(export.exported()).hasSizeGreaterThan(20);
        assertThat(both).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(all);
    }

    /** A kind that may be exported must not be called homeless by mistake. */
    @Test
    void what_has_a_place_is_never_listed_as_having_none() {
        Set<Class<?>> homeless = new HashSet<>();
        Set<Class<?>> exported = new HashSet<>();
        for (long seed = 0; seed < 10; seed++) {
            Told told = new RandomEvents(seed).told(400);
            AdeExport export = AdeExport.of(told.herd(), FARM);
            export.notExported().stream()
                    .filter(listed -> listed.why() == WhyNotExported.NO_PLACE)
                    .forEach(listed -> homeless.add(listed.recorded().event().getClass()));
            told.events().stream()
                    .filter(recorded -> export.exported().contains(recorded.id()))
                    .forEach(recorded -> exported.add(recorded.event().getClass()));
        }

        assertThat(homeless).isNotEmpty().doesNotContainAnyElementsOf(exported);
        assertThat(exported)
                .containsExactlyInAnyOrder(
                        Event.CalfOpened.class,
                        Event.CalfNumbered.class,
                        Event.DamNoted.class,
                        Event.BreedNoted.class,
                        Event.TwinNoted.class,
                        Event.SexNoted.class,
                        Event.EarTagFitted.class,
                        Event.CalfBorn.class,
                        Event.CalfFound.class,
                        Event.CalvingEaseNoted.class,
                        Event.PresentationNoted.class,
                        Event.CalfDied.class,
                        Event.CalfWeighed.class,
                        Event.NavelDipped.class,
                        Event.TreatmentNoted.class);
    }

    @Test
    void the_same_record_gives_the_same_text_in_whatever_order_it_is_handed_over() {
        List<RecordedEvent> events = new RandomEvents(7).told(300).events();
        List<RecordedEvent> shuffled = new ArrayList<>(events);
        Collections.shuffle(shuffled, new Random(7));

        assertThat(AdeExport.json(Herd.of(shuffled), FARM)).isEqualTo(AdeExport.json(Herd.of(events), FARM));
    }

    @Test
    void the_resources_of_one_type_are_a_collection_of_their_own() {
        Told told = new RandomEvents(8).told(600);
        AdeExport export = AdeExport.of(told.herd(), FARM);
        List<Map<String, Object>> all = list(parsed(export.json()), "member");
        List<Map<String, Object>> byType = Arrays.stream(AdeType.values())
                .flatMap(type -> list(parsed(export.json(type)), "member").stream())
                .toList();

        assertThat(byType).hasSizeGreaterThan(10).isEqualTo(all);
        assertThat(parsed(export.json())).containsEntry("view", Map.of("totalItems", all.size()));
    }

    @ParameterizedTest
    @EnumSource(AdeType.class)
    void every_resource_names_its_type_and_where_it_comes_from(AdeType type) {
        Told told = new RandomEvents(9).told(400);

        assertThat(members(told, type))
                .isNotEmpty()
                .allSatisfy(member -> assertThat(member)
                        .containsEntry("resourceType", type.resourceType())
                        .extractingByKey("meta")
                        .asInstanceOf(InstanceOfAssertFactories.MAP)
                        .containsEntry("source", "org.example.willowbank")
                        .containsKeys("sourceId", "modified", "created"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "Willowbank", "willowbank", "org.example.Willow", "org..example", "https://example.org"})
    void a_farm_without_a_name_in_reverse_domain_notation_is_refused(String name) {
        assertThatThrownBy(() -> new AdeSource(name))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("org.example.willowbank");
    }

    private static Set<Class<?>> kinds(List<RecordedEvent> events) {
        return events.stream().map(recorded -> recorded.event().getClass()).collect(Collectors.toSet());
    }
}
