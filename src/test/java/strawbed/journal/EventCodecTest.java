package strawbed.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import strawbed.event.Event;
import strawbed.event.Provenance;
import strawbed.event.Term;
import strawbed.journal.JournalException.Reason;
import strawbed.measure.MassUnit;
import strawbed.measure.TemperatureUnit;
import strawbed.measure.VolumeUnit;

/** The stored form has no published source: it is ours, and the approved files say what it is. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EventCodecTest {
    private static final long SEED = 20261124;

    private final EventCodec codec = new EventCodec();

    static List<String> approvedNames() {
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".json"))
                    .map(name -> name.substring(0, name.length() - ".json".length()))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("approvedNames")
    void an_approved_file_loads_and_is_written_back_equal(String name) throws IOException {
        List<String> parts = Arrays.asList(name.split("\\.", -1));
        String text = Files.readString(folder().resolve(name + ".json")).strip();

        Event event = codec.event(parts.get(0), Integer.parseInt(parts.get(1).substring(1)), text);

        assertThat(event).isEqualTo(ApprovedEvents.BY_NAME.get(name));
        assertThat(codec.json(event)).isEqualTo(text);
    }

    @Test
    void every_kind_of_event_has_an_approved_file_and_every_file_is_known() {
        Set<Class<?>> approved = new HashSet<>();
        ApprovedEvents.BY_NAME.values().forEach(event -> approved.add(event.getClass()));
        assertThat(approved).isEqualTo(Set.copyOf(RandomEvents.kinds()));
        assertThat(approvedNames()).containsExactlyInAnyOrderElementsOf(ApprovedEvents.BY_NAME.keySet());
    }

    @Test
    void every_approved_word_is_still_known() throws IOException {
        List<Class<?>> lists = new ArrayList<>(
                List.of(Provenance.Source.class, VolumeUnit.class, MassUnit.class, TemperatureUnit.class));
        Arrays.stream(Term.class.getDeclaredClasses()).filter(Class::isEnum).forEach(lists::add);
        Map<String, List<String>> known = new HashMap<>();
        lists.forEach(list -> known.put(list.getSimpleName(), words(list)));

        Map<String, List<String>> approved = Files.readAllLines(folder().resolve("words.txt")).stream()
                .map(line -> line.split(": ", 2))
                .collect(Collectors.toMap(line -> line[0], line -> List.of(line[1].split(", ", -1))));

        assertThat(known.keySet()).isEqualTo(approved.keySet());
        approved.forEach((list, words) ->
                assertThat(known.get(list)).as("words for %s", list).containsAll(words));
    }

    @Test
    void whatever_is_written_is_read_back_equal() {
        RandomEvents events = new RandomEvents(new Random(SEED));
        for (Class<?> kind : RandomEvents.kinds()) {
            for (int i = 0; i < 100; i++) {
                Event event = events.next(kind);
                String json = codec.json(event);
                assertThat(codec.event(event.type(), EventCodec.VERSION, json))
                        .as("seed %s, %s", SEED, json)
                        .isEqualTo(event);
                assertThat(codec.event(event.type(), EventCodec.VERSION, codec.fields(event)))
                        .as("seed %s, the fields of %s", SEED, event)
                        .isEqualTo(event);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"130.00, 130", "1.3E+2, 130", "2.50, 2.5", "0.0, 0", "1E-7, 0.0000001"})
    void numbers_have_no_exponent_and_no_trailing_zeros(BigDecimal brix, String written) {
        assertThat(codec.json(new Event.ColostrumTestedByBrix(brix))).isEqualTo("{\"brix\":" + written + "}");
    }

    @Test
    void an_unknown_type_is_a_newer_programs() {
        assertRefused("CalfSang", 1, "{}", Reason.NEWER, "CalfSang", "version 1", "this type");
    }

    @Test
    void an_unknown_version_is_a_newer_programs() {
        assertRefused("FeedRefused", 2, "{}", Reason.NEWER, "FeedRefused", "version 2");
        assertRefused("FeedRefused", 0, "{}", Reason.CORRUPT, "FeedRefused", "version 0");
    }

    @Test
    void an_unknown_word_is_a_newer_programs() {
        assertRefused("CalfDried", 1, "{\"means\":\"hair dryer\"}", Reason.NEWER, "CalfDried", "means", "hair dryer");
        assertRefused("ColostrumLeft", 1, "{\"value\":1,\"unit\":\"bucket\"}", Reason.NEWER, "unit", "bucket");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "CalfNumbered; {}; number",
                "CalfNumbered; {\"number\":130}; number",
                "CalfNumbered; {\"number\":null}; number",
                "HeartRateCounted; {\"per_minute\":120.5}; per_minute",
                "HeartRateCounted; {\"per_minute\":\"120\"}; per_minute",
                "ColostrumTested; {}; brix",
                "ColostrumTested; {\"brix\":1e999999999}; brix",
                "ColostrumTested; {\"brix\":24,\"hydrometer\":60}; brix",
                "ColostrumTested; {\"hydrometer\":60,\"temperature\":72}; unit",
                "ColostrumFed; {\"value\":2,\"unit\":\"quart\",\"temperature_unit\":\"celsius\"}; temperature_unit",
                "ColostrumLeft; {\"value\":-1,\"unit\":\"quart\"}; -1",
                "LickingNoted; {\"licked\":\"true\"}; licked",
                "CalfBorn; {}; earliest",
                "CalfBorn; {\"at\":\"yesterday\"}; at",
                "CalfBorn; {\"earliest\":\"2026-11-24T09:00:00Z\",\"latest\":\"2026-11-24T08:00:00Z\"}; 09:00",
                "CalvingEaseNoted; {\"score\":9}; 9",
                "EventWithdrawn; {\"event\":\"that one\"}; event",
                "FeedRefused; {\"extra\":1}; extra",
                "SexNoted; {\"sex\":\"female\",\"sex\":\"male\"}; sex",
                "SexNoted; {\"sex\":\"fem; SexNoted",
                "SexNoted; [1]; SexNoted",
            })
    void a_malformed_field_is_damage_and_is_named(String type, String json, String named) {
        assertRefused(type, 1, json, Reason.CORRUPT, type, "version 1", named);
    }

    @Test
    void words_are_kept_as_they_were_heard() {
        List<String> words = List.of("calf", "one \"thirty\"", "");
        assertThat(codec.words(codec.json(words))).isEqualTo(words);
        assertThatThrownBy(() -> codec.words("{\"a\":1}"))
                .isInstanceOfSatisfying(
                        JournalException.class, e -> assertThat(e.reason()).isEqualTo(Reason.CORRUPT));
    }

    private void assertRefused(String type, int version, String json, Reason reason, String... named) {
        assertThatThrownBy(() -> codec.event(type, version, json))
                .isInstanceOfSatisfying(
                        JournalException.class, e -> assertThat(e.reason()).isEqualTo(reason))
                .hasMessageContainingAll(named)
                .hasMessageEndingWith(".");
    }

    private static List<String> words(Class<?> list) {
        List<String> words = new ArrayList<>();
        for (Object each : list.getEnumConstants()) {
            if (each instanceof Term term) {
                words.add(term.word());
            } else if (each instanceof VolumeUnit unit) {
                words.add(unit.word());
            } else if (each instanceof MassUnit unit) {
                words.add(unit.word());
            } else {
                words.add(((TemperatureUnit) each).word());
            }
        }
        return words;
    }

    private static Path folder() {
        try {
            return Path.of(Objects.requireNonNull(EventCodecTest.class.getResource("/approved-events"))
                    .toURI());
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }
}
